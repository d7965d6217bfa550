import { type KeyboardEvent, useEffect, useId, useMemo, useRef, useState } from 'react';
import type { Consequence, LineChange } from '../../core/rider/again/compare-readings.ts';
import type { Grid } from '../../core/rider/grid.ts';
import type { RiderRecord } from '../../core/show/rider-record.ts';
import { useHere } from '../state/here.tsx';
import { words } from '../wording/words.ts';
import { replacementOf } from './replace-changes.ts';
import './compare-versions.css';

type Props = {
  old: RiderRecord;
  grid: Grid;
  receivedAt: string;
  onDone: (riderId: string | null) => void;
};

/** A later version beside the one before: its lines in words, and what each difference would do to the act. */
export function CompareVersions({ old, grid, receivedAt, onDone }: Props) {
  const { show, change } = useHere();
  const replacement = useMemo(
    () => replacementOf(show, old, grid, receivedAt),
    [show, old, grid, receivedAt],
  );
  // What the engineer decided stays unless it is said otherwise; everything else comes.
  const [said, setSaid] = useState<ReadonlyMap<string, boolean>>(new Map());
  const place = useRef<HTMLElement>(null);
  useEffect(() => place.current?.querySelector<HTMLElement>('input')?.focus(), []);
  const text = words.advance.versions;
  if (!replacement) return null;
  const { lines, consequences } = replacement.comparison;
  const isTaken = (it: Consequence) => said.get(it.key) ?? !it.overwrites;
  const taken = consequences.filter(isTaken);
  const sayAll = (take: boolean) => setSaid(new Map(consequences.map(({ key }) => [key, take])));
  const list = (of: readonly Consequence[], title: string) =>
    of.length > 0 && (
      <ConsequenceList
        title={title}
        consequences={of}
        isTaken={isTaken}
        onSay={(key, take) => setSaid(new Map([...said, [key, take]]))}
      />
    );

  return (
    <section className="versions" aria-label={text.title(old.fileName, grid.name)}>
      <h2>{text.title(old.fileName, grid.name)}</h2>
      <div className="versions-two">
        <LineChanges lines={lines} />
        <section className="versions-act" aria-label={text.inTheAct} ref={place} onKeyDown={moveFocus}>
          <h3>{text.inTheAct}</h3>
          {consequences.length === 0 ? <p>{text.noConsequence}</p> : <p className="quiet">{text.keys}</p>}
          {list(
            consequences.filter((it) => it.overwrites),
            text.overwriting,
          )}
          {list(
            consequences.filter((it) => !it.overwrites),
            text.others,
          )}
        </section>
      </div>
      <p className="versions-do">
        <button
          type="button"
          className="main"
          onClick={() => {
            change(replacement.changeOf(new Set(taken.map(({ key }) => key))));
            onDone(replacement.riderId);
          }}
        >
          {text.replace(taken.length, consequences.length)}
        </button>
        <button type="button" onClick={() => sayAll(true)}>
          {text.takeAll}
        </button>
        <button type="button" onClick={() => sayAll(false)}>
          {text.leaveAll}
        </button>
        <button type="button" className="plain" onClick={() => onDone(null)}>
          {words.advance.notNow}
        </button>
      </p>
    </section>
  );
}

function LineChanges({ lines }: { lines: readonly LineChange[] }) {
  const text = words.advance.versions;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a long list must scroll by keys.
    <section className="versions-lines" aria-label={text.inTheRider} tabIndex={0}>
      <h3>{text.inTheRider}</h3>
      {lines.length === 0 && <p>{text.noLine}</p>}
      <ul>
        {lines.map((line, at) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: the same words may change twice, and the list never moves.
          <li key={at}>
            <strong>
              {line.before === null ? text.lineNew : line.after === null ? text.lineGone : text.lineChanged}
            </strong>
            {line.before !== null && <del>{line.before}</del>}
            {line.after !== null && <ins>{line.after}</ins>}
          </li>
        ))}
      </ul>
    </section>
  );
}

type ListProps = {
  title: string;
  consequences: readonly Consequence[];
  isTaken: (it: Consequence) => boolean;
  onSay: (key: string, take: boolean) => void;
};

function ConsequenceList({ title, consequences, isTaken, onSay }: ListProps) {
  const id = useId();
  return (
    <section aria-labelledby={id}>
      <h4 id={id}>
        {title} <span className="quiet">{consequences.length}</span>
      </h4>
      <ul>
        {consequences.map((it) => (
          <li key={it.key}>
            <label>
              <input
                type="checkbox"
                checked={isTaken(it)}
                onChange={({ target }) => onSay(it.key, target.checked)}
              />{' '}
              {sentenceOf(it)}
            </label>
          </li>
        ))}
      </ul>
    </section>
  );
}

function sentenceOf({ of, kind, name, field, now, next }: Consequence): string {
  const text = words.advance.versions;
  const head = text.of[of];
  if (kind === 'added') return text.added(head, name, next);
  if (kind === 'removed') return text.removed(head, name);
  return text.changed(head, name, text.fields[field ?? ''] ?? field ?? '', valueText(now), valueText(next));
}

const valueText = (value: string) => words.advance.versions.values[value] ?? value;

/** Up and down go from one consequence to the next; the space bar takes or leaves it. */
function moveFocus(event: KeyboardEvent<HTMLElement>): void {
  const by = { ArrowDown: 1, ArrowUp: -1 }[event.key];
  if (by === undefined) return;
  const boxes = [...event.currentTarget.querySelectorAll('input')];
  const here = document.activeElement;
  const at = here instanceof HTMLInputElement ? boxes.indexOf(here) : -1;
  boxes[at + by]?.focus();
  event.preventDefault();
}
