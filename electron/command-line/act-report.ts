import type { Derived, Feed } from '../../core/derive/derived.ts';
import type { ActSheet } from '../../core/show/act-sheet.ts';
import type { Id } from '../../core/show/rig.ts';
import { socketNames } from '../../core/show/socket-name.ts';
import type { Purpose } from '../../core/show/words.ts';
import { copyWord } from './report-words.ts';

/** One act as rows of words and figures: the same for the tables of a terminal and for JSON. */
export type ActReport = {
  sources: SourceRow[];
  mixes: MixRow[];
  feeds: FeedRow[];
  findings: { severity: string; cause: string; remedy: string }[];
};

export type SourceRow = {
  line: number | null;
  name: string;
  kind: string;
  pair: string | null;
  socket: string | null;
  /** Channel by purpose; null where the desk has none left. */
  channels: { purpose: Purpose; channel: number | null }[];
  phantom: boolean;
  performer: string | null;
};

export type MixRow = {
  name: string;
  listeners: string[];
  device: string | null;
  format: string;
  buses: number[];
  outputs: string[];
  loweredByDb: number;
  cue: string | null;
  cueOffsetDb: number | null;
  cueDelayMs: number | null;
};

export type FeedRow = {
  mix: string;
  source: string;
  copy: string | null;
  channel: number | null;
  levelDb: number | null;
  why: string;
};

export function reportOfAct(sheet: ActSheet, derived: Derived): ActReport {
  const names = namesOf(sheet);
  return {
    sources: sheet.sources.map((source): SourceRow => {
      const patch = derived.plan.patches.find((it) => it.sourceId === source.id);
      return {
        line: source.riderLine,
        name: source.name,
        kind: source.kind,
        pair: names.source.get(source.pairSourceId ?? '') ?? null,
        socket: names.socket.get(patch?.socketId ?? '') ?? null,
        channels: derived.plan.copies
          .filter((copy) => copy.sourceId === source.id)
          .map(({ purpose, channel }) => ({ purpose, channel })),
        phantom: patch?.phantomOn ?? false,
        performer: names.performer.get(source.performerId ?? '') ?? null,
      };
    }),
    mixes: sheet.mixes.map((mix) => mixRow(sheet, derived, names, mix.id)),
    feeds: sheet.mixes.flatMap((mix, column) =>
      derived.feeds.flatMap((row) => {
        const feed = row[column];
        return feed && isWorthSaying(feed) ? [feedRow(names, feed, mix.name)] : [];
      }),
    ),
    findings: derived.findings.map(({ severity, cause, remedy }) => ({ severity, cause, remedy })),
  };
}

/** A feed that flows, or one that was wished for and does not. */
function isWorthSaying(feed: Feed): boolean {
  return feed.levelDb !== null || (feed.wishId !== null && feed.step !== 'no wish');
}

function feedRow(names: Names, feed: Feed, mix: string): FeedRow {
  return {
    mix,
    source: names.source.get(feed.sourceId) ?? '',
    copy: feed.purpose && copyWord(feed.purpose),
    channel: feed.channel,
    levelDb: feed.levelDb,
    why: feed.why,
  };
}

function mixRow(sheet: ActSheet, derived: Derived, names: Names, mixId: Id): MixRow {
  const mix = sheet.mixes.find((it) => it.id === mixId);
  const planned = derived.plan.mixes.find((it) => it.mixId === mixId);
  const cue = derived.cues.find((it) => it.mixId === mixId);
  const listeners = sheet.listeners
    .filter((it) => it.mixId === mixId)
    .map((it) => names.performer.get(it.performerId));
  const devices = (planned?.deviceIds ?? []).map((id) => names.device.get(id) ?? '');
  const own = mix?.ownDevice ? `own ${mix.deviceKind ?? 'device'}` : mix?.deviceKind;
  return {
    name: mix?.name ?? '',
    listeners: listeners.filter((name) => name !== undefined),
    device: devices.length > 0 ? devices.join(' + ') : (own ?? null),
    format: planned?.format ?? 'mono',
    buses: (planned?.busIds ?? []).flatMap((id) => sheet.buses.find((bus) => bus.id === id)?.number ?? []),
    outputs: (planned?.outputIds ?? []).map((id) => names.output.get(id) ?? ''),
    loweredByDb: derived.levels.find((it) => it.mixId === mixId)?.loweredByDb ?? 0,
    cue: names.cueOutput.get(cue?.cueOutputId ?? '') ?? null,
    cueOffsetDb: cue?.offsetDb ?? null,
    cueDelayMs: cue?.delayMs ?? null,
  };
}

type Names = ReturnType<typeof namesOf>;

function namesOf(sheet: ActSheet) {
  const sockets = socketNames(sheet);
  const named = (rows: readonly { id: Id; name: string }[]) => new Map(rows.map((row) => [row.id, row.name]));
  return {
    source: named(sheet.sources),
    performer: named(sheet.performers),
    device: named(sheet.devices),
    output: named(sheet.outputs),
    cueOutput: named(sheet.cueOutputs),
    socket: new Map(sheet.sockets.map(({ id }) => [id, sockets.get(id) ?? '?'])),
  };
}
