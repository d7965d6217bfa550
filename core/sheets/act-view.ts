import type { Cue, Derived, MixLevel, SourceGain } from '../derive/derived.ts';
import type { PlannedMix, PlannedPatch } from '../plan/plan.ts';
import type { Question } from '../rider/reading.ts';
import type { Mix, Source } from '../show/act.ts';
import type { ActSheet } from '../show/act-sheet.ts';
import type { Box, Device, Id, Output, Socket } from '../show/rig.ts';
import { socketOnBox } from '../show/socket-name.ts';
import type { Purpose } from '../show/words.ts';

/** One line of an act with everything that a sheet may say of it. */
export type LineView = {
  source: Source;
  /** Its place in the act's list from 1: the number that people on stage call it by. */
  line: number;
  performer: string;
  socket: Socket | null;
  box: Box | null;
  /** As written on the box, for example "A3"; empty where it is not patched. */
  socketName: string;
  patch: PlannedPatch | null;
  gain: SourceGain | null;
  /** Channel of each purpose that has one. */
  channels: Partial<Record<Purpose, number>>;
};

/** One mix of an act with its way to the devices. */
export type MixView = {
  mix: Mix;
  /** Its place in the act from 1: the number that the performer knows it by. */
  number: number;
  planned: PlannedMix | null;
  listeners: string[];
  buses: string;
  outputs: Output[];
  devices: Device[];
  level: MixLevel | null;
  cue: Cue | null;
};

/** An act made ready to be told: names looked up, numbers given, nothing decided. */
export type ActView = {
  sheet: ActSheet;
  derived: Derived;
  lines: LineView[];
  mixes: MixView[];
  /** What the riders leave open and nobody has answered; empty where they were not read. */
  questions: Question[];
};

export function viewAct(sheet: ActSheet, derived: Derived): ActView {
  const rows = new Rows(sheet);
  return {
    sheet,
    derived,
    questions: [],
    lines: sheet.sources.map((source, at) => viewLine(source, at, derived, rows)),
    mixes: sheet.mixes.map((mix, at) => viewMix(mix, at, sheet, derived, rows)),
  };
}

/** Rows of a sheet by id. */
class Rows {
  readonly sockets: ReadonlyMap<Id, Socket>;
  readonly boxes: ReadonlyMap<Id, Box>;
  readonly outputs: ReadonlyMap<Id, Output>;
  readonly devices: ReadonlyMap<Id, Device>;
  readonly busNumbers: ReadonlyMap<Id, number>;
  readonly performerNames: ReadonlyMap<Id, string>;

  constructor(sheet: ActSheet) {
    this.sockets = new Map(sheet.sockets.map((it) => [it.id, it]));
    this.boxes = new Map(sheet.boxes.map((it) => [it.id, it]));
    this.outputs = new Map(sheet.outputs.map((it) => [it.id, it]));
    this.devices = new Map(sheet.devices.map((it) => [it.id, it]));
    this.busNumbers = new Map(sheet.buses.map((it) => [it.id, it.number]));
    this.performerNames = new Map(sheet.performers.map((it) => [it.id, it.name]));
  }
}

function viewLine(source: Source, at: number, derived: Derived, rows: Rows): LineView {
  const patch = derived.plan.patches[at] ?? null;
  const socket = rows.sockets.get(patch?.socketId ?? '') ?? null;
  const box = rows.boxes.get(socket?.boxId ?? '') ?? null;
  const channels: Partial<Record<Purpose, number>> = {};
  for (const copy of derived.plan.copies)
    if (copy.sourceId === source.id && copy.channel !== null) channels[copy.purpose] = copy.channel;
  return {
    source,
    line: at + 1,
    performer: rows.performerNames.get(source.performerId ?? '') ?? '',
    socket,
    box,
    socketName: socket && box ? socketOnBox(box, socket) : '',
    patch,
    gain: derived.gains[at] ?? null,
    channels,
  };
}

function viewMix(mix: Mix, at: number, sheet: ActSheet, derived: Derived, rows: Rows): MixView {
  const planned = derived.plan.mixes[at] ?? null;
  const known = <T>(ids: readonly Id[], from: ReadonlyMap<Id, T>) => ids.flatMap((id) => from.get(id) ?? []);
  return {
    mix,
    number: at + 1,
    planned,
    listeners: sheet.listeners
      .filter((it) => it.mixId === mix.id)
      .flatMap((it) => rows.performerNames.get(it.performerId) ?? []),
    buses: known(planned?.busIds ?? [], rows.busNumbers).join('+'),
    outputs: known(planned?.outputIds ?? [], rows.outputs),
    devices: known(planned?.deviceIds ?? [], rows.devices),
    level: derived.levels.find((it) => it.mixId === mix.id) ?? null,
    cue: derived.cues.find((it) => it.mixId === mix.id) ?? null,
  };
}
