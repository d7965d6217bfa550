import { useEffect, useMemo, useRef } from 'react';
import { CopyMark } from '../../parts/copy-mark.tsx';
import { whoHears } from '../../parts/names.ts';
import { SeverityMark, worstOf } from '../../parts/severity-mark.tsx';
import type { ActOnScreen } from '../../state/derive-cache.ts';
import { useHere } from '../../state/here.tsx';
import { words } from '../../wording/words.ts';
import { type PathDrawing, type PathNode, pathOfMix, pathOfSource, stations } from './path-layout.ts';
import './path-screen.css';

const stationWidth = 148;
const nodeWidth = 122;
const nodeHeight = 42;
const step = 52;
const top = 6;

/** The way of the chosen source or mix, drawn from the performer to the devices, findings where they arise. */
export function PathScreen({ open }: { open: ActOnScreen }) {
  const { view, look } = useHere();
  const back = useRef<HTMLButtonElement>(null);
  const { sheet } = open;
  const source = sheet.sources.find((it) => it.id === view.sourceId);
  const mix = sheet.mixes.find((it) => it.id === view.mixId);
  const drawing = useMemo((): PathDrawing => {
    if (view.path === 'mix' && mix) return pathOfMix(open, mix);
    if (source) return pathOfSource(open, source);
    return mix ? pathOfMix(open, mix) : { nodes: [], lines: [], height: 0 };
  }, [open, view.path, source, mix]);
  useEffect(() => back.current?.focus(), []);

  const showsMix = view.path === 'mix' && mix;
  const name = showsMix ? whoHears(sheet, mix) : (source?.name ?? '');
  return (
    <section
      className="path"
      aria-label={words.path.title(name)}
      onKeyDown={(event) => {
        if (event.key === 'Escape') look({ path: null });
      }}
    >
      <div className="path-head">
        <button ref={back} type="button" onClick={() => look({ path: null })}>
          ← {words.path.back}
        </button>
        <h2>{words.path.title(name)}</h2>
        {source && (
          <button type="button" aria-pressed={!showsMix} onClick={() => look({ path: 'source' })}>
            {words.mixes.pathOfSource}
          </button>
        )}
        {mix && (
          <button type="button" aria-pressed={Boolean(showsMix)} onClick={() => look({ path: 'mix' })}>
            {words.mixes.pathOfMix}
          </button>
        )}
      </div>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a part that scrolls must be reachable by keyboard. */}
      <section className="path-sheet" tabIndex={0} aria-label={words.mixes.path}>
        <ol className="path-stations" style={{ width: stations.length * stationWidth }}>
          {stations.map((station) => (
            <li key={station} style={{ width: stationWidth }}>
              {words.path[station]}
            </li>
          ))}
        </ol>
        {drawing.lines.every((line) => !line.to.startsWith('mix')) && (
          <p className="path-nothing">{showsMix ? words.path.nothingMix : words.path.nothing}</p>
        )}
        <div
          className="path-drawing"
          style={{ height: drawing.height * step + top, width: stations.length * stationWidth }}
        >
          <PathLines drawing={drawing} />
          {drawing.nodes.map((node) => (
            <PathStation key={node.key} node={node} />
          ))}
        </div>
      </section>
    </section>
  );
}

const left = (node: PathNode) => stations.indexOf(node.station) * stationWidth;
const middle = (node: PathNode) => top + node.y * step + nodeHeight / 2;

function PathLines({ drawing }: { drawing: PathDrawing }) {
  const byKey = new Map(drawing.nodes.map((node) => [node.key, node]));
  return (
    <svg className="path-lines" aria-hidden="true">
      {drawing.lines.map(({ from, to, purpose }) => {
        const [start, end] = [byKey.get(from), byKey.get(to)];
        if (!start || !end) return null;
        const [x1, y1, x2, y2] = [left(start) + nodeWidth, middle(start), left(end), middle(end)];
        const bend = (x1 + x2) / 2;
        return (
          <path
            key={`${from} ${to}`}
            className={purpose ? `copy-mark-${purpose}` : undefined}
            d={`M${x1} ${y1}C${bend} ${y1} ${bend} ${y2} ${x2} ${y2}`}
          />
        );
      })}
    </svg>
  );
}

function PathStation({ node }: { node: PathNode }) {
  const { look } = useHere();
  const worst = worstOf(node.findings);
  return (
    <button
      type="button"
      className={worst ? 'path-node has-finding' : 'path-node'}
      style={{ left: left(node), top: top + node.y * step, width: nodeWidth, height: nodeHeight }}
      title={[node.name, node.detail, ...node.findings.map((finding) => finding.cause)]
        .filter(Boolean)
        .join('\n')}
      onClick={() => look({ ...node.leads, path: null, side: 'details' })}
    >
      <span className="path-node-name">
        {node.purpose && <CopyMark purpose={node.purpose} />}
        {worst && <SeverityMark severity={worst} />}
        <strong className="cut">{node.name}</strong>
      </span>
      <span className="path-node-detail cut">{node.detail}</span>
    </button>
  );
}
