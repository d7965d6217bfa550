import { useEffect, useId, useRef, useState } from 'react';
import { type HeardNow, loudestDb, quietestDb } from '../../core/run/ran-levels.ts';
import type { Mix, Source } from '../../core/show/act.ts';
import { levelText, parseNumber } from '../parts/format.ts';
import { useTypedText } from '../parts/use-typed-text.ts';
import type { ActOnScreen } from '../state/derive-cache.ts';
import { useHere } from '../state/here.tsx';
import { words } from '../wording/words.ts';

type Moved = Pick<HeardNow, 'source' | 'levelDb'>;

type Props = {
  open: ActOnScreen;
  mix: Mix;
  /** The source whose level is being kept; null: none is chosen. */
  chosen: HeardNow | null;
  heard: readonly HeardNow[];
  isTyping: boolean;
  onType: (types: boolean) => void;
  onStep: (byDb: number) => void;
  onSet: (it: Moved, levelDb: number | null) => void;
  onDone: () => void;
};

/** The level of the chosen source as it runs, to be kept in steps or typed; and the way to one more source. */
export function LevelBar({ open, mix, chosen, heard, isTyping, onType, onStep, onSet, onDone }: Props) {
  const { look } = useHere();
  const text = words.show;
  const others = open.sheet.sources.filter(({ id }) => !heard.some((it) => it.source.id === id));
  return (
    <div className="level-bar">
      {chosen === null ? (
        <p className="level-bar-choose">{text.choose}</p>
      ) : (
        <fieldset>
          <legend>{text.chosen(chosen.source.name)}</legend>
          <button
            type="button"
            className="level-bar-step"
            aria-label={text.quieter}
            onClick={() => onStep(-1)}
          >
            −
          </button>
          {isTyping ? (
            <TypedLevel
              start={levelText(chosen.levelDb)}
              onTake={(levelDb) => {
                onSet(chosen, levelDb);
                onType(false);
                onDone();
              }}
              onLeave={() => {
                onType(false);
                onDone();
              }}
            />
          ) : (
            <strong className="level-bar-level" role="status">
              {text.db(levelText(chosen.levelDb))}
            </strong>
          )}
          <button type="button" className="level-bar-step" aria-label={text.louder} onClick={() => onStep(1)}>
            +
          </button>
          <button type="button" onClick={() => onType(true)}>
            {text.typeLevel} <kbd>↵</kbd>
          </button>
          <button type="button" disabled={!chosen.isChanged} onClick={() => onSet(chosen, chosen.plannedDb)}>
            {text.asPlanned} <kbd>⌫</kbd>
          </button>
          <button
            type="button"
            className="plain"
            onClick={() =>
              look({ sourceId: chosen.source.id, mixId: mix.id, moment: 'mixes', side: 'details' })
            }
          >
            {text.inMixes}
          </button>
        </fieldset>
      )}
      <div className="level-bar-below">
        {others.length > 0 && mix.mixedAt === 'house desk' && (
          <BringInSource
            others={others}
            onBringIn={(source) => onSet({ source, levelDb: null }, open.sheet.rig.littleDb)}
          />
        )}
        <p className="show-caution">{text.levelCaution}</p>
      </div>
    </div>
  );
}

/** dB from a typed text; null: off; undefined: no level. */
function levelOf(text: string): number | null | undefined {
  const typed = text
    .trim()
    .toLowerCase()
    .replace(/\s*db$/, '');
  if (typed === 'off') return null;
  const levelDb = parseNumber(typed);
  return levelDb !== null && levelDb >= quietestDb && levelDb <= loudestDb ? levelDb : undefined;
}

type TypedProps = { start: string; onTake: (levelDb: number | null) => void; onLeave: () => void };

function TypedLevel({ start, onTake, onLeave }: TypedProps) {
  const field = useRef<HTMLInputElement>(null);
  const whyId = useId();
  const typed = useTypedText({
    start,
    onCommit: (text) => {
      const levelDb = levelOf(text);
      if (levelDb === undefined) return words.show.levelBad(text);
      onTake(levelDb);
      return null;
    },
    onLeave,
  });
  useEffect(() => field.current?.select(), []);
  return (
    <>
      <input
        ref={field}
        className="level-bar-level"
        aria-label={words.show.typeLevel}
        aria-invalid={typed.why !== null}
        aria-describedby={typed.why === null ? undefined : whyId}
        value={typed.text}
        onChange={(event) => typed.type(event.target.value)}
        onKeyDown={typed.onKeyDown}
        onBlur={typed.commit}
      />
      {typed.why !== null && (
        <span id={whyId} role="alert">
          {typed.why}
        </span>
      )}
    </>
  );
}

type BringInProps = { others: readonly Source[]; onBringIn: (source: Source) => void };

function BringInSource({ others, onBringIn }: BringInProps) {
  const text = words.show;
  const [wanted, setWanted] = useState('');
  const source = others.find((it) => it.id === wanted) ?? others[0];
  if (!source) return null;
  return (
    <p className="level-bar-more">
      <select
        aria-label={text.bringInWhich}
        value={source.id}
        onChange={(event) => setWanted(event.target.value)}
      >
        {others.map(({ id, name }) => (
          <option key={id} value={id}>
            {name}
          </option>
        ))}
      </select>
      <button type="button" onClick={() => onBringIn(source)}>
        {text.bringIn}
      </button>
    </p>
  );
}
