import fc from 'fast-check';
import type { ActSheet } from '../../../core/show/act-sheet.ts';
import { sourceGroups, sourceKinds } from '../../../core/show/source-kinds.ts';
import {
  alternateKinds,
  amounts,
  audiences,
  deviceKinds,
  formats,
  gainOwners,
  limiterPlaces,
  micPatterns,
  outputPlaces,
  phantomNeeds,
  pickUps,
  purposes,
  taps,
} from '../../../core/show/words.ts';
import { sheetOf, type TestRow, type TestRows } from '../../helpers/sheet-of.ts';

/** Generated acts take their time on a machine that is busy with other tests; that is no failure. */
export const patienceMs = 180_000;

/** How many rows of each table an act may have. Small ones meet every rule, and show a failure in few lines. */
type Sizes = { sources: number; mixes: number; rigParts: number; decisions: number };
const smallActs: Sizes = { sources: 7, mixes: 5, rigParts: 10, decisions: 8 };

const orNull = <T>(arb: fc.Arbitrary<T>) => fc.option(arb, { nil: null });
const from = <T>(list: readonly T[]) => fc.constantFrom(...list);

/** Ids are made from a place; now and then one names something that is not there. */
function idOf(table: string, count: number): fc.Arbitrary<string> {
  return fc
    .integer({ min: 0, max: Math.max(0, count - 1) + 1 })
    .map((at) => `${table} ${at >= count ? 'missing' : at}`);
}

/** Mostly ids that are there: a row that names nothing is the exception. */
function mostly(table: string, count: number): fc.Arbitrary<string> {
  if (count === 0) return fc.constant(`${table} missing`);
  const there = fc.integer({ min: 0, max: count - 1 }).map((at) => `${table} ${at}`);
  return fc.oneof(
    { weight: 30, arbitrary: there },
    { weight: 1, arbitrary: fc.constant(`${table} missing`) },
  );
}

const metres = orNull(fc.integer({ min: -6, max: 6 }));
const levelDb = fc.integer({ min: -40, max: 20 });

/** Rows by place, with ids that say their table. */
function table(name: string, row: fc.Arbitrary<TestRow>, count: number): fc.Arbitrary<TestRow[]> {
  return fc
    .array(row, { minLength: count, maxLength: count })
    .map((rows) => rows.map((it, at) => ({ id: `${name} ${at}`, ...it })));
}

function rigTables(parts: number) {
  const reserved = fc.oneof(
    { weight: 6, arbitrary: fc.constant(null) },
    { weight: 1, arbitrary: fc.constant('the house') },
  );
  return {
    boxes: table(
      'box',
      fc.record({
        xM: metres,
        yM: metres,
        reachM: orNull(fc.integer({ min: 1, max: 9 })),
        phantomBankSize: from([1, 1, 4]),
      }),
      2,
    ),
    sockets: table(
      'socket',
      fc.record({ boxId: fc.nat(1).map((at) => `box ${at}`), reservedFor: reserved }),
      parts,
    ).map((sockets) => sockets.map((socket, at) => ({ ...socket, number: at + 1 }))),
    buses: table('bus', fc.record({ reservedFor: reserved }), parts),
    outputs: table(
      'output',
      fc.record({
        place: from(outputPlaces),
        boxId: orNull(idOf('box', 2)),
        xM: metres,
        yM: metres,
        reservedFor: reserved,
      }),
      parts,
    ),
    devices: table(
      'device',
      fc.record({
        kind: from(deviceKinds),
        format: from(formats),
        sensitivityDbSpl: orNull(fc.integer({ min: 80, max: 120 })),
        powerW: orNull(fc.integer({ min: 1, max: 500 })),
        listeningDistanceM: orNull(fc.integer({ min: 1, max: 9 })),
        latencyMs: orNull(fc.integer({ min: 0, max: 20 })),
        frequencyMhz: orNull(from([470, 823, 824])),
        limiter: orNull(from(limiterPlaces)),
        forCue: from([false, false, true]),
        reservedFor: reserved,
        outputId: orNull(mostly('output', parts)),
        secondOutputId: orNull(mostly('output', parts)),
      }),
      6,
    ),
    cueOutputs: fc.nat(3).chain((count) =>
      table(
        'cue',
        fc.record({
          kind: from(['wedge', 'in-ear'] as const),
          format: from(formats),
          outputId: orNull(mostly('output', parts)),
          secondOutputId: orNull(mostly('output', parts)),
          busId: orNull(mostly('bus', parts)),
          deviceId: orNull(mostly('device', 6)),
          distanceFromStageM: orNull(fc.integer({ min: 0, max: 30 })),
        }),
        count,
      ),
    ),
  };
}

function anyWish(sources: number, mixes: number): fc.Arbitrary<TestRow> {
  const target = fc.oneof(
    { weight: 6, arbitrary: mostly('source', sources).map((sourceId) => ({ sourceId })) },
    { weight: 2, arbitrary: from(sourceGroups).map((group) => ({ group })) },
    { weight: 1, arbitrary: fc.constant({ group: 'everything' }) },
    { weight: 2, arbitrary: mostly('mix', mixes).map((sameAsMixId) => ({ sameAsMixId })) },
  );
  const much = fc.oneof(
    { weight: 4, arbitrary: from(amounts).map((amount) => ({ amount, levelDb: null })) },
    { weight: 1, arbitrary: levelDb.map((db) => ({ amount: null, levelDb: db })) },
  );
  const asItIs = fc.constant({ amount: null, levelDb: null });
  return fc
    .tuple(mostly('mix', mixes), target, much, asItIs, fc.boolean())
    .map(([mixId, what, amount, nothing, plain]) => ({
      mixId,
      ...what,
      ...('sameAsMixId' in what && plain ? nothing : amount),
    }));
}

function anyDecision(sources: number, mixes: number, parts: number): fc.Arbitrary<TestRow> {
  const mixId = mostly('mix', mixes);
  const sourceId = mostly('source', sources);
  const about = <T extends Record<string, fc.Arbitrary<unknown>>>(name: string, fields: T) =>
    fc.record({ about: fc.constant(name), locked: fc.boolean(), ...fields }) as fc.Arbitrary<TestRow>;
  return fc.oneof(
    about('socket', { sourceId, socketId: mostly('socket', parts) }),
    about('phantom', { sourceId, on: fc.boolean() }),
    about('bus', { mixId, busId: mostly('bus', parts) }),
    about('output', { mixId, outputId: mostly('output', parts) }),
    about('device', { mixId, deviceId: mostly('device', 6) }),
    about('cue', { mixId, cueOutputId: mostly('cue', 2) }),
    about('feed', { mixId, sourceId, purpose: from(purposes) }),
    about('second feed', { mixId, sourceId, purpose: from(purposes) }),
    about('tap', { mixId, sourceId, tap: from(taps) }),
    about('level', { mixId, sourceId, levelDb }),
    about('effect send', { sourceId, returnSourceId: mostly('source', sources), purpose: from(purposes) }),
  );
}

/** A whole act with its rig, of the given sizes, with every kind of row and now and then a row that names nothing. */
export function anyActRows(sizes: Sizes = smallActs): fc.Arbitrary<TestRows> {
  return fc
    .record({ sources: fc.nat(sizes.sources), mixes: fc.nat(sizes.mixes), parts: fc.nat(sizes.rigParts) })
    .chain(({ sources, mixes, parts }) =>
      fc.record({
        rig: fc.record({
          channelCount: fc.nat(sizes.sources * 3),
          headroomDb: fc.integer({ min: 0, max: 20 }),
          targetLevelDbfs: fc.integer({ min: -24, max: 0 }),
          lotsDb: fc.integer({ min: -3, max: 0 }),
          airTemperatureC: fc.integer({ min: -10, max: 40 }),
          cueXM: orNull(fc.integer({ min: -12, max: 12 })),
          cueYM: orNull(fc.integer({ min: -3, max: 9 })),
          gainOwner: orNull(from(gainOwners)),
          deskLatencyMs: orNull(fc.integer({ min: 0, max: 30 })),
        }) as fc.Arbitrary<TestRow>,
        act: fc.record({
          state: from(['advancing', 'ready', 'on stage']),
          splitPhantomBy: orNull(from(['band', 'house'])),
        }) as fc.Arbitrary<TestRow>,
        ...rigTables(parts),
        performers: table('performer', fc.record({ xM: metres, yM: metres, needsClick: fc.boolean() }), 3),
        sources: table(
          'source',
          fc.record({
            kind: from(sourceKinds),
            pairSourceId: orNull(mostly('source', sources)),
            pickUp: orNull(from(pickUps)),
            phantom: from(phantomNeeds),
            performerId: orNull(mostly('performer', 3)),
            audience: from(audiences),
            xM: metres,
            yM: metres,
            pattern: orNull(from(micPatterns)),
            aimDeg: orNull(fc.integer({ min: -180, max: 180 })),
            sensitivityMvPerPa: orNull(fc.integer({ min: 1, max: 50 })),
            expectedDbSpl: orNull(fc.integer({ min: 0, max: 150 })),
            gainDb: orNull(fc.integer({ min: 0, max: 60 })),
            trimmedAtGainDb: orNull(fc.integer({ min: 0, max: 60 })),
            returnsMixId: fc.option(mostly('mix', mixes), { nil: null, freq: 6 }),
            returnsCueOutputId: fc.option(mostly('cue', 2), { nil: null, freq: 12 }),
          }),
          sources,
        ),
        mixes: table(
          'mix',
          fc.record({
            deviceKind: orNull(from(deviceKinds)),
            format: orNull(from(formats)),
            deviceCount: fc.integer({ min: 1, max: 3 }),
            ownDevice: orNull(fc.boolean()),
            mixedAt: from(['house desk', 'house desk', 'house desk', 'elsewhere']),
            xM: metres,
            yM: metres,
          }),
          mixes,
        ),
        listeners: fc
          .array(fc.tuple(mostly('mix', mixes), mostly('performer', 3)), { maxLength: 5 })
          .map((pairs) =>
            pairs.map(([mixId, performerId], at) => ({ id: `listener ${at}`, mixId, performerId })),
          ),
        wishes: fc
          .array(anyWish(sources, mixes), { maxLength: 2 * sizes.sources })
          .map((wishes) => wishes.map((wish, at) => ({ id: `wish ${at}`, ...wish }))),
        copies: fc
          .array(
            fc.record({
              sourceId: mostly('source', sources),
              purpose: from(purposes),
              wanted: fc.boolean(),
              locked: fc.boolean(),
              channel: orNull(fc.integer({ min: 1, max: sizes.sources * 3 })),
              trimDb: fc.integer({ min: -20, max: 20 }),
              latencyMs: from([0, 0, 0.5]),
              polarityInverted: fc.boolean(),
              inMainMix: orNull(fc.boolean()),
            }),
            { maxLength: 6 },
          )
          .map((copies) => copies.map((copy, at) => ({ id: `copy ${at}`, ...copy }))),
        alternates: fc
          .array(
            fc.record({
              sourceId: mostly('source', sources),
              kind: from(alternateKinds),
              socketId: orNull(mostly('socket', parts)),
              inUse: fc.boolean(),
            }),
            { maxLength: 4 },
          )
          .map((alternates) => alternates.map((it, at) => ({ id: `alternate ${at}`, ...it }))),
        decisions: fc
          .array(anyDecision(sources, mixes, parts), { maxLength: sizes.decisions })
          .map((decisions) => decisions.map((it, at) => ({ id: `decision ${at}`, ...it }))),
      }),
    );
}

/** The sheet of such an act. */
export const anySheet: fc.Arbitrary<ActSheet> = anyActRows().map(sheetOf);
