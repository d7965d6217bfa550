import { Performer, Source } from '../../core/show/act.ts';
import type { ActSheet } from '../../core/show/act-sheet.ts';
import { type Change, type Put, put } from '../../core/show/change.ts';
import { sourceKinds } from '../../core/show/source-kinds.ts';
import { phantomNeeds, pickUps } from '../../core/show/words.ts';
import { columnMaker } from '../parts/row-fields.ts';
import { type SheetColumn, SheetTable } from '../parts/sheet-table.tsx';
import { useHere } from '../state/here.tsx';
import { newId } from '../state/new-id.ts';
import { words } from '../wording/words.ts';

type Props = {
  sheet: ActSheet;
  marked: ReadonlySet<string>;
  /** Sources whose kind is only a guess. */
  guessed: ReadonlySet<string>;
  onRow: (source: Source) => void;
  onHover: (source: Source | null) => void;
};

/** The sources of an act as they were taken from the rider, each cell to be put right by hand. */
export function SourcesTable({ sheet, marked, guessed, onRow, onHover }: Props) {
  const { change } = useHere();
  const text = words.advance;
  const { field, choice, add, remove } = columnMaker({
    table: 'sources',
    change,
    nameOf: (source) => source.name,
  });
  const orNotSaid = <T extends string>(values: readonly T[]) => [
    { value: null, label: '' },
    ...values.map((value) => ({ value, label: value })),
  ];
  return (
    <SheetTable
      label={text.sources}
      rows={sheet.sources}
      nameOf={(source) => source.name}
      marked={marked}
      onRow={onRow}
      onHover={onHover}
      columns={[
        field('riderLine', text.line, 2.5, 'optional number'),
        field('name', text.name, 9),
        {
          ...choice('kind', text.kind, 8, () => sourceKinds.map((value) => ({ value, label: value }))),
          draw: ({ id, kind }) => (guessed.has(id) ? <Guess of={kind} /> : kind),
        },
        pairColumn(sheet, change),
        choice('pickUp', text.pickUp, 4.6, () => orNotSaid(pickUps)),
        choice('phantom', text.phantom, 5.4, () => phantomNeeds.map((value) => ({ value, label: value }))),
        performerColumn(sheet, change),
        field('place', text.place, 6),
        field('pickUpModel', text.model, 9),
        field('pickUpInstead', text.instead, 9),
        field('stand', text.stand, 6),
        choice('broughtBy', text.broughtBy, 5.4, () => [
          { value: null, label: '' },
          { value: 'band', label: text.band },
          { value: 'house', label: text.house },
        ]),
        field('notes', text.notes, 10),
      ]}
      empty={text.noSources}
      onAdd={{
        label: text.addSource,
        run: () => {
          const order = (sheet.sources.at(-1)?.order ?? -1) + 1;
          const source = Source.parse({
            id: newId(),
            actId: sheet.act.id,
            order,
            name: text.newSource(order + 1),
          });
          add(source);
        },
      }}
      onRemove={remove}
    />
  );
}

/** Read with doubt: by its sign, and for who cannot see it by its word. */
function Guess({ of }: { of: string }) {
  return (
    <span title={words.advance.guess}>
      <span aria-hidden="true" className="guess-mark">
        ≈
      </span>
      <span className="unseen">{words.advance.outcome.guessed}:</span> {of}
    </span>
  );
}

type Send = (change: Change) => void;

/** The other side of a stereo pair, by its line number or name. */
function pairColumn(sheet: ActSheet, change: Send): SheetColumn<Source> {
  const calledAs = (source: Source) => (source.riderLine === null ? source.name : `${source.riderLine}`);
  const other = (source: Source) => sheet.sources.find((it) => it.id === source.pairSourceId);
  return {
    key: 'pair',
    head: words.advance.pair,
    width: 3,
    text: (source) => {
      const pair = other(source);
      return pair ? calledAs(pair) : '';
    },
    set: (source, typed) => {
      const wanted = typed.trim();
      const next = sheet.sources.find(
        (it) => it.id !== source.id && (calledAs(it) === wanted || it.name === wanted),
      );
      if (wanted !== '' && !next) return words.advance.noSuchLine(wanted);
      // A pair is kept on both sides, so whoever was paired before is freed.
      const freed = [other(source), next && other(next)].filter(
        (it) => it !== undefined && it.id !== source.id && it.id !== next?.id,
      );
      const puts: Put[] = freed.flatMap((it) => (it ? [put('sources', { ...it, pairSourceId: null })] : []));
      puts.push(put('sources', { ...source, pairSourceId: next?.id ?? null }));
      if (next) puts.push(put('sources', { ...next, pairSourceId: source.id }));
      change({ label: words.field.changed(words.advance.pair, source.name), put: puts, remove: [] });
      return null;
    },
  };
}

/** Who plays it. A name that is new to the act makes a new performer. */
function performerColumn(sheet: ActSheet, change: Send): SheetColumn<Source> {
  return {
    key: 'performer',
    head: words.advance.performer,
    width: 5.6,
    text: (source) => sheet.performers.find((it) => it.id === source.performerId)?.name ?? '',
    options: () => sheet.performers.map((it) => it.name),
    set: (source, typed) => {
      const { put: puts, performerId } = performerNamed(sheet, typed);
      change({
        label: words.field.changed(words.advance.performer, source.name),
        put: [...puts, put('sources', { ...source, performerId })],
        remove: [],
      });
      return null;
    },
  };
}

/** The performer of a name, made where the act has none; null for an empty name. */
export function performerNamed(sheet: ActSheet, typed: string): { put: Put[]; performerId: string | null } {
  const name = typed.trim();
  if (name === '') return { put: [], performerId: null };
  const known = sheet.performers.find((it) => it.name.toLowerCase() === name.toLowerCase());
  if (known) return { put: [], performerId: known.id };
  const order = (sheet.performers.at(-1)?.order ?? -1) + 1;
  const performer = Performer.parse({ id: newId(), actId: sheet.act.id, order, name: name.slice(0, 200) });
  return { put: [put('performers', performer)], performerId: performer.id };
}
