import { mergeReading } from '../../core/rider/merge-reading.ts';
import { holdsFor, ownWordsOfAct, taughtMeaning } from '../../core/rider/own-words.ts';
import type { Question } from '../../core/rider/reading.ts';
import { actSheet } from '../../core/show/act-sheet.ts';
import { applyChange } from '../../core/show/apply-change.ts';
import { type Change, put } from '../../core/show/change.ts';
import type { OwnWord } from '../../core/show/own-word.ts';
import type { RiderRecord } from '../../core/show/rider-record.ts';
import type { Show } from '../../core/show/show.ts';
import { newId } from '../state/new-id.ts';
import { answersOfRider, readingOf, readingOfRider } from '../state/reading-cache.ts';
import { words } from '../wording/words.ts';
import type { Scope } from './remember-word.tsx';

/** Remembers what a question's words mean by its answer. Null where the answer makes no source of them. */
export function teachChange(
  show: Show,
  rider: RiderRecord,
  question: Question,
  value: string,
  scope: Scope,
): Change | null {
  const act = show.acts.get(rider.actId);
  const answers = { ...answersOfRider(show, rider.id), [question.key]: value };
  const meaning = taughtMeaning(question, readingOf(rider.grid, answers, ownWordsOfAct(show, rider.actId)));
  if (!act || meaning === null || question.words === undefined) return null;
  const word: OwnWord = {
    id: newId(),
    words: question.words.slice(0, 200),
    ...meaning,
    band: scope === 'band' ? act.name : '',
    actId: scope === 'band' ? act.id : null,
  };
  const label = words.advance.taughtLabel(word.words, word.kind);
  return withReadings(show, word, { label, put: [put('ownWords', word)], remove: [] });
}

export function forgetChange(show: Show, word: OwnWord): Change {
  const label = words.advance.forgetOf(word.words);
  return withReadings(show, word, { label, put: [], remove: [{ table: 'ownWords', id: word.id }] });
}

/** The change of a word, and what it changes in every act whose riders say the word, as one change. */
function withReadings(show: Show, word: OwnWord, wording: Change): Change {
  const after = applyChange(show, wording);
  const result: Change = { ...wording, put: [...wording.put], remove: [...wording.remove] };
  let now = show;
  for (const rider of show.riders.values()) {
    const act = show.acts.get(rider.actId);
    const sheet = act && !rider.replaced && holdsFor(word, act) ? actSheet(now, act.id) : null;
    if (!sheet) continue;
    const before = readingOfRider(show, rider);
    const read = readingOfRider(after, rider);
    if (before === read) continue;
    const rows = mergeReading(sheet, before, read, newId);
    // Two riders of one act may change the same row: the second starts from what the first made of it.
    now = applyChange(now, { label: wording.label, ...rows });
    result.put.push(...rows.put);
    result.remove.push(...rows.remove);
  }
  return result;
}
