import type { PlannedMix } from '../plan/plan.ts';
import type { Mix } from '../show/act.ts';
import type { ActSheet } from '../show/act-sheet.ts';
import type { Device, Id } from '../show/rig.ts';
import { byId } from '../show/sheet-index.ts';
import { socketOnBox } from '../show/socket-name.ts';
import type { Cue, Derived, Subject } from './derived.ts';
import { copyName } from './findings/say.ts';

/** Where on its way a signal is, from left to right. */
const pathStages = [
  'player',
  'source',
  'socket',
  'alternate',
  'copy',
  'main mix',
  'mix',
  'cue',
  'output',
  'device',
  'listener',
] as const;
export type PathStage = (typeof pathStages)[number];

/** One thing that a signal passes. */
export type PathNode = {
  /** Unique in its paths; made by `pathKey`. */
  key: string;
  at: PathStage;
  /** Id of the row; of the source for a copy. */
  id: Id;
  name: string;
  /** What there is to say beside the name, in a few words, or empty. */
  detail: string;
  /** Places in `derived.findings` of what is wrong here. */
  findings: number[];
};

/** A signal going from one node to the next. */
export type PathLink = {
  from: string;
  to: string;
  /** Start level of a send in dB; null where no level is set on the way. */
  levelDb: number | null;
  detail: string;
  findings: number[];
};

/**
 * Every way of every signal of an act, as one graph: from who plays to who listens. Screens, sheets and findings
 * read the part that they need with `pathFrom`, `pathTo` and `pathThrough`.
 */
export type SignalPaths = { nodes: PathNode[]; links: PathLink[] };

/** The key of a row's node. A copy's key takes its purpose too. */
export function pathKey(at: PathStage, id: Id, purpose = ''): string {
  return purpose === '' ? `${at} ${id}` : `${at} ${id} ${purpose}`;
}

/** Everything that a signal reaches from a node on, the node itself included. An unknown key reaches nothing. */
export function pathFrom(paths: SignalPaths, key: string): SignalPaths {
  return partOf(paths, reachable(paths, key, 'from', 'to'));
}

/** Everything that reaches a node, the node itself included: all that a device plays, all that an output carries. */
export function pathTo(paths: SignalPaths, key: string): SignalPaths {
  return partOf(paths, reachable(paths, key, 'to', 'from'));
}

/** The whole way through a node: what reaches it and what it reaches. */
export function pathThrough(paths: SignalPaths, key: string): SignalPaths {
  const keys = reachable(paths, key, 'to', 'from');
  for (const further of reachable(paths, key, 'from', 'to')) keys.add(further);
  return partOf(paths, keys);
}

function reachable(paths: SignalPaths, key: string, here: 'from' | 'to', there: 'from' | 'to'): Set<string> {
  if (!paths.nodes.some((node) => node.key === key)) return new Set();
  const next = new Map<string, string[]>();
  for (const link of paths.links) {
    const known = next.get(link[here]);
    if (known) known.push(link[there]);
    else next.set(link[here], [link[there]]);
  }
  const reached = new Set([key]);
  // A set may grow while it is walked: everything added is visited once.
  for (const at of reached) for (const to of next.get(at) ?? []) reached.add(to);
  return reached;
}

function partOf(paths: SignalPaths, keys: ReadonlySet<string>): SignalPaths {
  return {
    nodes: paths.nodes.filter((node) => keys.has(node.key)),
    links: paths.links.filter((link) => keys.has(link.from) && keys.has(link.to)),
  };
}

/** All paths of an act, from its sheet and what was derived from it. */
export function derivePaths(sheet: ActSheet, derived: Derived): SignalPaths {
  const drawing = new Drawing();
  drawSources(drawing, sheet, derived);
  drawCopies(drawing, sheet, derived);
  drawMixes(drawing, sheet, derived);
  drawFeeds(drawing, derived);
  drawReturns(drawing, sheet);
  const paths = drawing.close();
  markFindings(paths, derived);
  return paths;
}

class Drawing {
  readonly #nodes = new Map<string, PathNode>();
  readonly #links: PathLink[] = [];

  node(at: PathStage, row: { id: Id; name: string }, detail = '', purpose = ''): string {
    const key = pathKey(at, row.id, purpose);
    if (!this.#nodes.has(key))
      this.#nodes.set(key, { key, at, id: row.id, name: row.name, detail, findings: [] });
    return key;
  }

  link(from: string, to: string, detail = '', levelDb: number | null = null): void {
    this.#links.push({ from, to, levelDb, detail, findings: [] });
  }

  /** The nodes from left to right, and the links of which both ends are there. */
  close(): SignalPaths {
    const nodes = pathStages.flatMap((stage) =>
      [...this.#nodes.values()].filter((node) => node.at === stage),
    );
    return { nodes, links: this.#links.filter((it) => this.#nodes.has(it.from) && this.#nodes.has(it.to)) };
  }
}

function drawSources(drawing: Drawing, sheet: ActSheet, derived: Derived): void {
  const sockets = byId(sheet.sockets);
  const boxes = byId(sheet.boxes);
  const alternates = byId(sheet.alternates);
  const performers = byId(sheet.performers);
  sheet.sources.forEach((source, at) => {
    const here = drawing.node('source', source, source.pickUp ?? '');
    const player = performers.get(source.performerId ?? '');
    if (player) drawing.link(drawing.node('player', player, player.role), here);
    const input = derived.inputs[at];
    const alternate = alternates.get(input?.alternateId ?? '');
    if (alternate) {
      const name = alternate.name === '' ? alternate.kind : alternate.name;
      drawing.link(
        drawing.node('alternate', { id: alternate.id, name }, alternate.kind),
        here,
        'in its place',
      );
    }
    const socket = sockets.get(input?.socketId ?? '');
    if (!socket) return;
    const phantom = derived.plan.patches[at]?.phantomOn ? '48 V on' : '48 V off';
    const name = socketOnBox(boxes.get(socket.boxId), socket);
    drawing.link(here, drawing.node('socket', { id: socket.id, name }, phantom));
  });
}

/** A source goes to its copies through its socket where it has one, and straight where it comes back inside. */
function drawCopies(drawing: Drawing, sheet: ActSheet, derived: Derived): void {
  const places = new Map(sheet.sources.map((source, at) => [source.id, at]));
  const sockets = new Set(sheet.sockets.map((socket) => socket.id));
  const inMain = new Map(sheet.copies.map((copy) => [`${copy.sourceId} ${copy.purpose}`, copy.inMainMix]));
  const main = () => drawing.node('main mix', { id: sheet.rig.id, name: 'Main mix' });
  for (const { sourceId, purpose, channel } of derived.plan.copies) {
    const at = places.get(sourceId);
    const source = sheet.sources[at ?? -1];
    if (at === undefined || !source || channel === null) continue;
    const copy = drawing.node('copy', source, `channel ${channel}, ${copyName(purpose)}`, purpose);
    const socketId = derived.inputs[at]?.socketId ?? '';
    drawing.link(sockets.has(socketId) ? pathKey('socket', socketId) : pathKey('source', sourceId), copy);
    const heardInHall = inMain.get(`${sourceId} ${purpose}`) ?? (purpose === 'foh' || purpose === 'parallel');
    if (heardInHall) drawing.link(copy, main());
  }
}

function drawMixes(drawing: Drawing, sheet: ActSheet, derived: Derived): void {
  const buses = new Map(sheet.buses.map((bus) => [bus.id, bus.number]));
  const outputs = byId(sheet.outputs);
  const devices = byId(sheet.devices);
  for (const output of sheet.outputs) drawing.node('output', output, output.reservedFor ?? output.place);
  sheet.mixes.forEach((mix, mixAt) => {
    const planned = derived.plan.mixes[mixAt];
    if (!planned) return;
    const here = drawing.node('mix', mix, whereMixIsMade(mix, planned, buses));
    const given = planned.deviceIds.flatMap((id) => devices.get(id) ?? []);
    const ends = given.map((device) => drawing.node('device', device, device.kind));
    // The band's own device is no row of the rig; it is there all the same.
    if (ends.length === 0 && mix.ownDevice === true)
      ends.push(
        drawing.node('device', { id: mix.id, name: `Own device of ${mix.name}` }, mix.deviceKind ?? ''),
      );
    const ways = planned.outputIds.filter((id) => outputs.has(id));
    drawWaysOut(drawing, here, ways, ends, given);
    // What a band mixes itself for its own devices reaches them without the house.
    if (ways.length === 0 && mix.mixedAt === 'elsewhere') for (const end of ends) drawing.link(here, end);
    drawListeners(drawing, sheet, mix.id, ends);
    drawCueOfMix(drawing, sheet, derived.cues[mixAt]);
  });
  drawCueOutputs(drawing, sheet);
}

/** From a mix through its outputs to its devices; `given` are the rows behind the ends, where they are the house's. */
function drawWaysOut(
  drawing: Drawing,
  mixKey: string,
  ways: readonly Id[],
  ends: readonly string[],
  given: readonly Device[],
): void {
  for (const way of ways) {
    drawing.link(mixKey, pathKey('output', way));
    for (const [at, end] of ends.entries())
      if (hangsOn(given[at], way, ways)) drawing.link(pathKey('output', way), end);
  }
}

/** A device that is wired to some of a mix's outputs hangs on those; any other may be plugged to each of them. */
function hangsOn(device: Device | undefined, outputId: Id, ways: readonly Id[]): boolean {
  const wired = [device?.outputId, device?.secondOutputId].filter((id) => ways.some((way) => way === id));
  return wired.length === 0 || wired.includes(outputId);
}

function whereMixIsMade(mix: Mix, planned: PlannedMix, buses: ReadonlyMap<Id, number>): string {
  if (mix.mixedAt === 'elsewhere') return 'made on another desk';
  const numbers = planned.busIds.map((id) => buses.get(id)).join(' and ');
  return numbers === '' ? 'no bus' : `bus ${numbers}`;
}

function drawListeners(drawing: Drawing, sheet: ActSheet, mixId: Id, ends: readonly string[]): void {
  for (const listener of sheet.listeners) {
    if (listener.mixId !== mixId) continue;
    const performer = sheet.performers.find((it) => it.id === listener.performerId);
    if (!performer) continue;
    const ears = drawing.node('listener', performer, performer.role);
    for (const end of ends) drawing.link(end, ears);
  }
}

function drawCueOfMix(drawing: Drawing, sheet: ActSheet, cue: Cue | undefined): void {
  const cueOutput = sheet.cueOutputs.find((it) => it.id === cue?.cueOutputId);
  if (!cue || !cueOutput) return;
  const here = drawing.node('cue', cueOutput, cueOutput.kind === 'wedge' ? 'cue wedge' : 'cue pack');
  drawing.link(pathKey('mix', cue.mixId), here, 'while it is being checked', cue.offsetDb);
}

function drawCueOutputs(drawing: Drawing, sheet: ActSheet): void {
  const devices = byId(sheet.devices);
  for (const cue of sheet.cueOutputs) {
    const here = drawing.node('cue', cue, cue.kind === 'wedge' ? 'cue wedge' : 'cue pack');
    const device = devices.get(cue.deviceId ?? '');
    const end = device && drawing.node('device', device, 'of the engineer');
    for (const id of [cue.outputId, cue.secondOutputId]) {
      if (id === null) continue;
      drawing.link(here, pathKey('output', id));
      if (end) drawing.link(pathKey('output', id), end);
    }
  }
}

function drawFeeds(drawing: Drawing, derived: Derived): void {
  for (const feed of [...derived.feeds.flat(), ...derived.secondFeeds])
    if (feed.purpose !== null)
      drawing.link(
        pathKey('copy', feed.sourceId, feed.purpose),
        pathKey('mix', feed.mixId),
        feed.tap,
        feed.levelDb,
      );
  for (const { sourceId, mixIds } of derived.splits)
    for (const mixId of mixIds) drawing.link(pathKey('source', sourceId), pathKey('mix', mixId), 'split');
}

function drawReturns(drawing: Drawing, sheet: ActSheet): void {
  for (const decision of sheet.decisions)
    if (decision.about === 'effect send')
      drawing.link(
        pathKey('copy', decision.sourceId, decision.purpose),
        pathKey('source', decision.returnSourceId),
        'through the effect',
      );
  for (const source of sheet.sources) {
    const here = pathKey('source', source.id);
    if (source.returnsMixId !== null) drawing.link(pathKey('mix', source.returnsMixId), here, 'comes back');
    if (source.returnsCueOutputId !== null)
      drawing.link(pathKey('cue', source.returnsCueOutputId), here, 'comes back');
  }
}

/** Puts every finding where it arises: on the nodes of its subjects, or on the link of a feed. */
function markFindings(paths: SignalPaths, derived: Derived): void {
  const nodes = new Map(paths.nodes.map((node) => [node.key, node]));
  const linksOfFeed = new Map<string, PathLink[]>();
  for (const link of paths.links) {
    const from = nodes.get(link.from);
    if (from?.at !== 'copy') continue;
    const feed = feedName(from.id, link.to);
    linksOfFeed.set(feed, [...(linksOfFeed.get(feed) ?? []), link]);
  }
  derived.findings.forEach((finding, place) => {
    for (const subject of finding.subjects)
      if (subject.of === 'feed') {
        const feed = feedName(subject.sourceId, pathKey('mix', subject.mixId));
        for (const link of linksOfFeed.get(feed) ?? []) link.findings.push(place);
      } else for (const key of keysOf(subject, derived)) nodes.get(key)?.findings.push(place);
  });
}

const feedName = (sourceId: Id, toKey: string) => JSON.stringify([sourceId, toKey]);

function keysOf(subject: Exclude<Subject, { of: 'feed' }>, derived: Derived): string[] {
  switch (subject.of) {
    case 'act':
      return [];
    case 'performer':
      return [pathKey('player', subject.id), pathKey('listener', subject.id)];
    case 'cueOutput':
      return [pathKey('cue', subject.id)];
    case 'bus':
      return derived.plan.mixes
        .filter((mix) => mix.busIds.includes(subject.id))
        .map((mix) => pathKey('mix', mix.mixId));
    case 'channel':
      return derived.plan.copies
        .filter((copy) => copy.channel === subject.channel)
        .map((copy) => pathKey('copy', copy.sourceId, copy.purpose));
    default:
      return [pathKey(subject.of, subject.id)];
  }
}
