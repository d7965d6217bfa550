import type { Mix } from '../../show/act.ts';
import { addToList } from '../../show/add-to-list.ts';
import type { Id } from '../../show/rig.ts';
import { distanceM, placeOf } from '../../show/stage-place.ts';
import { byId, isLoudspeakerMix } from '../facts.ts';
import type { FindingRule } from './rule.ts';
import { aboutMix, caseOfEachMix, listed, number, quoted } from './say.ts';

/** Two who share a wedge stand together; further apart one of them does not hear it. Common practice. */
const sharedWedgeM = 4;

/** Faults of mixes and buses. */
export const mixFindings: readonly FindingRule[] = [
  {
    code: 'mix-without-bus',
    severity: 'must fix',
    needs: 'the buses of the desk and those the act needs',
    cause: '{mix} has no bus: needed {needed}, free to use {there}.',
    remedy: 'Make a stereo mix mono, let two performers share a mix, or leave {mix} out.',
    find: (facts) => {
      const planned = facts.mixes.filter(({ mix }) => mix.mixedAt === 'house desk');
      const needed = planned.reduce((sum, { planned: { format } }) => sum + (format === 'stereo' ? 2 : 1), 0);
      const cueBusIds = new Set(facts.sheet.cueOutputs.map((cue) => cue.busId));
      const there = facts.sheet.buses.filter(
        (bus) => bus.reservedFor === null && !cueBusIds.has(bus.id),
      ).length;
      return planned
        .filter(({ planned: { busIds } }) => busIds.length === 0)
        .map(({ mix }) => ({ say: { mix: quoted(mix), needed, there }, about: [aboutMix(mix)] }));
    },
  },
  {
    code: 'bus-used-twice',
    severity: 'must fix',
    needs: 'the buses of all mixes',
    cause: 'Bus {bus} carries {mixes}: each would hear the other.',
    remedy: 'Give one of them another bus.',
    find: (facts) => {
      const buses = byId(facts.sheet.buses);
      return [...mixesUsing(facts.mixes, ({ planned }) => planned.busIds)]
        .filter(([, mixes]) => mixes.length > 1)
        .map(([id, mixes]) => ({
          say: { bus: buses.get(id)?.number ?? '?', mixes: listed(mixes) },
          about: [{ of: 'bus', id } as const, ...mixes.map(aboutMix)],
        }));
    },
  },
  {
    code: 'bus-is-reserved',
    severity: 'look again',
    needs: 'the buses of all mixes, and what the rig reserves',
    cause: '{mix} is on bus {bus}, which is kept for {use}.',
    remedy: 'Move the mix, or free the bus.',
    find: (facts) => {
      const buses = byId(facts.sheet.buses);
      return facts.mixes.flatMap(({ mix, planned }) =>
        planned.busIds.flatMap((id) => {
          const bus = buses.get(id);
          if (!bus || bus.reservedFor === null) return [];
          return [
            {
              say: { mix: quoted(mix), bus: bus.number, use: bus.reservedFor },
              about: [{ of: 'bus', id } as const, aboutMix(mix)],
            },
          ];
        }),
      );
    },
  },
  {
    code: 'stereo-on-one-bus',
    severity: 'look again',
    needs: 'the format of devices and mixes',
    cause: '{mix} is mono on one bus, but {device} is stereo: its listener gets the same in both ears.',
    remedy: 'Make {mix} stereo if two buses are left.',
    find: (facts) =>
      facts.mixes.flatMap(({ mix, planned }) => {
        const device = planned.deviceIds
          .map((id) => facts.deviceById.get(id))
          .find((it) => it?.kind === 'in-ear' && it.format === 'stereo');
        const oneBus = planned.format === 'mono' || planned.busIds.length === 1;
        if (!device || mix.mixedAt === 'elsewhere' || !oneBus || planned.busIds.length === 0) return [];
        return [
          {
            say: { mix: quoted(mix), device: quoted(device) },
            about: [aboutMix(mix), { of: 'device', id: device.id } as const],
          },
        ];
      }),
  },
  {
    code: 'stereo-to-one-side',
    severity: 'look again',
    needs: 'the format of devices and mixes',
    cause: '{mix} is stereo, but {device} gives one side only.',
    remedy: 'Make {mix} mono and win a bus, or give it a stereo device or a second one.',
    find: (facts) =>
      facts.mixes.flatMap(({ mix, planned }) => {
        const devices = planned.deviceIds.flatMap((id) => facts.deviceById.get(id) ?? []);
        const mono = devices.filter((device) => device.format === 'mono');
        const oneSide =
          mono.length === devices.length && (isLoudspeakerMix(mix) ? devices.length === 1 : true);
        const device = mono[0];
        if (planned.format === 'mono' || !device || !oneSide) return [];
        return [
          {
            say: { mix: quoted(mix), device: quoted(device) },
            about: [aboutMix(mix), { of: 'device', id: device.id } as const],
          },
        ];
      }),
  },
  {
    code: 'stereo-buses-no-pair',
    severity: 'look again',
    needs: 'the buses of stereo mixes',
    cause: '{mix} is stereo on {buses}, which the desk cannot link: a pair is an odd number and the next.',
    remedy: 'Put it on an odd bus and the one after it.',
    find: (facts) => {
      const buses = byId(facts.sheet.buses);
      return facts.mixes.flatMap(({ mix, planned }) => {
        const numbers = planned.busIds.map((id) => buses.get(id)?.number ?? 0);
        const [left = 0, right = 0] = numbers;
        const linked = numbers.length === 2 && left % 2 === 1 && right === left + 1;
        if (planned.format === 'mono' || numbers.length === 0 || linked) return [];
        const said = `bus ${numbers.join(' and ')}${numbers.length === 1 ? ' alone' : ''}`;
        return [{ say: { mix: quoted(mix), buses: said }, about: [aboutMix(mix)] }];
      });
    },
  },
  {
    code: 'device-kind-unknown',
    severity: 'look again',
    needs: 'what every mix is heard through',
    cause: 'Nobody has said what {mix} is heard through, so its copies, device and cue are a guess.',
    remedy: 'Ask the band: wedge, fill or in-ears, and whose.',
    find: (facts) => caseOfEachMix(facts.sheet.mixes.filter((mix) => mix.deviceKind === null)),
  },
  {
    code: 'mix-without-listener',
    severity: 'know this',
    needs: 'who listens to what',
    cause: 'Nobody is named as listening to {mix}.',
    remedy: 'Name who hears it, so that the listening line and the checks of their own sources work.',
    find: (facts) => {
      if (facts.sheet.performers.length === 0) return [];
      const heard = new Set(facts.sheet.listeners.map((listener) => listener.mixId));
      return caseOfEachMix(
        facts.sheet.mixes.filter(
          (mix) => !heard.has(mix.id) && mix.deviceKind !== 'side fill' && mix.deviceKind !== 'front fill',
        ),
      );
    },
  },
  {
    code: 'listeners-far-apart',
    severity: 'know this',
    needs: 'who shares a wedge, and where they stand',
    cause: '{people} share {mix}, but stand {apart} m apart: one device does not reach both.',
    remedy: 'Give the mix a second device, or each a mix.',
    find: (facts) =>
      facts.mixes.flatMap(({ mix, planned }) => {
        const people = facts.sheet.listeners
          .filter((listener) => listener.mixId === mix.id)
          .flatMap((listener) => facts.sheet.performers.find((it) => it.id === listener.performerId) ?? []);
        const [first, second] = people;
        if (people.length < 2 || !first || !second || mix.deviceKind !== 'wedge') return [];
        const places = people.flatMap((person) => placeOf(person) ?? []);
        let apartM = 0;
        for (const a of places) for (const b of places) apartM = Math.max(apartM, distanceM(a, b));
        if (apartM <= sharedWedgeM || planned.deviceIds.length >= people.length) return [];
        return [
          {
            say: { mix: quoted(mix), people: listed(people), apart: number(apartM) },
            about: [aboutMix(mix), ...people.map((it) => ({ of: 'performer' as const, id: it.id }))],
          },
        ];
      }),
  },
];

/** The mixes behind every bus, output or device that the given list of each mix names. */
export function mixesUsing<T extends { mix: Mix }>(
  rows: readonly T[],
  idsOf: (row: T) => readonly Id[],
): Map<Id, Mix[]> {
  const using = new Map<Id, Mix[]>();
  for (const row of rows) for (const id of new Set(idsOf(row))) addToList(using, id, row.mix);
  return using;
}
