import type { Finding } from '../../../core/derive/derived.ts';
import type { Mix, Source } from '../../../core/show/act.ts';
import type { Id } from '../../../core/show/rig.ts';
import type { Purpose } from '../../../core/show/words.ts';
import { levelText } from '../../parts/format.ts';
import {
  busText,
  deviceNames,
  deviceText,
  mixNumber,
  outputText,
  socketName,
  whoHears,
} from '../../parts/names.ts';
import type { ActOnScreen } from '../../state/derive-cache.ts';
import { findingPlaces } from '../../state/finding-places.ts';
import { words } from '../../wording/words.ts';

/** The stations of the way of a sound, from left to right. */
export const stations = ['performer', 'pickUp', 'socket', 'copies', 'mixes', 'outputs', 'devices'] as const;
export type Station = (typeof stations)[number];

export type PathNode = {
  key: string;
  station: Station;
  /** Place from the top in steps of one node; may be a fraction. */
  y: number;
  name: string;
  detail: string;
  purpose: Purpose | null;
  findings: readonly Finding[];
  leads: { sourceId?: Id; mixId?: Id };
};

export type PathLine = { from: string; to: string; purpose: Purpose | null };
export type PathDrawing = { nodes: PathNode[]; lines: PathLine[]; height: number };

/** The way of one source to everybody who hears it. */
export function pathOfSource(open: ActOnScreen, source: Source): PathDrawing {
  const { sheet, derived } = open;
  const builder = new Builder(open);
  const feeds = derived.feeds.flat().filter((feed) => feed.sourceId === source.id && feed.purpose !== null);
  const copies = derived.plan.copies.filter((copy) => copy.sourceId === source.id);
  // Mixes in the order of the copies that feed them, so that no two lines cross.
  const ordered = copies.flatMap((copy) => feeds.filter((feed) => feed.purpose === copy.purpose));
  const mixRow = new Map(ordered.map((feed, row) => [feed.mixId, row]));
  let unfedRow = ordered.length;
  for (const copy of copies) {
    const rows = ordered
      .filter((feed) => feed.purpose === copy.purpose)
      .map((feed) => mixRow.get(feed.mixId) ?? 0);
    builder.copy(source, copy.purpose, rows.length > 0 ? mean(rows) : unfedRow++);
  }
  builder.upToSocket(
    source,
    (Math.max(unfedRow, 1) - 1) / 2,
    copies.map((copy) => copy.purpose),
  );
  for (const feed of ordered) {
    const mix = sheet.mixes.find((it) => it.id === feed.mixId);
    if (mix) builder.mixOut(mix, mixRow.get(mix.id) ?? 0, `${levelText(feed.levelDb)} dB`);
    builder.line(`copy ${source.id} ${feed.purpose}`, `mix ${feed.mixId}`, feed.purpose);
  }
  return builder.drawing();
}

/** Everything that one mix holds, and where it goes. */
export function pathOfMix(open: ActOnScreen, mix: Mix): PathDrawing {
  const builder = new Builder(open);
  const rows = open.sheet.sources.flatMap((source, place) => {
    const feed = open.derived.feeds[place]?.find((it) => it.mixId === mix.id);
    return feed && feed.purpose !== null ? [{ source, feed, purpose: feed.purpose }] : [];
  });
  rows.forEach(({ source, feed, purpose }, row) => {
    builder.copy(source, purpose, row, `${levelText(feed.levelDb)} dB`);
    builder.upToSocket(source, row, [purpose]);
    builder.line(`copy ${source.id} ${purpose}`, `mix ${mix.id}`, purpose);
  });
  builder.mixOut(mix, Math.max(0, (rows.length - 1) / 2), deviceText(mix));
  return builder.drawing();
}

const mean = (numbers: readonly number[]) => numbers.reduce((sum, it) => sum + it, 0) / numbers.length;

class Builder {
  readonly #open: ActOnScreen;
  readonly #places: ReturnType<typeof findingPlaces>;
  readonly #nodes: PathNode[] = [];
  readonly #lines: PathLine[] = [];

  constructor(open: ActOnScreen) {
    this.#open = open;
    this.#places = findingPlaces(open);
  }

  /** Performer, pick-up and socket of a source in one row, joined to its copies. */
  upToSocket(source: Source, y: number, purposes: readonly Purpose[]): void {
    const { sheet, derived } = this.#open;
    const performer = sheet.performers.find((it) => it.id === source.performerId);
    const patch = derived.plan.patches.find((it) => it.sourceId === source.id);
    const leads = { sourceId: source.id };
    const add = (
      station: Station,
      key: string,
      name: string,
      detail: string,
      findings: readonly Finding[] = [],
    ) => this.#nodes.push({ key, station, y, name, detail, purpose: null, findings, leads });
    const pickUp = [source.pickUp ?? words.path.notSaid, source.pickUpModel].filter(Boolean).join(' ');
    add('performer', `performer ${source.id}`, performer?.name ?? words.path.nobody, performer?.role ?? '');
    add('pickUp', `pickUp ${source.id}`, source.name, pickUp, this.#places.ofSource.get(source.id));
    add(
      'socket',
      `socket ${source.id}`,
      socketName(sheet, patch?.socketId ?? null) ?? words.path.noSocket,
      patch?.phantomOn ? words.path.phantomOn : '',
    );
    this.line(`performer ${source.id}`, `pickUp ${source.id}`, null);
    this.line(`pickUp ${source.id}`, `socket ${source.id}`, null);
    for (const purpose of purposes) this.line(`socket ${source.id}`, `copy ${source.id} ${purpose}`, purpose);
  }

  copy(source: Source, purpose: Purpose, y: number, detail?: string): void {
    const copy = this.#open.derived.plan.copies.find(
      (it) => it.sourceId === source.id && it.purpose === purpose,
    );
    const channel = copy?.channel ?? null;
    this.#nodes.push({
      key: `copy ${source.id} ${purpose}`,
      station: 'copies',
      y,
      name: channel === null ? words.path.noChannel : words.common.channel(channel),
      detail: detail ?? words.purpose[purpose].name,
      purpose,
      findings: [],
      leads: { sourceId: source.id },
    });
  }

  /** A mix with its output and device in one row. */
  mixOut(mix: Mix, y: number, detail: string): void {
    const { sheet, derived } = this.#open;
    const planned = derived.plan.mixes.find((it) => it.mixId === mix.id);
    const leads = { mixId: mix.id };
    const findings = this.#places.ofMix.get(mix.id) ?? [];
    const number = words.listening.mix(mixNumber(sheet, mix.id));
    const outputs = outputText(sheet, planned) ?? words.mixes.noOutput;
    const devices = deviceNames(sheet, planned) ?? deviceText(mix);
    const base = { y, purpose: null, leads };
    this.#nodes.push(
      {
        ...base,
        key: `mix ${mix.id}`,
        station: 'mixes',
        name: whoHears(sheet, mix),
        detail: `${number}, ${detail}`,
        findings,
      },
      {
        ...base,
        key: `output ${mix.id}`,
        station: 'outputs',
        name: outputs,
        detail: words.mixes.bus(busText(sheet, planned)),
        findings: [],
      },
      {
        ...base,
        key: `device ${mix.id}`,
        station: 'devices',
        name: devices,
        detail: deviceText(mix),
        findings: [],
      },
    );
    this.line(`mix ${mix.id}`, `output ${mix.id}`, null);
    this.line(`output ${mix.id}`, `device ${mix.id}`, null);
  }

  line(from: string, to: string, purpose: Purpose | null): void {
    this.#lines.push({ from, to, purpose });
  }

  drawing(): PathDrawing {
    return {
      nodes: this.#nodes,
      lines: this.#lines,
      height: Math.max(0, ...this.#nodes.map((node) => node.y)) + 1,
    };
  }
}
