import { useState } from 'react';
import type { Act } from '../../core/show/act.ts';
import { useMomentKeys } from '../keys/use-moment-keys.ts';
import { useHere } from '../state/here.tsx';
import { words } from '../wording/words.ts';

/** Puts the act into the archive as it ran until now; the program does it by itself when the act is done. */
export function KeepInArchive({ act }: { act: Act }) {
  const { connection, tell } = useHere();
  const [isKept, setKept] = useState(false);
  const keep = async () => {
    const answer = await connection.call('archive.keep', { actId: act.id });
    if (!answer.ok) tell(answer.problem);
    setKept(answer.ok);
  };
  useMomentKeys((key, isHeld) => {
    if (key !== 'a') return false;
    if (!isHeld) void keep();
    return true;
  });
  return (
    <>
      <button type="button" onClick={() => void keep()}>
        {words.show.archive} <kbd>A</kbd>
      </button>
      {isKept && (
        <span className="show-kept" role="status">
          {words.show.archived(act.name)}
        </span>
      )}
    </>
  );
}
