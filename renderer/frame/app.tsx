import { Suspense, useEffect } from 'react';
import type { BindingId } from '../keys/bindings.ts';
import { useKeys } from '../keys/use-keys.ts';
import { type Here, useHere } from '../state/here.tsx';
import { loadReader } from '../state/reading-cache.ts';
import { moments } from '../state/view-store.ts';
import { words } from '../wording/words.ts';
import { BottomLine } from './bottom-line.tsx';
import { FindAnything } from './find-anything.tsx';
import { Guide } from './guide.tsx';
import { KeyCard } from './key-card.tsx';
import { goToNextRegion } from './regions.ts';
import { RunningOrder } from './running-order.tsx';
import { KeepDialog, screens } from './screens.ts';
import { TopBar } from './top-bar.tsx';
import { useComeForward } from './use-come-forward.ts';
import { useFileDrop } from './use-file-drop.ts';
import { OpenFailed, Opening } from './whole-page-states.tsx';
import './app.css';

export function App() {
  const here = useHere();
  const { phase, view } = here;
  useEffect(() => {
    document.documentElement.dataset.theme = view.theme;
  }, [view.theme]);
  const actName = here.open?.sheet.act.name;
  const called = useComeForward();
  useEffect(() => {
    const usual = [actName, words.moments[view.moment], words.program].filter(Boolean).join(' – ');
    document.title = called ?? usual;
  }, [actName, view.moment, called]);
  useEffect(() => {
    if (phase === 'open') void loadReader();
  }, [phase]);
  const dropping = useFileDrop();
  const run = (id: BindingId) => actions(here)[id]();
  useKeys((id) => {
    if (phase === 'open') run(id);
  });

  if (phase === 'opening') return <Opening />;
  if (phase === 'failed') return <OpenFailed />;
  const needsNoAct = view.moment === 'rig' || view.moment === 'recall';
  const isEmpty = here.open === null && !needsNoAct && !(view.moment === 'advance' && here.day);
  const Screen = isEmpty ? Guide : screens[view.moment];
  return (
    <div className="frame">
      <RunningOrder onNewAct={() => here.look({ moment: 'advance', newAct: true })} />
      <TopBar />
      <main className="frame-main" data-region="main">
        <Suspense fallback={<p className="frame-waiting">{words.connection.opening}</p>}>
          <Screen />
        </Suspense>
      </main>
      {dropping !== null && (
        <p role="status" className="frame-drop">
          {dropping}
        </p>
      )}
      <BottomLine />
      {view.open === 'find' && <FindAnything run={run} />}
      {view.open === 'keys' && <KeyCard />}
      {view.open === 'keep' && (
        <Suspense>
          <KeepDialog />
        </Suspense>
      )}
    </div>
  );
}

function actions({ view, look, undo, redo, acts, open }: Here): Record<BindingId, () => void> {
  const toMoment = Object.fromEntries(moments.map((moment) => [moment, () => look({ moment })])) as Record<
    (typeof moments)[number],
    () => void
  >;
  const step = (by: number) => {
    const next = acts[acts.findIndex((act) => act.id === open?.sheet.act.id) + by];
    if (next) look({ actId: next.id });
  };
  return {
    ...toMoment,
    find: () => look({ open: view.open === 'find' ? 'nothing' : 'find' }),
    keys: () => look({ open: view.open === 'keys' ? 'nothing' : 'keys' }),
    keep: () => look({ open: view.open === 'keep' ? 'nothing' : 'keep' }),
    undo,
    redo,
    theme: () => look({ theme: view.theme === 'night' ? 'day' : 'night' }),
    region: () => goToNextRegion(1),
    regionBack: () => goToNextRegion(-1),
    actBefore: () => step(-1),
    actAfter: () => step(1),
  };
}
