import { useEffect, useState } from 'react';
import type { Act } from '../../core/show/act.ts';
import { useMomentKeys } from '../keys/use-moment-keys.ts';
import { useHere, useSaved } from '../state/here.tsx';
import { words } from '../wording/words.ts';

/** Puts the act into the archive as it ran until now; the program does it by itself when the act is done. */
export function KeepInArchive({ act }: { act: Act }) {
  const { connection, tell } = useHere();
  const { saving, standing } = useSaved();
  const [step, setStep] = useState<'nothing' | 'asked' | 'kept'>('nothing');
  // What was done a moment ago may still be on its way: the archive would keep the act without it.
  const hasArrived = saving === 'saved' || standing.unsaved !== undefined;
  useEffect(() => {
    if (step !== 'asked' || !hasArrived) return;
    void connection.call('archive.keep', { actId: act.id }).then((answer) => {
      if (!answer.ok) tell(answer.problem);
      setStep(answer.ok ? 'kept' : 'nothing');
    });
  }, [step, hasArrived, connection, tell, act.id]);
  useMomentKeys((key, isHeld) => {
    if (key !== 'a') return false;
    if (!isHeld) setStep('asked');
    return true;
  });
  return (
    <>
      <button type="button" onClick={() => setStep('asked')}>
        {words.show.archive} <kbd>A</kbd>
      </button>
      {step === 'kept' && (
        <span className="show-kept" role="status">
          {words.show.archived(act.name)}
        </span>
      )}
    </>
  );
}
