import { useCallback, useMemo, useRef, useState } from 'react';
import { purposes } from '../../core/show/words.ts';
import { CopyMark } from '../parts/copy-mark.tsx';
import { EmptyScreen } from '../parts/empty-screen.tsx';
import type { ActOnScreen } from '../state/derive-cache.ts';
import { useHere } from '../state/here.tsx';
import { words } from '../wording/words.ts';
import { MixGrid } from './mix-grid.tsx';
import { filteredTable, mixTable } from './mix-table.ts';
import { MixTools } from './mix-tools.tsx';
import { PathScreen } from './path/path-screen.tsx';
import { RestoreDialog } from './restore-dialog.tsx';
import { SidePanel } from './side-panel.tsx';
import './mixes-screen.css';

export function MixesScreen() {
  const { open, look } = useHere();
  if (!open || open.sheet.sources.length === 0 || open.sheet.mixes.length === 0)
    return (
      <EmptyScreen
        what={words.mixes.empty}
        todo={words.mixes.emptyTodo}
        action={{ label: words.mixes.toAdvance, run: () => look({ moment: 'advance' }) }}
      />
    );
  return <MixesOfAct open={open} />;
}

function MixesOfAct({ open }: { open: ActOnScreen }) {
  const { view, look, change, tell } = useHere();
  const place = useRef<HTMLDivElement>(null);
  const all = useMemo(() => mixTable(open), [open]);
  const { filter, hidden, follows, mixId, sourceId, side } = view;
  const heardIn = follows ? mixId : null;
  const table = useMemo(
    () => filteredTable(all, { text: filter, hidden, heardIn }),
    [all, filter, hidden, heardIn],
  );
  const [isRestoring, setRestoring] = useState(false);
  const focusOn = useCallback((selector: string) => {
    place.current?.querySelector<HTMLElement>(selector)?.focus({ preventScroll: true });
  }, []);
  const toTable = useCallback(() => focusOn('.mix-cells'), [focusOn]);
  const toFilter = useCallback(() => focusOn('.mix-filter'), [focusOn]);
  const toDetails = useCallback(() => {
    look({ side: 'details' });
    // The panel is drawn with the next frame.
    requestAnimationFrame(() => focusOn('.details-part :is(select, input)'));
  }, [look, focusOn]);
  const toFindings = useCallback(
    () => look({ side: side === 'findings' ? 'closed' : 'findings' }),
    [look, side],
  );
  const hasPanel = view.path === null && side !== 'closed';
  const isNothing = table.rows.length === 0 || table.columns.length === 0;
  return (
    <div className={hasPanel ? 'mixes' : 'mixes is-alone'} ref={place}>
      {view.path ? (
        <PathScreen open={open} />
      ) : (
        <div className="mixes-table">
          <MixTools all={all} shown={table} findingCount={open.derived.findings.length} onTable={toTable} />
          {isNothing ? (
            <EmptyScreen
              what={words.mixes.noMatch}
              todo={words.mixes.noMatchTodo}
              action={{
                label: words.mixes.showAll,
                run: () => look({ filter: '', hidden: new Set(), follows: false }),
              }}
            />
          ) : (
            <MixGrid
              open={open}
              table={table}
              sourceId={sourceId}
              mixId={mixId}
              hidden={hidden}
              follows={follows}
              look={look}
              change={change}
              tell={tell}
              onDetails={toDetails}
              onFindings={toFindings}
              onFilter={toFilter}
            />
          )}
          <Legend onRestore={() => setRestoring(true)} />
        </div>
      )}
      {isRestoring && <RestoreDialog open={open} onClose={() => setRestoring(false)} />}
      {hasPanel && <SidePanel open={open} table={table} onBack={toTable} />}
    </div>
  );
}

function Legend({ onRestore }: { onRestore: () => void }) {
  const { look } = useHere();
  return (
    <p className="mixes-legend">
      {purposes.map((purpose) => (
        <span key={purpose}>
          <CopyMark purpose={purpose} /> {words.purpose[purpose].short}
        </span>
      ))}
      <span>
        <u>−6</u> {words.mixes.decidedMark}
      </span>
      <button type="button" className="plain" onClick={onRestore}>
        {words.restore.open}
      </button>
      <button type="button" className="plain" onClick={() => look({ path: 'source' })}>
        <kbd>P</kbd> {words.mixes.path}
      </button>
    </p>
  );
}
