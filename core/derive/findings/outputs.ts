import { leavesRig } from '../../plan/plan-outputs.ts';
import type { Output } from '../../show/rig.ts';
import { casesOf, casesOfEach, type FindingRule } from './rule.ts';
import { aboutMix, quoted } from './say.ts';
import { mixesSharing } from './shared.ts';

/** Faults of where mixes leave the rig. */
export const outputFindings: readonly FindingRule[] = [
  {
    code: 'mix-without-output',
    severity: 'must fix',
    when: ['mixes without output'],
    needs: 'the outputs of the rig and those the act needs',
    cause: '{mix} leaves nowhere: outputs needed {needed}, free for mixes {there}.',
    remedy: '{proposal}',
    find: (facts) => {
      const planned = facts.mixes.filter(({ mix }) => leavesRig(mix));
      const widthOf = (format: string) => (format === 'stereo' ? 2 : 1);
      if (planned.every(({ planned: { format, outputIds } }) => outputIds.length >= widthOf(format)))
        return [];
      const needed = planned.reduce((sum, { planned: { format } }) => sum + widthOf(format), 0);
      const free = new Set(facts.sheet.outputs.filter(isForMixes).map((output) => output.id));
      for (const cue of facts.sheet.cueOutputs)
        for (const id of [cue.outputId, cue.secondOutputId]) if (id !== null) free.delete(id);
      const there = free.size;
      return planned
        .filter(({ planned: { format, outputIds } }) => outputIds.length < widthOf(format))
        .map(({ mix, planned: { format } }) => ({
          say: { mix, needed, there, proposal: wayOut(facts.sheet.outputs, format) },
          about: [aboutMix(mix)],
        }));
    },
  },
  {
    code: 'output-used-twice',
    severity: 'must fix',
    when: ['decisions'],
    needs: 'the outputs of all mixes',
    cause: '{output} carries {mixes}: one of them reaches the wrong ears.',
    remedy: 'Let one of them leave elsewhere.',
    find: (facts) =>
      mixesSharing(facts.mixes, ({ planned }) => planned.outputIds).map(([id, mixes]) => ({
        say: { output: facts.index.output(id), mixes },
        about: [{ of: 'output', id } as const, ...mixes.map(aboutMix)],
      })),
  },
  {
    code: 'output-is-reserved',
    severity: 'look again',
    when: ['decisions'],
    needs: 'the outputs of all mixes, and what the rig reserves',
    cause: '{mix} leaves at {output}, which is kept for {use}.',
    remedy: 'Let the mix leave elsewhere, or free the output.',
    find: (facts) =>
      outputCases(
        facts,
        (output) => output.reservedFor !== null,
        (output) => ({ use: output.reservedFor ?? '' }),
      ),
  },
  {
    code: 'mix-on-a-record-feed',
    severity: 'look again',
    when: ['decisions'],
    needs: 'the outputs of all mixes, and what each output is for',
    cause: '{mix} leaves at {output}, a record feed, so no performer hears it there.',
    remedy: 'Give it an output on the desk, a box or the network.',
    find: (facts) =>
      outputCases(
        facts,
        (output) => output.place === 'record',
        () => ({}),
      ),
  },
  {
    code: 'device-on-another-output',
    severity: 'know this',
    when: ['devices that are wired'],
    needs: 'which output every device is wired to',
    cause:
      '{device} is plugged into {wired}, but {mix} leaves at {output}: as it is plugged, {device} does not play {mix}.',
    remedy: 'Have {device} plugged into {output} in the changeover, or let {mix} leave at {wired}.',
    find: (facts) =>
      casesOfEach(facts.mixes, ({ mix, planned, devices }) =>
        casesOf(devices, (device) => {
          const first = planned.outputIds[0];
          if (device.outputId === null || first === undefined) return null;
          if (planned.outputIds.includes(device.outputId)) return null;
          return {
            say: {
              mix,
              device,
              wired: facts.index.output(device.outputId),
              output: facts.index.output(first),
            },
            about: [aboutMix(mix), { of: 'device', id: device.id }, { of: 'output', id: first }],
          };
        }),
      ),
  },
  {
    code: 'output-carries-the-cue',
    severity: 'must fix',
    when: ['decisions'],
    needs: 'the outputs of all mixes and of the cue',
    cause: '{output} carries {mix} and the cue: whatever the engineer listens to reaches {mix}.',
    remedy: 'Give the mix or the cue another output.',
    find: (facts) => {
      const ofCues = new Set(facts.sheet.cueOutputs.flatMap((cue) => [cue.outputId, cue.secondOutputId]));
      return outputCases(
        facts,
        (output) => ofCues.has(output.id),
        () => ({}),
      );
    },
  },
];

function isForMixes(output: Output): boolean {
  return output.reservedFor === null && output.place !== 'record';
}

/** What to do where outputs are too few: a record feed that could be given up, or fewer mixes. */
function wayOut(outputs: readonly Output[], format: string): string {
  const record = outputs.find((output) => output.place === 'record' && output.reservedFor === null);
  if (record)
    return `Let it leave at ${quoted(record)} if the recording can do without, or let two mixes share one output.`;
  return format === 'stereo'
    ? 'Make it mono, or let two performers share a mix.'
    : 'Let two performers share a mix, or bring another box.';
}

type Said = Record<string, string | number>;

function outputCases(
  facts: Parameters<FindingRule['find']>[0],
  isSo: (output: Output) => boolean,
  sayOf: (output: Output) => Said,
) {
  return casesOfEach(facts.mixes, ({ mix, planned }) =>
    casesOf(planned.outputIds, (id) => {
      const output = facts.index.output(id);
      if (!output || !isSo(output)) return null;
      return {
        say: { mix, output, ...sayOf(output) },
        about: [{ of: 'output', id: output.id }, aboutMix(mix)],
      };
    }),
  );
}
