import { useEffect, useMemo, useState } from 'react';
import { actOfArchive } from '../../core/archive/archived-act.ts';
import type { ArchivedState } from '../../core/archive/side-by-side.ts';
import type { ArchivedAct } from '../../core/contract/archive.ts';
import type { Problem } from '../../core/contract/problem.ts';
import { deriveAct } from '../../core/derive/derive-act.ts';
import { actSheet } from '../../core/show/act-sheet.ts';
import type { Id } from '../../core/show/rig.ts';
import type { ShowDocument } from '../../core/show/show.ts';
import { useHere } from '../state/here.tsx';
import { useReachCount } from '../state/reach-count.ts';

export type PastAct = {
  act: ArchivedAct;
  documents: { planned: ShowDocument; ran: ShowDocument };
  planned: ArchivedState;
  ran: ArchivedState;
};

type Read = { act: ArchivedAct; planned: ShowDocument; ran: ShowDocument };

/** A past act with all that follows from both of its states; null while it is read, or the problem. */
export function usePastAct(actId: Id): PastAct | Problem | null {
  const { connection } = useHere();
  const [read, setRead] = useState<{ of: Id; it: Read | Problem } | null>(null);
  const reached = useReachCount();
  // biome-ignore lint/correctness/useExhaustiveDependencies: an answer may have been lost.
  useEffect(() => {
    let isLeft = false;
    void connection.call('archive.read', { actId }).then((answer) => {
      const isLost = !answer.ok && answer.lost;
      if (!isLeft && !isLost) setRead({ of: actId, it: answer.ok ? answer.value : answer.problem });
    });
    return () => {
      isLeft = true;
    };
  }, [connection, actId, reached]);
  return useMemo(() => {
    if (read?.of !== actId) return null;
    if (!('act' in read.it)) return read.it;
    const { act, ...documents } = read.it;
    const [planned, ran] = [stateOf(documents.planned), stateOf(documents.ran)];
    return planned && ran ? { act, documents, planned, ran } : null;
  }, [read, actId]);
}

function stateOf(document: ShowDocument): ArchivedState | null {
  const archived = actOfArchive(document);
  const sheet = archived && actSheet(archived.show, archived.actId);
  return sheet && { show: archived.show, sheet, derived: deriveAct(sheet) };
}
