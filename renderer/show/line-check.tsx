import { useState } from 'react';
import { nextToCheck, progressOf } from '../../core/run/line-check.ts';
import type { LineFault } from '../../core/run/line-faults.ts';
import type { CheckLine, CheckOrder } from '../../core/run/lines-to-check.ts';
import { checkOrders } from '../../core/run/lines-to-check.ts';
import { swapSockets } from '../../core/run/swap-lines.ts';
import { type LineFinding, type LineResult, lineFindings } from '../../core/show/as-ran.ts';
import type { Id } from '../../core/show/rig.ts';
import { useMomentKeys } from '../keys/use-moment-keys.ts';
import type { ActOnScreen } from '../state/derive-cache.ts';
import { useHere } from '../state/here.tsx';
import { newId } from '../state/new-id.ts';
import { words } from '../wording/words.ts';
import { CheckList } from './check-list.tsx';
import { LineLarge } from './line-large.tsx';
import { LineToMend } from './line-to-mend.tsx';
import { keepResult } from './run-changes.ts';
import { WhichCame } from './which-came.tsx';
import './line-check.css';

type Props = {
  open: ActOnScreen;
  lines: readonly CheckLine[];
  results: ReadonlyMap<Id, LineResult>;
  faults: readonly LineFault[];
  order: CheckOrder;
  onOrder: (order: CheckOrder) => void;
  onLeave: () => void;
};

/** One line at a time, in the order of the stage or the desk; what was put off comes back at the end. */
export function LineCheck({ open, lines, results, faults, order, onOrder, onLeave }: Props) {
  const { view, look, change } = useHere();
  const text = words.show;
  const [asks, setAsks] = useState(false);
  const lineOf = (sourceId: Id | null | undefined) => lines.find(({ source }) => source.id === sourceId);
  // What is chosen may be nothing to check, such as a return of the desk.
  const line = lineOf(view.sourceId) ?? lineOf(nextToCheck(lines, results, null)) ?? lines[0];
  const result = line && results.get(line.source.id);
  const came = lineOf(result?.cameSourceId) ?? null;
  const fault = faults.find(({ sourceId }) => sourceId === line?.source.id);

  const go = (sourceId: Id | undefined) => sourceId !== undefined && look({ sourceId });
  const step = (by: number) => {
    const at = line ? lines.indexOf(line) : 0;
    go(lines[Math.max(0, Math.min(lines.length - 1, at + by))]?.source.id);
  };
  const keep = (found: LineFinding, cameSourceId: Id | null = null) => {
    if (!line) return;
    change(keepResult(open.sheet, line.source, found, new Date(), cameSourceId));
    // A swapped line stays in sight: what to do about it stands there.
    if (found === 'swapped') return go(line.source.id);
    const after = new Map<Id, Pick<LineResult, 'found'>>(results).set(line.source.id, { found });
    go(nextToCheck(lines, after, line.source.id) ?? line.source.id);
  };
  const take = (found: LineFinding) => (found === 'swapped' ? setAsks(true) : keep(found));
  const swap = () => {
    if (!line || !came) return;
    const swapped = swapSockets(open.sheet, line, came, new Date().toISOString(), newId);
    if (swapped) change(swapped);
  };

  useMomentKeys((key) => {
    const found = lineFindings[Number(key) - 1];
    if (found) take(found);
    else if (key === 'ArrowDown' || key === 'ArrowRight') step(1);
    else if (key === 'ArrowUp' || key === 'ArrowLeft') step(-1);
    else if (key === 'o') onOrder(order === 'by socket' ? 'by channel' : 'by socket');
    else if (key === 's' && result?.found === 'swapped') swap();
    else if (key === 'Escape') onLeave();
    else return false;
    return true;
  });

  if (!line)
    return (
      <div className="line-check-none">
        <p>{text.noLines}</p>
        <button type="button" onClick={onLeave}>
          {text.backToShow}
        </button>
      </div>
    );
  const progress = progressOf(lines, results);
  const heard = progress.all - progress.left - progress.later;
  return (
    <div className="line-check">
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a part that scrolls must be reachable by keyboard. */}
      <section className="line-check-one" aria-label={text.check} tabIndex={0} data-first-focus>
        <div className="line-check-progress">
          <progress aria-label={text.check} max={progress.all} value={heard} />
          <p role="status">
            <strong>{heard === progress.all ? text.allHeard : text.heard(heard, progress.all)}</strong>{' '}
            {heard < progress.all
              ? text.progress(progress.notOk, progress.later, progress.left)
              : progress.notOk > 0
                ? text.someNotOk(progress.notOk)
                : text.allOk}
          </p>
        </div>
        <LineLarge line={line} result={result ?? null} />
        <fieldset className="line-check-results">
          <legend className="unseen">{text.results}</legend>
          {lineFindings.map((found, place) => (
            <button
              key={found}
              type="button"
              aria-pressed={result?.found === found}
              className={`line-check-result line-check-${found}`}
              onClick={() => take(found)}
            >
              <kbd>{place + 1}</kbd>
              <span className="line-check-sign" aria-hidden="true">
                {text.signs[found]}
              </span>{' '}
              {text.found[found]}
            </button>
          ))}
        </fieldset>
        {fault && fault.found !== 'later' && (
          <LineToMend line={line} fault={fault} came={came} onSwap={swap} />
        )}
        <p className="show-caution">{text.caution}</p>
        <div className="line-check-steps">
          <button type="button" onClick={() => step(-1)}>
            {text.lineBefore} <kbd>←</kbd>
          </button>
          <button type="button" onClick={() => step(1)}>
            {text.lineAfter} <kbd>→</kbd>
          </button>
          <button type="button" onClick={onLeave}>
            {text.backToShow} <kbd>L</kbd>
          </button>
        </div>
      </section>
      <section className="line-check-lines" aria-label={text.lines}>
        <fieldset className="line-check-order">
          <legend className="unseen">{text.order}</legend>
          {checkOrders.map((it) => (
            <button key={it} type="button" aria-pressed={it === order} onClick={() => onOrder(it)}>
              {text.orders[it]}
            </button>
          ))}
          <kbd>O</kbd>
        </fieldset>
        <CheckList lines={lines} results={results} order={order} chosenId={line.source.id} onChoose={go} />
      </section>
      {asks && (
        <WhichCame
          line={line}
          lines={lines}
          onTake={(sourceId) => {
            setAsks(false);
            keep('swapped', sourceId);
          }}
          onClose={() => setAsks(false)}
        />
      )}
    </div>
  );
}
