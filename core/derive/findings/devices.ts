import { usesHouseDevice } from '../../plan/plan-devices.ts';
import type { Device } from '../../show/rig.ts';
import type { ActFacts } from '../facts.ts';
import { type Case, casesOf, casesOfEach, type FindingRule } from './rule.ts';
import { aboutMix, aboutSource, casesOfSources, number } from './say.ts';
import { mixesSharing } from './shared.ts';

/** Faults of wedges, fills and packs, and of what is on the air. */
export const deviceFindings: readonly FindingRule[] = [
  {
    code: 'too-few-devices',
    severity: 'must fix',
    when: ['mixes short of devices'],
    needs: 'what is in stock, and what every mix asks for',
    cause: '{mix} asks for {wanted} and gets {given}: needed {needed}, in the house {there}.',
    remedy: 'Hire more, ask the band to bring their own, or let two performers share.',
    find: (facts) =>
      facts.mixes.flatMap(({ mix, planned }) => {
        if (!usesHouseDevice(mix) || planned.deviceIds.length >= mix.deviceCount) return [];
        const needed = facts.sheet.mixes
          .filter((it) => it.deviceKind === mix.deviceKind && usesHouseDevice(it))
          .reduce((sum, it) => sum + it.deviceCount, 0);
        const there = facts.sheet.devices.filter(
          (it) => it.kind === mix.deviceKind && !it.forCue && it.reservedFor === null,
        ).length;
        const wanted = `${mix.deviceCount} ${mix.deviceKind}`;
        const given = planned.deviceIds.length === 0 ? 'none' : planned.deviceIds.length;
        return [{ say: { mix, wanted, given, needed, there }, about: [aboutMix(mix)] }];
      }),
  },
  {
    code: 'device-used-twice',
    severity: 'must fix',
    when: ['decisions'],
    needs: 'the devices of all mixes',
    cause: '{device} is given to {mixes}, but can play one mix only.',
    remedy: 'Give one of them another device.',
    find: (facts) =>
      mixesSharing(facts.mixes, ({ planned }) => planned.deviceIds).map(([id, mixes]) => ({
        say: { device: facts.index.device(id), mixes },
        about: [{ of: 'device', id } as const, ...mixes.map(aboutMix)],
      })),
  },
  {
    code: 'device-of-another-kind',
    severity: 'look again',
    when: ['decisions'],
    needs: 'the devices of all mixes',
    cause: '{mix} is for {wanted}, but {device} is {given}.',
    remedy: 'Give it a device of its kind, or change what the mix is heard through.',
    find: (facts) =>
      deviceCases(
        facts,
        (device, kind) => kind !== null && device.kind !== kind,
        (device, kind) => ({
          wanted: kind ?? '',
          given: device.kind,
        }),
      ),
  },
  {
    code: 'device-is-reserved',
    severity: 'look again',
    when: ['decisions'],
    needs: 'the devices of all mixes, and what the rig reserves',
    cause: '{mix} is given {device}, which is kept for {use}.',
    remedy: 'Give it another device, or free this one.',
    find: (facts) =>
      deviceCases(
        facts,
        (device) => device.reservedFor !== null,
        (device) => ({ use: device.reservedFor ?? '' }),
      ),
  },
  {
    code: 'limiter-not-noted',
    severity: 'look again',
    when: ['packs that may lack a limiter'],
    needs: 'where the limiter of each pack sits',
    cause: 'Nobody has noted a limiter for {devices}: a sudden peak in-ear can hurt hearing for good.',
    remedy:
      'Look at the receiver, switch its limiter on and note it. This plan does not replace local rules on noise at work.',
    find: (facts) => limiterCases(facts, (device) => device.limiter === null),
  },
  {
    code: 'no-limiter-in-the-receiver',
    severity: 'must fix',
    when: ['packs that may lack a limiter'],
    needs: 'where the limiter of each pack sits',
    cause:
      'No limiter is in the receiver of {devices}: one on the desk does not stop radio noise, and a sudden peak in-ear can hurt hearing for good.',
    remedy:
      'Use receivers with their own limiter switched on. This plan does not replace local rules on noise at work.',
    find: (facts) =>
      limiterCases(facts, (device) => device.limiter === 'none' || device.limiter === 'on the desk only'),
  },
  {
    code: 'frequency-used-twice',
    severity: 'must fix',
    when: ['frequencies'],
    needs: 'the frequencies of packs, the cue and wireless sources',
    cause: '{names} are on {mhz} MHz at the same time: neither will work.',
    remedy: 'Have the frequencies planned by the person who holds the licence; local spectrum rules decide.',
    find: (facts) => sharedFrequencies(facts),
  },
  {
    code: 'wireless-without-frequency',
    severity: 'look again',
    when: ['wireless lines'],
    needs: 'the frequencies of wireless sources',
    cause: 'No frequency is noted for the wireless link of {sources}.',
    remedy: 'Ask for the frequencies and have them planned; local spectrum rules decide.',
    find: (facts) => {
      const sources = facts.sheet.sources.filter(
        (source) =>
          source.pickUp === 'wireless' && source.frequencyMhz === null && source.audience !== 'not here',
      );
      return casesOfSources(sources);
    },
  },
];

function deviceCases(
  facts: ActFacts,
  isSo: (device: Device, kind: Device['kind'] | null) => boolean,
  sayOf: (device: Device, kind: Device['kind'] | null) => NonNullable<Case['say']>,
): readonly Case[] {
  return casesOfEach(facts.mixes, ({ mix, devices }) =>
    casesOf(devices, (device) => {
      if (!isSo(device, mix.deviceKind)) return null;
      return {
        say: { mix, device, ...sayOf(device, mix.deviceKind) },
        about: [aboutMix(mix), { of: 'device', id: device.id }],
      };
    }),
  );
}

function limiterCases(facts: ActFacts, isSo: (device: Device) => boolean): Case[] {
  const devices: Device[] = [];
  for (const { devices: ofMix } of facts.mixes)
    for (const device of ofMix) if (device.kind === 'in-ear' && isSo(device)) devices.push(device);
  if (devices.length === 0) return [];
  return [
    {
      say: { devices },
      about: devices.map((device) => ({ of: 'device' as const, id: device.id })),
    },
  ];
}

/** Everything on the air during the act, by frequency. Two packs on one mix share one transmitter. */
function sharedFrequencies(facts: ActFacts): Case[] {
  const users = new Map<number, { key: string; name: string; about: Case['about'][0] }[]>();
  const add = (mhz: number | null, key: string, name: string, about: Case['about'][0]) => {
    if (mhz === null) return;
    const there = users.get(mhz) ?? [];
    if (!there.some((user) => user.key === key)) there.push({ key, name, about });
    users.set(mhz, there);
  };
  for (const { mix, devices } of facts.mixes)
    for (const { id, frequencyMhz, name } of devices)
      if (frequencyMhz !== null) add(frequencyMhz, `mix ${mix.id}`, name, { of: 'device', id });
  for (const cue of facts.sheet.cueOutputs) {
    const device = cue.deviceId === null ? undefined : facts.index.device(cue.deviceId);
    if (device) add(device.frequencyMhz, `cue ${cue.id}`, device.name, { of: 'device', id: device.id });
  }
  for (const source of facts.sheet.sources)
    if (source.pickUp === 'wireless' && source.audience !== 'not here')
      add(source.frequencyMhz, `source ${source.id}`, source.name, aboutSource(source));
  return [...users]
    .filter(([, there]) => there.length > 1)
    .map(([mhz, there]) => ({
      say: { mhz: number(mhz, 3), names: there },
      about: there.map((it) => it.about),
    }));
}
