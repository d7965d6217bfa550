import { useState } from 'react';
import { saveFile } from '../parts/save-file.ts';
import { useHere } from '../state/here.tsx';
import { words } from '../wording/words.ts';

/** The work is not in its file: why, what to do, and a way to have it in another place at once. */
export function UnsavedBar({ what, todo }: { what: string; todo: string }) {
  const { connection, tell } = useHere();
  const [said, setSaid] = useState('');
  const text = words.keep.unsaved;
  const save = async () => {
    const answer = await connection.call('exchange.export', { actId: null });
    if (!answer.ok) return tell(answer.problem);
    saveFile(answer.value.name, answer.value.text, 'application/json');
    setSaid(text.saved);
  };
  return (
    <div className="unsaved-bar">
      <p role="alert">
        <strong>{what}</strong> {todo}
      </p>
      <button type="button" onClick={save}>
        {text.save}
      </button>
      <span role="status">{said}</span>
    </div>
  );
}
