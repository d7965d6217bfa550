import { useId, useState } from 'react';
import { actsOfDay } from '../../core/show/act-sheet.ts';
import { saveFile } from '../parts/save-file.ts';
import { useHere } from '../state/here.tsx';
import { words } from '../wording/words.ts';
import type { Asking } from './ask.ts';
import { BringInFile } from './bring-in-file.tsx';

/** The whole show or one act as a file, and such a file brought in. */
export function FilesPart(asking: Asking) {
  const { open, days, show } = useHere();
  const text = words.keep.files;
  const acts = days.flatMap((day) => actsOfDay(show, day.id));
  const [actId, setActId] = useState(open?.sheet.act.id ?? acts[0]?.id ?? '');
  const [said, setSaid] = useState('');
  const whichId = useId();
  const save = async (id: string | null) => {
    const file = await asking.ask('exchange.export', { actId: id });
    if (!file) return;
    saveFile(file.name, file.text, 'application/json');
    setSaid(text.saved(file.name));
  };
  return (
    <div className="keep-columns">
      <section className="keep-column" aria-label={text.save}>
        <h3>{text.save}</h3>
        <p>
          <button type="button" onClick={() => save(null)}>
            {text.saveShow}
          </button>
        </p>
        {acts.length > 0 && (
          <>
            <p className="keep-row">
              <label htmlFor={whichId}>{text.which}</label>
              <select id={whichId} value={actId} onChange={(event) => setActId(event.target.value)}>
                {acts.map(({ id, name }) => (
                  <option key={id} value={id}>
                    {name}
                  </option>
                ))}
              </select>
              <button type="button" onClick={() => save(actId)}>
                {text.saveAct}
              </button>
            </p>
            <p className="quiet">{text.saveNote}</p>
          </>
        )}
        <p role="status">{said}</p>
      </section>
      <BringInFile {...asking} />
    </div>
  );
}
