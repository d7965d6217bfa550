import { mergeReading } from '../../core/rider/again/merge-reading.ts';
import { squash } from '../../core/rider/language/text.ts';
import { holdsFor, ownWordsOfAct, taughtMeaning } from '../../core/rider/own-words.ts';
import type { Question } from '../../core/rider/reading.ts';
import type { Act } from '../../core/show/act.ts';
import { actSheet } from '../../core/show/act-sheet.ts';
import { applyChange } from '../../core/show/apply-change.ts';
import { type Change, put } from '../../core/show/change.ts';
import type { Meaning, OwnWord } from '../../core/show/own-word.ts';
import type { RiderRecord } from '../../core/show/rider-record.ts';
import type { Show } from '../../core/show/show.ts';
import { newId } from '../state/new-id.ts';
import { answersOfRider, readingOf, readingOfRider } from '../state/reading-cache.ts';
import { words as wording } from '../wording/words.ts';
import type { Scope } from './remember-word.tsx';

/** Remembers what a question's words mean by its answer. Null where the answer makes nothing of them. */
export function teachAnswerChange(
  show: Show,
  rider: RiderRecord,
  question: Question,
  value: string,
  scope: Scope,
): Change | null {
  const act = show.acts.get(rider.actId);
  const answers = { ...answersOfRider(show, rider.id), [question.key]: value };
  const answered = readingOf(rider.grid, answers, ownWordsOfAct(show, rider.actId));
  const meaning = taughtMeaning(question, value, answered);
  return act && meaning && question.words !== undefined
    ? teachChange(show, act, question.words, meaning, scope)
    : null;
}

/** Teaches what words mean, for the band of an act or for all; what they meant there before is replaced. */
export function teachChange(
  show: Show,
  act: Pick<Act, 'id' | 'name'>,
  words: string,
  meaning: Meaning,
  scope: Scope,
): Change {
  const band = scope === 'band' ? act.name : '';
  const before = [...show.ownWords.values()].find(
    (it) => squash(it.words) === squash(words) && squash(it.band) === squash(band),
  );
  const word: OwnWord = {
    id: before?.id ?? newId(),
    words: words.slice(0, 200),
    ...meaning,
    band,
    actId: scope === 'band' ? act.id : null,
  };
  const label = wording.advance.taughtLabel(word.words, word.kind);
  return withReadings(show, before, word, { label, put: [put('ownWords', word)], remove: [] });
}

export function forgetChange(show: Show, word: OwnWord): Change {
  const label = wording.advance.forgetOf(word.words);
  return withReadings(show, word, undefined, {
    label,
    put: [],
    remove: [{ table: 'ownWords', id: word.id }],
  });
}

/** The change of a word, and what it changes in every act whose riders say the word, as one change. */
function withReadings(show: Show, was: OwnWord | undefined, is: OwnWord | undefined, change: Change): Change {
  const after = applyChange(show, change);
  const result: Change = { ...change, put: [...change.put], remove: [...change.remove] };
  let now = show;
  for (const rider of show.riders.values()) {
    const act = show.acts.get(rider.actId);
    const holds = act && [was, is].some((word) => word && holdsFor(word, act));
    const sheet = act && holds && !rider.replaced ? actSheet(now, act.id) : null;
    if (!sheet) continue;
    const before = readingOfRider(show, rider);
    const read = readingOfRider(after, rider);
    if (before === read) continue;
    const rows = mergeReading(sheet, before, read, newId);
    // Two riders of one act may change the same row: the second starts from what the first made of it.
    now = applyChange(now, { label: change.label, ...rows });
    result.put.push(...rows.put);
    result.remove.push(...rows.remove);
  }
  return result;
}
