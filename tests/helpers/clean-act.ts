import type { TableName } from '../../core/show/show.ts';
import { rows, type TestRow, type TestRows } from './sheet-of.ts';

/**
 * A small act in which nothing is wrong: a singer at a wedge with a spare microphone, a keys player in-ear, a pair
 * of ambience microphones, and a house rig with everything they need. Tests break one thing in it.
 */
function cleanRows(): TestRows {
  return {
    rig: { channelCount: 32, gainOwner: 'front of house' },
    boxes: [{ id: 'A', xM: 0, yM: 4, reachM: 12 }],
    sockets: rows(16, { id: 'socket', boxId: 'A' }),
    buses: rows(8, { id: 'bus' }),
    outputs: rows(12, { id: 'output', place: 'stage box', boxId: 'A' }),
    devices: [
      { id: 'wedge 1', kind: 'wedge', sensitivityDbSpl: 98, powerW: 200, listeningDistanceM: 1.6 },
      { id: 'wedge 2', kind: 'wedge', sensitivityDbSpl: 98, powerW: 200, listeningDistanceM: 1.6 },
      {
        id: 'pack 1',
        kind: 'in-ear',
        format: 'stereo',
        sensitivityDbSpl: 96,
        limiter: 'in the receiver',
        frequencyMhz: 823.1,
      },
      {
        id: 'pack 2',
        kind: 'in-ear',
        format: 'stereo',
        sensitivityDbSpl: 96,
        limiter: 'in the receiver',
        frequencyMhz: 823.9,
      },
      {
        id: 'engineer wedge',
        kind: 'wedge',
        sensitivityDbSpl: 98,
        powerW: 200,
        listeningDistanceM: 2,
        forCue: true,
      },
      {
        id: 'engineer pack',
        kind: 'in-ear',
        format: 'stereo',
        sensitivityDbSpl: 96,
        frequencyMhz: 824.7,
        forCue: true,
      },
    ],
    cueOutputs: [
      {
        id: 'cue pack',
        kind: 'in-ear',
        format: 'stereo',
        outputId: 'output 11',
        secondOutputId: 'output 12',
        deviceId: 'engineer pack',
      },
      {
        id: 'cue wedge',
        kind: 'wedge',
        outputId: 'output 10',
        deviceId: 'engineer wedge',
        distanceFromStageM: 6,
      },
    ],
    performers: [
      { id: 'Noor', xM: 0, yM: 2 },
      { id: 'Tam', xM: 3, yM: 4 },
    ],
    sources: [
      { id: 'vocal', kind: 'lead vocal', pickUp: 'mic', phantom: 'not needed', performerId: 'Noor' },
      { id: 'spare', kind: 'spare vocal', pickUp: 'mic', phantom: 'not needed' },
      {
        id: 'keys left',
        kind: 'keys',
        pickUp: 'di',
        phantom: 'needed',
        performerId: 'Tam',
        pairSourceId: 'keys right',
      },
      {
        id: 'keys right',
        kind: 'keys',
        pickUp: 'di',
        phantom: 'needed',
        performerId: 'Tam',
        pairSourceId: 'keys left',
      },
      { id: 'room', kind: 'ambience', pickUp: 'mic', phantom: 'needed', audience: 'monitors only' },
    ],
    mixes: [
      { id: 'Noor wedge', deviceKind: 'wedge', format: 'mono', xM: 0, yM: 1 },
      { id: 'Tam ears', deviceKind: 'in-ear', format: 'stereo' },
    ],
    listeners: [
      { id: 'listener 1', mixId: 'Noor wedge', performerId: 'Noor' },
      { id: 'listener 2', mixId: 'Tam ears', performerId: 'Tam' },
    ],
    wishes: [
      { mixId: 'Noor wedge', sourceId: 'vocal', amount: 'lots' },
      { mixId: 'Noor wedge', sourceId: 'spare', amount: 'lots' },
      { mixId: 'Tam ears', sourceId: 'vocal', amount: 'some' },
      { mixId: 'Tam ears', sourceId: 'spare', amount: 'some' },
      { mixId: 'Tam ears', sourceId: 'keys left', amount: 'some' },
      { mixId: 'Tam ears', sourceId: 'keys right', amount: 'some' },
      { mixId: 'Tam ears', sourceId: 'room', amount: 'little' },
    ].map((wish, at) => ({ id: `wish ${at + 1}`, ...wish })),
    copies: [],
    alternates: [],
    decisions: [],
    riders: [],
  };
}

/** The clean act being changed, row by row. */
export class ActDraft {
  readonly rows: TestRows = cleanRows();
  #count = 0;

  set(table: TableName, id: string, patch: TestRow): this {
    const row = this.rows[table]?.find((it) => it.id === id);
    if (!row) throw new Error(`The clean act has no ${id} in ${table}.`);
    Object.assign(row, patch);
    return this;
  }

  setAll(table: TableName, patch: TestRow): this {
    for (const row of this.rows[table] ?? []) Object.assign(row, patch);
    return this;
  }

  add(table: TableName, ...added: TestRow[]): this {
    for (const row of added) this.rows[table]?.push({ id: `${table} added ${++this.#count}`, ...row });
    return this;
  }

  remove(table: TableName, ...ids: string[]): this {
    this.rows[table] = (this.rows[table] ?? []).filter((row) => !ids.includes(String(row.id)));
    return this;
  }

  keepFirst(table: TableName, count: number): this {
    this.rows[table] = (this.rows[table] ?? []).slice(0, count);
    return this;
  }

  rig(patch: TestRow): this {
    Object.assign(this.rows.rig ?? {}, patch);
    return this;
  }

  act(patch: TestRow): this {
    this.rows.act = { ...this.rows.act, ...patch };
    return this;
  }

  day(patch: TestRow): this {
    this.rows.day = { ...this.rows.day, ...patch };
    return this;
  }
}
