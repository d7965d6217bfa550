import type { Mix } from '../../show/act.ts';
import { addToList } from '../../show/add-to-list.ts';
import type { CueOutput, Id } from '../../show/rig.ts';
import { cueKindOf } from '../cue.ts';
import type { Cue } from '../derived.ts';
import { type ActFacts, mixOf } from '../facts.ts';
import { type Case, casesOf, casesOfEach, type FindingRule } from './rule.ts';
import { aboutMix, quoted } from './say.ts';

/** Faults of what the engineer listens on. */
export const cueFindings: readonly FindingRule[] = [
  {
    code: 'no-cue-output',
    severity: 'look again',
    needs: 'the cue outputs of the rig',
    cause: 'The rig has no cue output: the engineer cannot hear what any performer hears.',
    remedy: 'Add a cue pack or a cue wedge to the rig.',
    find: (facts) =>
      facts.sheet.cueOutputs.length > 0 || facts.sheet.mixes.length === 0
        ? []
        : [{ about: [{ of: 'act', id: facts.sheet.act.id }] }],
  },
  {
    code: 'cue-of-the-other-kind',
    severity: 'look again',
    when: ['cues of the other kind'],
    needs: 'the cue outputs of the rig, and what every mix is heard through',
    cause:
      '{cue} is of another kind than the devices of {mixes}, which the engineer hears on it: tone and balance will mislead.',
    remedy: '{remedy}',
    find: (facts) =>
      [
        ...mixesByCue(
          facts,
          (_, mix, output) => mix.deviceKind !== null && output.kind !== cueKindOf(mix.deviceKind),
        ),
      ].map(([output, mixes]) => {
        const other = facts.sheet.cueOutputs.find((it) => it.kind !== output.kind);
        const remedy = other
          ? `Hear them on ${quoted(other)}.`
          : `Add a ${output.kind === 'wedge' ? 'cue pack' : 'cue wedge'} to the rig.`;
        return caseOfCue(output, mixes, { remedy });
      }),
  },
  {
    code: 'cue-mono-for-stereo',
    severity: 'know this',
    when: ['mono cues of stereo mixes'],
    needs: 'the format of mixes and cue outputs',
    cause: '{cue} is mono: the engineer does not hear the stereo of {mixes}.',
    remedy: 'Add a stereo cue output, or check the sides on a pack.',
    find: (facts) =>
      [
        ...mixesByCue(facts, (_, mix, output) => {
          const planned = facts.plan.mixes[facts.index.mixAt.get(mix.id) ?? -1];
          return planned?.format === 'stereo' && output.format === 'mono';
        }),
      ].map(([output, mixes]) => caseOfCue(output, mixes)),
  },
  {
    code: 'cue-level-unknown',
    severity: 'know this',
    when: ['cues of unknown level'],
    needs: 'sensitivity, power and distance of devices and of the cue device',
    cause: '{mixes} cannot be matched in level on {cue}: the rig lacks a figure of a device.',
    remedy: 'Enter sensitivity, power and listening distance in the rig, or match the level once by ear.',
    find: (facts) =>
      [
        ...mixesByCue(facts, (cue, mix) => {
          const planned = facts.plan.mixes[facts.index.mixAt.get(mix.id) ?? -1];
          return cue.offsetDb === null && (planned?.deviceIds.length ?? 0) > 0;
        }),
      ].map(([output, mixes]) => caseOfCue(output, mixes)),
  },
  {
    code: 'cue-before-processing',
    severity: 'know this',
    needs: 'where the cue is taken from',
    cause:
      '{cue} is taken before the processing of the mix bus: the engineer does not hear what the device gets.',
    remedy: 'Take the cue after the bus.',
    find: (facts) =>
      facts.sheet.cueOutputs
        .filter((cue) => cue.takenFrom === 'before bus processing')
        .map((cue) => caseOfCue(cue, [])),
  },
  {
    code: 'cue-leaves-nowhere',
    severity: 'look again',
    needs: 'the output of each cue',
    cause: '{cue} has {lack}, so nothing is heard on it.',
    remedy: 'Name its output in the rig.',
    find: (facts) =>
      facts.sheet.cueOutputs.flatMap((cue) => {
        const lacksSecond = cue.format === 'stereo' && cue.secondOutputId === null;
        if (cue.outputId !== null && !lacksSecond) return [];
        const lack = cue.outputId === null ? 'no output' : 'no output for its right side';
        return [caseOfCue(cue, [], { lack })];
      }),
  },
  {
    code: 'cue-outputs-collide',
    severity: 'must fix',
    needs: 'the output and bus of each cue',
    cause: '{cue} and {other} leave at the same output: one is heard in the other.',
    remedy: 'Give each cue its own output.',
    find: (facts) => collidingCues(facts.sheet.cueOutputs),
  },
  {
    code: 'cue-bus-carries-a-mix',
    severity: 'must fix',
    when: ['decisions'],
    needs: 'the buses of all mixes, and of the cue',
    cause: '{mix} is on the bus that {cue} takes: whatever the engineer listens to goes into {mix}.',
    remedy: 'Move {mix} to another bus.',
    find: (facts) =>
      facts.mixes.flatMap(({ mix, planned }) =>
        facts.sheet.cueOutputs.flatMap((cue) => {
          if (cue.busId === null || !planned.busIds.includes(cue.busId)) return [];
          return [
            {
              say: { mix, cue },
              about: [aboutMix(mix), aboutCue(cue), { of: 'bus', id: cue.busId } as const],
            },
          ];
        }),
      ),
  },
  {
    code: 'cue-device-given-away',
    severity: 'must fix',
    when: ['decisions', 'cue devices that performers may get'],
    needs: 'the devices of all mixes and of the cue',
    cause: '{device} is what the engineer listens on, but it is given to {mix}.',
    remedy: 'Give {mix} another device.',
    find: (facts) => {
      const cueDevices = new Set<Id | null>(facts.sheet.cueOutputs.map((cue) => cue.deviceId));
      return casesOfEach(facts.mixes, ({ mix, devices }) =>
        casesOf(devices, (device) => {
          if (!device.forCue && !cueDevices.has(device.id)) return null;
          return {
            say: { mix, device },
            about: [aboutMix(mix), { of: 'device', id: device.id }],
          };
        }),
      );
    },
  },
  {
    code: 'cue-device-missing',
    severity: 'look again',
    needs: 'the device of each cue',
    cause: '{cue} has no device: nobody has said what the engineer listens through.',
    remedy: 'Name its device in the rig, of the same model as the performers have.',
    find: (facts) =>
      facts.sheet.cueOutputs.filter((cue) => cue.deviceId === null).map((cue) => caseOfCue(cue, [])),
  },
];

const aboutCue = (cue: CueOutput) => ({ of: 'cueOutput' as const, id: cue.id });

function caseOfCue(cue: CueOutput, mixes: readonly Mix[], say: Case['say'] = {}): Case {
  return {
    say: { cue, mixes, ...say },
    about: [aboutCue(cue), ...mixes.map(aboutMix)],
  };
}

/** The mixes of which the cue is so, by the output they are heard on. */
function mixesByCue(
  facts: ActFacts,
  isSo: (cue: Cue, mix: Mix, output: CueOutput) => boolean,
): Map<CueOutput, Mix[]> {
  const byOutput = new Map<CueOutput, Mix[]>();
  for (const cue of facts.cues) {
    const output = facts.sheet.cueOutputs.find((it) => it.id === cue.cueOutputId);
    const mix = mixOf(facts, cue.mixId);
    if (!output || !mix || !isSo(cue, mix, output)) continue;
    addToList(byOutput, output, mix);
  }
  return byOutput;
}

function collidingCues(cues: readonly CueOutput[]): Case[] {
  return cues.flatMap((cue, at) =>
    cues.slice(at + 1).flatMap((other) => {
      const used = [cue.outputId, cue.secondOutputId].filter((id) => id !== null);
      const shared = used.find((id) => id === other.outputId || id === other.secondOutputId);
      if (shared === undefined) return [];
      return [
        {
          say: { cue, other },
          about: [aboutCue(cue), aboutCue(other), { of: 'output' as const, id: shared }],
        },
      ];
    }),
  );
}
