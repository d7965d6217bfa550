import { useEffect, useLayoutEffect, useMemo, useRef, useState } from 'react';
import type { Finding } from '../../../core/derive/derived.ts';
import type { Id } from '../../../core/show/rig.ts';
import { CopyMark } from '../../parts/copy-mark.tsx';
import { FindingsList } from '../../parts/findings-list.tsx';
import { levelText } from '../../parts/format.ts';
import { whoHears } from '../../parts/names.ts';
import { SeverityMark, worstOf } from '../../parts/severity-mark.tsx';
import type { ActOnScreen } from '../../state/derive-cache.ts';
import { placeOfFinding } from '../../state/finding-places.ts';
import { useHere } from '../../state/here.tsx';
import type { View } from '../../state/view-store.ts';
import { words } from '../../wording/words.ts';
import {
  columnShares,
  type PathColumn,
  type PathKind,
  type PlacedNode,
  type PlacedPaths,
  pathKinds,
  placedPaths,
} from './path-layout.ts';
import './path-screen.css';

const leastColumnWidth = 100;
const gap = 30;
const top = 6;
/** Where columns are narrow a name has two lines. */
const narrowWidth = 118;
const nodeSizes = { wide: { height: 42, step: 50 }, narrow: { height: 55, step: 62 } };
type NodeSize = (typeof nodeSizes)['wide'];

type Choice = { id: Id; name: string };

/** The way of a source, a mix or an output, drawn from who plays to who listens, findings where they arise. */
export function PathScreen({ open }: { open: ActOnScreen }) {
  const { view, look } = useHere();
  const back = useRef<HTMLButtonElement>(null);
  const of = view.path ?? 'source';
  const choices = useMemo(() => choicesOf(open), [open]);
  const ids = { source: view.sourceId, mix: view.mixId, output: view.outputId };
  const list = choices[of];
  const at = Math.max(
    0,
    list.findIndex(({ id }) => id === ids[of]),
  );
  const chosen = list[at];
  const paths = useMemo(() => placedPaths(open, of, chosen?.id ?? ''), [open, of, chosen]);
  const findings = useMemo(() => findingsOf(open, paths), [open, paths]);
  useEffect(() => back.current?.focus(), []);

  const choose = (id: Id | undefined) => {
    if (id !== undefined) look({ [`${of}Id` as const]: id });
  };
  const name = chosen?.name ?? '';
  return (
    <section
      className="path"
      aria-label={words.path.title(name)}
      onKeyDown={(event) => {
        if (event.key === 'Escape') look({ path: null });
        else if (event.key === 'PageDown' && !event.altKey) choose(list[at + 1]?.id);
        else if (event.key === 'PageUp' && !event.altKey) choose(list[at - 1]?.id);
        else return;
        event.preventDefault();
      }}
    >
      <div className="path-head">
        <button ref={back} type="button" onClick={() => look({ path: null })}>
          ← {words.path.back}
        </button>
        <h2 className="unseen">{words.path.title(name)}</h2>
        {pathKinds.map((kind) => (
          <button key={kind} type="button" aria-pressed={kind === of} onClick={() => look({ path: kind })}>
            {words.path.kinds[kind]}
          </button>
        ))}
        <select
          aria-label={words.path.of}
          value={chosen?.id ?? ''}
          onChange={({ target }) => choose(target.value)}
        >
          {list.map(({ id, name: label }) => (
            <option key={id} value={id}>
              {label}
            </option>
          ))}
        </select>
      </div>
      <PathSheet open={open} paths={paths} />
      {findings.length > 0 && (
        <section className="path-findings" aria-label={words.path.findings}>
          <FindingsList
            findings={findings}
            onGo={(finding) => look({ ...placeOfFinding(open, finding), path: null, side: 'details' })}
          />
        </section>
      )}
    </section>
  );
}

function choicesOf({ sheet, derived }: ActOnScreen): Record<PathKind, Choice[]> {
  const used = new Set([
    ...derived.plan.mixes.flatMap((mix) => mix.outputIds),
    ...sheet.cueOutputs.flatMap((cue) => [cue.outputId, cue.secondOutputId]),
  ]);
  return {
    source: sheet.sources,
    mix: sheet.mixes.map((mix, place) => ({ id: mix.id, name: `${place + 1} ${whoHears(sheet, mix)}` })),
    output: sheet.outputs.filter(({ id }) => used.has(id)),
  };
}

/** What is wrong anywhere on the drawn way, the most serious first, as in the whole list. */
function findingsOf({ derived }: ActOnScreen, { nodes, links }: PlacedPaths): Finding[] {
  const places = new Set([...nodes, ...links].flatMap(({ findings }) => findings));
  return derived.findings.filter((_, place) => places.has(place));
}

function PathSheet({ open, paths }: { open: ActOnScreen; paths: PlacedPaths }) {
  const ref = useRef<HTMLElement>(null);
  const [width, setWidth] = useState(0);
  useLayoutEffect(() => {
    const sheet = ref.current;
    if (!sheet) return;
    const sizes = new ResizeObserver(() => setWidth(sheet.clientWidth - 26));
    sizes.observe(sheet);
    return () => sizes.disconnect();
  }, []);
  const unit = columnUnit(paths.columns, width);
  const size = nodeSizes[unit < narrowWidth ? 'narrow' : 'wide'];
  const columns = columnPlaces(paths.columns, unit);
  const drawnWidth = [...columns.values()].reduce((sum, column) => sum + column.width, 0);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a part that scrolls must be reachable by keyboard.
    <section ref={ref} className="path-sheet" tabIndex={0} aria-label={words.mixes.path}>
      <ol className="path-columns" style={{ width: drawnWidth }}>
        {paths.columns.map((column) => (
          <li key={column} style={{ width: columns.get(column)?.width }}>
            {words.path.columns[column]}
          </li>
        ))}
      </ol>
      <div
        className={size === nodeSizes.narrow ? 'path-drawing is-narrow' : 'path-drawing'}
        style={{ height: paths.height * size.step + top, width: drawnWidth }}
      >
        <PathLines open={open} paths={paths} columns={columns} size={size} />
        {paths.nodes.map((node) => (
          <PathStation key={node.key} open={open} node={node} columns={columns} size={size} />
        ))}
      </div>
    </section>
  );
}

type ColumnPlaces = ReadonlyMap<PathColumn, { left: number; width: number }>;

/** What a share of the width is, but never so little that a column cannot be read. */
function columnUnit(names: readonly PathColumn[], width: number): number {
  const shares = names.reduce((sum, name) => sum + columnShares[name], 0);
  return Math.max(leastColumnWidth, width / Math.max(shares, 1));
}

function columnPlaces(names: readonly PathColumn[], unit: number): ColumnPlaces {
  let left = 0;
  return new Map(
    names.map((name) => {
      const column = { left, width: Math.floor(unit * columnShares[name]) };
      left += column.width;
      return [name, column] as const;
    }),
  );
}

const middle = (node: PlacedNode, { height, step }: NodeSize) => top + node.y * step + height / 2;

function PathLines({
  open,
  paths,
  columns,
  size,
}: {
  open: ActOnScreen;
  paths: PlacedPaths;
  columns: ColumnPlaces;
  size: NodeSize;
}) {
  const byKey = new Map(paths.nodes.map((node) => [node.key, node]));
  const arriving = Map.groupBy(paths.links, (link) => link.to);
  return (
    <svg className="path-lines" aria-hidden="true">
      {paths.links.map(({ from, to, purpose, levelDb, findings }) => {
        const [start, end] = [byKey.get(from), byKey.get(to)];
        const [startColumn, endColumn] = [start && columns.get(start.column), end && columns.get(end.column)];
        if (!start || !end || !startColumn || !endColumn) return null;
        const [x1, y1] = [startColumn.left + startColumn.width - gap, middle(start, size)];
        const [x2, y2] = [endColumn.left, middle(end, size)];
        const bend = (x1 + x2) / 2;
        const worst = worstOf(findings.flatMap((place) => open.derived.findings[place] ?? []));
        // Where many lines arrive at one place, their levels are written where they leave.
        const isCrowded = (arriving.get(to)?.length ?? 0) > 1;
        return (
          <g key={`${from} ${to}`} className={purpose ? `copy-ink copy-${purpose}` : 'path-plain'}>
            <path
              className={worst ? 'has-finding' : undefined}
              d={`M${x1} ${y1}C${bend} ${y1} ${bend} ${y2} ${x2} ${y2}`}
            />
            {levelDb !== null && start.at === 'copy' && (
              <text x={(isCrowded ? x1 + gap : x2) - 3} y={(isCrowded ? y1 : y2) - 4}>
                {levelText(levelDb)}
              </text>
            )}
          </g>
        );
      })}
    </svg>
  );
}

function PathStation({
  open,
  node,
  columns,
  size,
}: {
  open: ActOnScreen;
  node: PlacedNode;
  columns: ColumnPlaces;
  size: NodeSize;
}) {
  const { look } = useHere();
  const column = columns.get(node.column) ?? { left: 0, width: leastColumnWidth };
  const findings = node.findings.flatMap((place) => open.derived.findings[place] ?? []);
  const worst = worstOf(findings);
  const to = leadOf(open, node);
  return (
    <button
      type="button"
      className={worst ? `path-node is-${worst.replace(' ', '-')}` : 'path-node'}
      style={{
        left: column.left,
        top: top + node.y * size.step,
        width: column.width - gap,
        height: size.height,
      }}
      title={[node.name, node.detail, ...findings.map((finding) => finding.cause)].filter(Boolean).join('\n')}
      onClick={() => look({ ...to, side: 'details' })}
    >
      <span className="path-node-name">
        {node.purpose && <CopyMark purpose={node.purpose} />}
        <strong>{node.name}</strong>
      </span>
      <span className="path-node-detail cut">{detailOf(open, node)}</span>
      {worst && <SeverityMark severity={worst} />}
    </button>
  );
}

/** A copy is told by its channel and purpose, which fit; everything else as it comes. */
function detailOf({ derived }: ActOnScreen, node: PlacedNode): string {
  const copy = derived.plan.copies.find((it) => it.sourceId === node.id && it.purpose === node.purpose);
  if (!copy || copy.channel === null) return node.detail;
  return `${words.common.channel(copy.channel)}, ${words.purpose[copy.purpose].short}`;
}

/** Where choosing a node leads: the path of its source or its mix. */
function leadOf({ derived: { plan, cues }, sheet }: ActOnScreen, node: PlacedNode): Partial<View> {
  const toMix = (mixId: string | undefined): Partial<View> =>
    mixId === undefined ? {} : { mixId, path: 'mix' };
  switch (node.at) {
    case 'source':
    case 'copy':
      return { sourceId: node.id, path: 'source' };
    case 'socket': {
      const patch = plan.patches.find((it) => it.socketId === node.id);
      return patch ? { sourceId: patch.sourceId, path: 'source' } : {};
    }
    case 'mix':
      return { mixId: node.id, path: 'mix' };
    case 'cue':
      return toMix(cues.find((it) => it.cueOutputId === node.id)?.mixId);
    case 'output':
      return { outputId: node.id, path: 'output' };
    case 'device':
      return toMix(plan.mixes.find((it) => it.deviceIds.includes(node.id))?.mixId);
    case 'listener':
      return toMix(sheet.listeners.find((it) => it.performerId === node.id)?.mixId);
    default:
      return {};
  }
}
