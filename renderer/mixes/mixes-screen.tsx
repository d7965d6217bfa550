import { useMemo, useRef, useState } from 'react';
import { purposes } from '../../core/show/words.ts';
import { CopyMark } from '../parts/copy-mark.tsx';
import { EmptyScreen } from '../parts/empty-screen.tsx';
import type { ActOnScreen } from '../state/derive-cache.ts';
import { useHere } from '../state/here.tsx';
import { words } from '../wording/words.ts';
import { MixGrid } from './mix-grid.tsx';
import { mixTable } from './mix-table.ts';
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
  const { view, look } = useHere();
  const place = useRef<HTMLDivElement>(null);
  const table = useMemo(() => mixTable(open), [open]);
  const [isRestoring, setRestoring] = useState(false);
  const toTable = () => place.current?.querySelector<HTMLElement>('.mix-grid')?.focus();
  const toDetails = () => {
    look({ side: 'details' });
    // The panel is drawn with the next frame.
    requestAnimationFrame(() =>
      place.current?.querySelector<HTMLElement>('.details-part :is(select, input)')?.focus(),
    );
  };
  return (
    <div className={view.path ? 'mixes is-path' : 'mixes'} ref={place}>
      {view.path ? (
        <PathScreen open={open} />
      ) : (
        <div className="mixes-table">
          <MixGrid key={open.sheet.act.id} open={open} table={table} onDetails={toDetails} />
          <Legend onRestore={() => setRestoring(true)} />
        </div>
      )}
      {isRestoring && <RestoreDialog open={open} onClose={() => setRestoring(false)} />}
      {!view.path && <SidePanel open={open} table={table} onBack={toTable} />}
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
