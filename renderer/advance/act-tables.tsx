import type { ReadNote } from '../../core/rider/reading.ts';
import type { ActOnScreen } from '../state/derive-cache.ts';
import { useHere } from '../state/here.tsx';
import { words } from '../wording/words.ts';
import { lineKey } from './links.ts';
import { MixesTable } from './mixes-table.tsx';
import { PerformersTable } from './performers-table.tsx';
import { SourcesTable } from './sources-table.tsx';
import { WishesTable } from './wishes-table.tsx';

type Props = {
  open: ActOnScreen;
  markedSources?: ReadonlySet<string>;
  markedMixes?: ReadonlySet<string>;
  /** Sources whose kind is only a guess. */
  guessed?: ReadonlySet<string>;
  /** What the rider asks for besides sound. */
  notes?: readonly ReadNote[];
  onNote?: (note: ReadNote) => void;
  onPoint?: (row: { sourceId: string } | { mixId: string } | null) => void;
  onChoose?: (row: { sourceId: string } | { mixId: string }) => void;
};

const none: ReadonlySet<string> = new Set();

/** What the act is taken to be: its sources, mixes and wishes, as tables that are put right by hand. */
export function ActTables({ open, markedSources = none, markedMixes = none, ...rest }: Props) {
  const { guessed = none, notes = [], onNote, onPoint, onChoose } = rest;
  const { look } = useHere();
  const { sheet } = open;
  const text = words.advance;
  return (
    <section className="act-tables" aria-label={text.meaning} data-region="meaning">
      <h2>
        {text.sources} <span className="quiet">{sheet.sources.length}</span>
      </h2>
      <SourcesTable
        sheet={sheet}
        marked={markedSources}
        guessed={guessed}
        onRow={(source) => {
          look({ sourceId: source.id });
          onChoose?.({ sourceId: source.id });
        }}
        onHover={(source) => onPoint?.(source && { sourceId: source.id })}
      />
      <h2>
        {text.mixes} <span className="quiet">{sheet.mixes.length}</span>
      </h2>
      <MixesTable
        sheet={sheet}
        marked={markedMixes}
        onRow={(mix) => {
          look({ mixId: mix.id });
          onChoose?.({ mixId: mix.id });
        }}
        onHover={(mix) => onPoint?.(mix && { mixId: mix.id })}
      />
      <h2>
        {text.wishes} <span className="quiet">{sheet.wishes.length}</span>
      </h2>
      <WishesTable sheet={sheet} />
      <h2>
        {text.performers} <span className="quiet">{sheet.performers.length}</span>
      </h2>
      <PerformersTable sheet={sheet} />
      {notes.length > 0 && (
        <>
          <h2>
            {text.riderNotes} <span className="quiet">{notes.length}</span>
          </h2>
          <ul className="rider-notes" aria-label={text.riderNotes}>
            {notes.map((note) => (
              <li key={lineKey(note.at)}>
                <button type="button" className="plain" onClick={() => onNote?.(note)}>
                  <strong>{text.noteAbout[note.about]}</strong> {note.text}
                </button>
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}
