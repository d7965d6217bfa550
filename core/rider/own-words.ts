import { type Meaning, type OwnWord, taughtGroups } from '../show/own-word.ts';
import type { Id } from '../show/rig.ts';
import type { Show } from '../show/show.ts';
import type { LineRef } from './grid.ts';
import { joinLines } from './language/taught-words.ts';
import { squash } from './language/text.ts';
import type { Question, Reading, ReadWish } from './reading.ts';

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
 * What the words of a question mean by its answer `value`: `answered` is the reading with that answer. Null where the
 * question is not about words, or the answer makes nothing of them.
 */
export function taughtMeaning(question: Question, value: string, answered: Reading): Meaning | null {
  const { at, words } = question;
  if (!at || words === undefined) return null;
  const isHere = ({ lines }: { lines: readonly LineRef[] }) =>
    lines.some(({ sheet, row }) => sheet === at.sheet && row === at.row);
  const says = (text: string) => squash(text).includes(squash(words));
  const input = answered.inputs.find((it) => says(it.name) && isHere(it));
  if (input) return { of: 'source', kind: input.kind };
  // All voices of this rider may be backing vocals: what was said holds also where they are not.
  const group = taughtGroups.find((it) => it === value);
  if (group) return { of: 'group', kind: group };
  const wishes = answered.mixes.filter(isHere).flatMap((mix) => mix.wishes);
  const target = wishes.find((wish) => says(wish.words))?.target;
  return target ? meaningOfTarget(target, answered) : null;
}

/** A group by its name, lines by theirs; another mix is none that a word could mean. */
function meaningOfTarget(target: ReadWish['target'], { inputs }: Reading): Meaning | null {
  switch (target.of) {
    case 'everything':
      return { of: 'group', kind: 'everything' };
    case 'group':
      return { of: 'group', kind: target.group };
    case 'mix':
      return null;
    case 'inputs': {
      const meant = inputs.filter(({ key }) => target.inputKeys.includes(key));
      const kind = joinLines(meant.map(({ name }) => name));
      return kind === '' || kind.length > longestText ? null : { of: 'lines', kind };
    }
  }
}

const longestText = 200;
