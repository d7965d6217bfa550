import type { OwnWord } from '../show/own-word.ts';
import type { Id } from '../show/rig.ts';
import type { Show } from '../show/show.ts';
import type { SourceKind } from '../show/source-kinds.ts';
import type { Question, Reading } from './reading.ts';
import { squash } from './text.ts';

/** Whether a taught word holds in the riders of an act. */
export function holdsFor(word: OwnWord, act: { id: Id; name: string }): boolean {
  return word.band === '' || word.actId === act.id || squash(word.band) === squash(act.name);
}

/** The words that hold in the riders of an act, those of the band before those of all; none for an unknown act. */
export function ownWordsOfAct(show: Show, actId: Id): OwnWord[] {
  const act = show.acts.get(actId);
  if (!act) return [];
  return [...show.ownWords.values()]
    .filter((word) => holdsFor(word, act))
    .sort((a, b) => Number(a.band === '') - Number(b.band === ''));
}

/**
 * The kind that the words of a question mean by its answer: `answered` is the reading with that answer. Null where
 * the question is not about words, or the answer makes no source of them.
 */
export function taughtKind(question: Question, answered: Reading): SourceKind | null {
  const { at, words } = question;
  if (!at || words === undefined) return null;
  const input = answered.inputs.find(
    (it) =>
      squash(it.name).includes(squash(words)) &&
      it.lines.some(({ sheet, row }) => sheet === at.sheet && row === at.row),
  );
  return input?.kind ?? null;
}
