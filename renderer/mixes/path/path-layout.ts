import {
  derivePaths,
  type PathNode,
  type PathStage,
  pathKey,
  pathThrough,
  type SignalPaths,
} from '../../../core/derive/path.ts';
import type { Id } from '../../../core/show/rig.ts';
import { type Purpose, purposes } from '../../../core/show/words.ts';
import type { ActOnScreen } from '../../state/derive-cache.ts';

/** The columns of the drawing from left to right, and what stands in each. */
const pathColumns = {
  player: ['player'],
  source: ['source', 'alternate'],
  socket: ['socket'],
  copy: ['copy'],
  mix: ['mix', 'main mix'],
  cue: ['cue'],
  output: ['output'],
  device: ['device'],
  listener: ['listener'],
} as const satisfies Record<string, readonly PathStage[]>;
export type PathColumn = keyof typeof pathColumns;

/** How much of the width a column takes: names of sources are long, those of sockets short. */
export const columnShares: Record<PathColumn, number> = {
  player: 0.95,
  source: 1.25,
  socket: 0.9,
  copy: 1.25,
  mix: 1.05,
  cue: 0.95,
  output: 0.9,
  device: 1.05,
  listener: 0.85,
};

export type PlacedNode = PathNode & {
  column: PathColumn;
  /** Place from the top in steps of one node; may be a fraction. */
  y: number;
  purpose: Purpose | null;
};

export type PlacedPaths = {
  columns: PathColumn[];
  nodes: PlacedNode[];
  links: (SignalPaths['links'][number] & { purpose: Purpose | null })[];
  height: number;
};

/** What a path can be drawn of. */
export const pathKinds = ['source', 'mix', 'output'] as const;
export type PathKind = (typeof pathKinds)[number];

/** The whole way through one thing, each node at its place. The cue hears every mix: a source's path is without it. */
export function placedPaths({ sheet, derived }: ActOnScreen, of: PathKind, id: Id): PlacedPaths {
  const all = derivePaths(sheet, derived);
  const part = pathThrough(of === 'source' ? without(all, 'cue') : all, pathKey(of, id));
  const columnOf = (at: PathStage) => columnNames.find((name) => pathColumns[name].some((it) => it === at));
  const named = part.nodes.flatMap((node) => {
    const column = columnOf(node.at);
    return column ? [{ ...node, column, purpose: purposeOf(node) }] : [];
  });
  const columns = columnNames.filter((name) => named.some((node) => node.column === name));
  const places = placesOf(
    columns.map((name) => named.filter((node) => node.column === name).map((it) => it.key)),
    part,
  );
  const purposeByKey = new Map(named.map((node) => [node.key, node.purpose]));
  return {
    columns,
    nodes: named.map((node) => ({ ...node, y: places.get(node.key) ?? 0 })),
    links: part.links.map((link) => ({
      ...link,
      purpose: purposeByKey.get(link.from) ?? purposeByKey.get(link.to) ?? null,
    })),
    height: Math.max(0, ...places.values()) + 1,
  };
}

const columnNames = Object.keys(pathColumns) as PathColumn[];

function without(paths: SignalPaths, stage: PathStage): SignalPaths {
  const gone = new Set(paths.nodes.filter((node) => node.at === stage).map((node) => node.key));
  return {
    nodes: paths.nodes.filter((node) => !gone.has(node.key)),
    links: paths.links.filter((link) => !gone.has(link.from) && !gone.has(link.to)),
  };
}

const purposeOf = (node: PathNode): Purpose | null =>
  node.at === 'copy' ? (purposes.find((it) => node.key === pathKey('copy', node.id, it)) ?? null) : null;

/**
 * Places from the top: the longest column is spread evenly, every other node stands at the middle of what it is
 * joined to, as far as its neighbours leave room.
 */
function placesOf(columns: readonly string[][], { links }: SignalPaths): Map<string, number> {
  const places = new Map<string, number>();
  const longest = columns.reduce(
    (best, keys, at) => (keys.length > (columns[best]?.length ?? 0) ? at : best),
    0,
  );
  columns[longest]?.forEach((key, place) => {
    places.set(key, place);
  });
  const outward = [...columns.slice(longest + 1), ...columns.slice(0, longest).reverse()];
  for (const keys of outward) {
    const wanted = keys
      .map((key) => ({ key, at: middleOfJoined(key, links, places) }))
      .sort((a, b) => a.at - b.at);
    let free = 0;
    for (const { key, at } of wanted) {
      const place = Math.max(free, at);
      places.set(key, place);
      free = place + 1;
    }
  }
  return places;
}

function middleOfJoined(
  key: string,
  links: SignalPaths['links'],
  places: ReadonlyMap<string, number>,
): number {
  const joined = links.flatMap(({ from, to }) => {
    const other = from === key ? places.get(to) : to === key ? places.get(from) : undefined;
    return other === undefined ? [] : [other];
  });
  return joined.length === 0 ? 0 : joined.reduce((sum, it) => sum + it, 0) / joined.length;
}
