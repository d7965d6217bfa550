import { useState } from 'react';
import type { Grid } from '../../core/rider/grid.ts';
import type { RiderRecord } from '../../core/show/rider-record.ts';
import { useHere } from '../state/here.tsx';
import { AddOrReplace } from './add-or-replace.tsx';
import { CompareVersions } from './compare-versions.tsx';
import { riderChange } from './rider-changes.ts';

type Props = {
  grid: Grid;
  /** The rider that its band has. */
  old: RiderRecord;
  /** The rider that was taken, or null where nothing was changed. */
  onDone: (riderId: string | null) => void;
  /** Makes an act of its own of it; without it that is not offered. */
  onOwnAct?: () => void;
};

/** A rider came for a band that has one: it is compared with that one, added to the act, or left. */
export function CameAgain({ grid, old, onDone, onOwnAct }: Props) {
  const { show, change } = useHere();
  const [isNewer, setNewer] = useState(false);
  const [receivedAt] = useState(() => new Date().toISOString());
  const add = () => {
    const { change: made, riderId } = riderChange(show, { actId: old.actId }, grid, receivedAt);
    change(made);
    onDone(riderId);
  };
  if (isNewer) return <CompareVersions old={old} grid={grid} receivedAt={receivedAt} onDone={onDone} />;
  return (
    <AddOrReplace
      newName={grid.name}
      oldName={old.fileName}
      onReplace={() => setNewer(true)}
      onAdd={add}
      onOwnAct={onOwnAct}
      onCancel={() => onDone(null)}
    />
  );
}
