import { distanceM, placeOf } from '../../show/stage-place.ts';
import { isLoudspeakerMix } from '../facts.ts';
import { casesOf, type FindingRule } from './rule.ts';
import { aboutMix, caseOfEachMix, number } from './say.ts';
import { mixesSharing } from './shared.ts';

/** Two who share a wedge stand together; further apart one of them does not hear it. Common practice. */
const sharedWedgeM = 4;

/** Faults of mixes and buses. */
export const mixFindings: readonly FindingRule[] = [
  {
    code: 'mix-without-bus',
    severity: 'must fix',
    when: ['mixes without bus'],
    needs: 'the buses of the desk and those the act needs',
    cause: '{mix} has no bus: needed {needed}, free to use {there}.',
    remedy: 'Make a stereo mix mono, let two performers share a mix, or leave {mix} out.',
    find: (facts) => {
      const planned = facts.mixes.filter(({ mix }) => mix.mixedAt === 'house desk');
      if (planned.every(({ planned: { busIds } }) => busIds.length > 0)) return [];
      const needed = planned.reduce((sum, { planned: { format } }) => sum + (format === 'stereo' ? 2 : 1), 0);
      const cueBusIds = new Set(facts.sheet.cueOutputs.map((cue) => cue.busId));
      const there = facts.sheet.buses.filter(
        (bus) => bus.reservedFor === null && !cueBusIds.has(bus.id),
      ).length;
      return planned
        .filter(({ planned: { busIds } }) => busIds.length === 0)
        .map(({ mix }) => ({ say: { mix, needed, there }, about: [aboutMix(mix)] }));
    },
  },
  {
    code: 'bus-used-twice',
    severity: 'must fix',
    when: ['decisions'],
    needs: 'the buses of all mixes',
    cause: 'Bus {bus} carries {mixes}: each would hear the other.',
    remedy: 'Give one of them another bus.',
    find: (facts) =>
      mixesSharing(facts.mixes, ({ planned }) => planned.busIds).map(([id, mixes]) => ({
        say: { bus: facts.index.bus(id)?.number ?? '?', mixes },
        about: [{ of: 'bus', id } as const, ...mixes.map(aboutMix)],
      })),
  },
  {
    code: 'bus-is-reserved',
    severity: 'look again',
    when: ['decisions'],
    needs: 'the buses of all mixes, and what the rig reserves',
    cause: '{mix} is on bus {bus}, which is kept for {use}.',
    remedy: 'Move the mix, or free the bus.',
    find: (facts) => {
      const reserved = new Map(
        facts.sheet.buses.filter((bus) => bus.reservedFor !== null).map((bus) => [bus.id, bus]),
      );
      if (reserved.size === 0) return [];
      return facts.mixes.flatMap(({ mix, planned }) =>
        casesOf(planned.busIds, (id) => {
          const bus = reserved.get(id);
          if (!bus) return null;
          return {
            say: { mix, bus: bus.number, use: bus.reservedFor ?? '' },
            about: [{ of: 'bus', id }, aboutMix(mix)],
          };
        }),
      );
    },
  },
  {
    code: 'stereo-on-one-bus',
    severity: 'look again',
    when: ['stereo devices on one bus'],
    needs: 'the format of devices and mixes',
    cause: '{mix} is mono on one bus, but {device} is stereo: its listener gets the same in both ears.',
    remedy: 'Make {mix} stereo if two buses are left.',
    find: (facts) =>
      casesOf(facts.mixes, ({ mix, planned, devices }) => {
        const oneBus = planned.format === 'mono' || planned.busIds.length === 1;
        if (mix.mixedAt === 'elsewhere' || !oneBus || planned.busIds.length === 0) return null;
        const device = devices.find((it) => it.kind === 'in-ear' && it.format === 'stereo');
        if (!device) return null;
        return {
          say: { mix, device },
          about: [aboutMix(mix), { of: 'device', id: device.id }],
        };
      }),
  },
  {
    code: 'stereo-to-one-side',
    severity: 'look again',
    when: ['mono devices of stereo mixes'],
    needs: 'the format of devices and mixes',
    cause: '{mix} is stereo, but {device} gives one side only.',
    remedy: 'Make {mix} mono and win a bus, or give it a stereo device or a second one.',
    find: (facts) =>
      casesOf(facts.mixes, ({ mix, planned, devices }) => {
        if (planned.format === 'mono') return null;
        const mono = devices.filter((device) => device.format === 'mono');
        const oneSide =
          mono.length === devices.length && (isLoudspeakerMix(mix) ? devices.length === 1 : true);
        const device = mono[0];
        if (!device || !oneSide) return null;
        return {
          say: { mix, device },
          about: [aboutMix(mix), { of: 'device', id: device.id }],
        };
      }),
  },
  {
    code: 'stereo-buses-no-pair',
    severity: 'look again',
    when: ['decisions'],
    needs: 'the buses of stereo mixes',
    cause: '{mix} is stereo on {buses}, which the desk cannot link: a pair is an odd number and the next.',
    remedy: 'Put it on an odd bus and the one after it.',
    find: (facts) =>
      casesOf(facts.mixes, ({ mix, planned }) => {
        if (planned.format === 'mono' || planned.busIds.length === 0) return null;
        const numbers = planned.busIds.map((id) => facts.index.bus(id)?.number ?? 0);
        const [left = 0, right = 0] = numbers;
        if (numbers.length === 2 && left % 2 === 1 && right === left + 1) return null;
        const said = `bus ${numbers.join(' and ')}${numbers.length === 1 ? ' alone' : ''}`;
        return { say: { mix, buses: said }, about: [aboutMix(mix)] };
      }),
  },
  {
    code: 'device-kind-unknown',
    severity: 'look again',
    when: ['mixes for an unknown device'],
    needs: 'what every mix is heard through',
    cause: 'Nobody has said what {mix} is heard through, so its copies, device and cue are a guess.',
    remedy: 'Ask the band: wedge, fill or in-ears, and whose.',
    find: (facts) => caseOfEachMix(facts.sheet.mixes.filter((mix) => mix.deviceKind === null)),
  },
  {
    code: 'mix-without-listener',
    severity: 'know this',
    when: ['mixes that nobody hears'],
    needs: 'who listens to what',
    cause: 'Nobody is named as listening to {mix}.',
    remedy: 'Name who hears it, so that the listening line and the checks of their own sources work.',
    find: (facts) => {
      if (facts.sheet.performers.length === 0) return [];
      return caseOfEachMix(
        facts.sheet.mixes.filter(
          (mix, at) =>
            facts.people.listenersOf[at] === 0 &&
            mix.deviceKind !== 'side fill' &&
            mix.deviceKind !== 'front fill',
        ),
      );
    },
  },
  {
    code: 'listeners-far-apart',
    severity: 'know this',
    when: ['mixes that are shared'],
    needs: 'who shares a wedge, and where they stand',
    cause: '{people} share {mix}, but stand {apart} m apart: one device does not reach both.',
    remedy: 'Give the mix a second device, or each a mix.',
    find: (facts) =>
      casesOf(facts.mixes, ({ mix, planned, mixAt }) => {
        if (mix.deviceKind !== 'wedge' || (facts.people.listenersOf[mixAt] ?? 0) < 2) return null;
        const listeners = facts.sheet.listeners.filter((listener) => listener.mixId === mix.id);
        const people = listeners.flatMap(
          (listener) => facts.sheet.performers.find((it) => it.id === listener.performerId) ?? [],
        );
        const [first, second] = people;
        if (!first || !second) return null;
        const places = people.flatMap((person) => placeOf(person) ?? []);
        let apartM = 0;
        for (const a of places) for (const b of places) apartM = Math.max(apartM, distanceM(a, b));
        if (apartM <= sharedWedgeM || planned.deviceIds.length >= people.length) return null;
        return {
          say: { mix, people, apart: number(apartM) },
          about: [aboutMix(mix), ...people.map((it) => ({ of: 'performer' as const, id: it.id }))],
        };
      }),
  },
];
