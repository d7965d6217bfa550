import { type DragEvent, useId, useRef, useState } from 'react';
import { largestExchangeCharacters } from '../../core/contract/contract.ts';
import type { ExchangeLook } from '../../core/contract/copies.ts';
import { useHere } from '../state/here.tsx';
import { words } from '../wording/words.ts';
import type { Asking } from './ask.ts';
import { FileLook } from './file-look.tsx';

type Looked = { name: string; text: string; dayId: string | null; look: ExchangeLook };

/** A file is chosen or dropped, looked at, and comes in only when that was seen and wanted. */
export function BringInFile({ ask, tell }: Asking) {
  const { days, day, take } = useHere();
  const text = words.keep.files;
  const [looked, setLooked] = useState<Looked | null>(null);
  const [isOver, setIsOver] = useState(false);
  const [said, setSaid] = useState('');
  const fileId = useId();
  const input = useRef<HTMLInputElement>(null);

  const lookAt = async (name: string, content: string, dayId: string | null) => {
    const look = await ask('exchange.look', { text: content, dayId });
    if (look) setLooked({ name, text: content, dayId, look });
  };
  const choose = async (file: File | undefined) => {
    if (!file) return;
    setSaid('');
    setLooked(null);
    const refused = (what: string) => tell({ code: 'unreadable file', what, todo: '' });
    if (file.size > largestExchangeCharacters) return refused(text.tooLarge(file.name));
    const content = await file.text().catch(() => null);
    if (content === null) return refused(text.cannotRead(file.name));
    await lookAt(file.name, content, day?.id ?? null);
  };
  const bringIn = async (way: 'beside' | 'replace') => {
    if (!looked) return;
    const answer = await ask('exchange.import', {
      text: looked.text,
      way: way === 'beside' ? { how: 'beside', dayId: looked.dayId } : { how: 'replace' },
    });
    if (!answer) return;
    take(answer.changed);
    setLooked(null);
    setSaid(text.done(looked.name, answer.leftOut));
    input.current?.focus();
  };
  const drop = (event: DragEvent) => {
    event.preventDefault();
    event.stopPropagation();
    setIsOver(false);
    void choose(event.dataTransfer.files[0]);
  };
  return (
    <section
      className={isOver ? 'keep-column keep-drop is-over' : 'keep-column keep-drop'}
      aria-label={text.bring}
      onDragOver={(event) => {
        event.preventDefault();
        setIsOver(true);
      }}
      onDragLeave={() => setIsOver(false)}
      onDrop={drop}
    >
      <h3>{text.bring}</h3>
      <p>
        <label htmlFor={fileId} className="keep-file">
          {text.choose}
        </label>
        <input
          ref={input}
          id={fileId}
          type="file"
          accept=".json,application/json"
          onChange={(event) => {
            void choose(event.target.files?.[0]);
            event.target.value = '';
          }}
        />
      </p>
      <p className="quiet">{text.drop}</p>
      <p role="status">{said}</p>
      {looked && (
        <FileLook
          key={looked.name}
          name={looked.name}
          look={looked.look}
          days={days}
          dayId={looked.dayId}
          onDay={(dayId) => void lookAt(looked.name, looked.text, dayId)}
          onBringIn={bringIn}
        />
      )}
    </section>
  );
}
