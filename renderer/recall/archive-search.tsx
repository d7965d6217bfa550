import type { RefObject } from 'react';
import type { FoundInArchive } from '../../core/contract/archive.ts';
import { FindList } from '../parts/find-list.tsx';
import type { Found } from '../state/found-in-archive.ts';
import { words } from '../wording/words.ts';
import { TakenOut } from './take-out.tsx';

type Props = {
  field: RefObject<HTMLInputElement | null>;
  text: string;
  found: Found | null;
  onText: (text: string) => void;
  onOpen: (item: FoundInArchive) => void;
  /** Something was put back. */
  onChanged: () => void;
};

/** A box for letters of names, and what the archive has for them. */
export function ArchiveSearch({ field, text, found, onText, onOpen, onChanged }: Props) {
  const say = words.recall;
  return (
    <section className="recall-search" aria-label={say.search}>
      <FindList
        field={field}
        label={say.search}
        placeholder={say.hint}
        listLabel={say.results}
        text={text}
        onText={onText}
        items={found?.found ?? []}
        keyOf={({ kind, name, act }) => `${kind} ${name} ${act.actId}`}
        row={({ kind, name, act }) => (
          <>
            <span className="quiet">{say.kinds[kind]}</span>
            <strong>{name}</strong>
            <span className="quiet recall-where">
              {kind === 'act' ? '' : `${say.inAct(act.actName)}, `}
              {act.dayName} <span className="recall-date">{act.date || act.ranAt.slice(0, 10)}</span>
            </span>
          </>
        )}
        onTake={onOpen}
      >
        <p className="recall-count" role="status">
          {found && (found.found.length === 0 ? say.nothing : say.holds(found.actCount))}
        </p>
      </FindList>
      <TakenOut acts={found?.removed ?? []} onChanged={onChanged} />
    </section>
  );
}
