import { useEffect, useRef, useState } from 'react';
import type { CopyInList, CopyPlaces, CopyPreview } from '../../core/contract/copies.ts';
import { useHere } from '../state/here.tsx';
import { words } from '../wording/words.ts';
import type { Asking } from './ask.ts';
import { ChoiceList } from './choice-list.tsx';
import { CopyLook } from './copy-look.tsx';
import { SecondFolder } from './second-folder.tsx';
import { ageText, whenText } from './times.ts';

const keyOf = ({ place, name }: Pick<CopyInList, 'place' | 'name'>) => `${place}/${name}`;

/** The back-ups of the show, what one holds, and the way back to it. */
export function CopiesPart({ ask }: Asking) {
  const { take } = useHere();
  const text = words.keep.copies;
  const [places, setPlaces] = useState<CopyPlaces | null>(null);
  const [chosen, setChosen] = useState<string | null>(null);
  const [preview, setPreview] = useState<CopyPreview | null>(null);
  const [said, setSaid] = useState('');
  const wanted = useRef<string | null>(null);

  const load = async () => {
    const found = await ask('copies.list', {});
    if (found) setPlaces(found);
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: asked once, when the part is opened.
  useEffect(() => {
    void load();
  }, []);

  const choose = async (copy: CopyInList) => {
    const key = keyOf(copy);
    wanted.current = key;
    setChosen(key);
    setSaid('');
    setPreview(null);
    const found = await ask('copies.preview', { place: copy.place, name: copy.name });
    if (wanted.current === key) setPreview(found);
  };
  const make = async () => {
    const found = await ask('copies.make', {});
    if (!found) return;
    setPlaces(found);
    setSaid(text.made);
  };
  const restore = async ({ place, name }: CopyInList) => {
    const changed = await ask('copies.restore', { place, name });
    if (!changed) return;
    take(changed);
    setPreview(null);
    setChosen(null);
    await load();
    setSaid(text.done);
  };

  const copies = places?.copies ?? [];
  const [newest] = copies;
  return (
    <div className="keep-columns">
      <section className="keep-column" aria-label={text.list}>
        <p className="quiet">{text.intro}</p>
        <p className="keep-row">
          <button type="button" onClick={make}>
            {text.make}
          </button>
          <span role="status">{said}</span>
        </p>
        {places?.trouble && (
          <p role="alert" className="keep-problem">
            {places.trouble}
          </p>
        )}
        {newest && !newest.isOwn && newest.machine !== null && (
          <p className="keep-take-over">
            {text.takeOver(newest.machine, ageText(newest.madeAt))}{' '}
            <button type="button" onClick={() => choose(newest)}>
              {text.takeOverLook}
            </button>
          </p>
        )}
        {places && copies.length === 0 && <p>{text.none}</p>}
        <ChoiceList
          label={text.list}
          chosen={chosen}
          onChoose={(key) => {
            const copy = copies.find((it) => keyOf(it) === key);
            if (copy) void choose(copy);
          }}
          choices={copies.map((copy) => ({ key: keyOf(copy), lines: <CopyLines copy={copy} /> }))}
        />
        {places && <SecondFolder places={places} ask={ask} onPlaces={setPlaces} onLook={load} />}
      </section>
      <CopyLook key={chosen} preview={preview} onRestore={restore} />
    </div>
  );
}

function CopyLines({ copy }: { copy: CopyInList }) {
  const text = words.keep.copies;
  const where = [
    text.place[copy.place],
    ...(copy.isOwn || copy.machine === null ? [] : [text.of(copy.machine)]),
    text.kilobytes(Math.round(copy.byteCount / 1024)),
  ];
  return (
    <>
      <strong>{ageText(copy.madeAt)}</strong> {whenText(copy.madeAt)}, {text.reason[copy.reason]}
      <span className="keep-second-line">{where.join(', ')}</span>
    </>
  );
}
