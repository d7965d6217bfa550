import type { Amount } from '../../show/words.ts';
import { lookUp } from '../language/lexicon.ts';
import { fold, squash, type Token, tidy } from '../language/text.ts';
import { wishWords } from '../language/vocabulary.ts';
import type { WorkMix } from '../mixes/build-mixes.ts';
import type { Work } from '../page/work.ts';
import { performerNamed } from '../performers/performers.ts';
import { amountAlone } from './wish-amounts.ts';
import { push } from './wish-asking.ts';
import type { WishHit } from './wish-item.ts';

/** Words that turn from the other mix to what differs from it. */
const turns =
  'but|aber|mais|pero|ma|maar|mas|with|mit|avec|con|met|com|plus|pi[uù]|m[aá]s|mehr|meer|more|und|and|et|y|e|en';
const behindMix = new RegExp(`(?<!\\p{L})(?:${turns}|without|ohne|sans)(?!\\p{L})|[(+]`, 'iu');
const leadingTurn = new RegExp(`^(?:${turns})(?!\\p{L})\\s*`, 'iu');

/** "same as mix 2 but more keys": the other mix, then what is left of the text. Null where no mix is meant. */
export function readSameAs(
  work: Work,
  mixes: readonly WorkMix[],
  mix: WorkMix,
  text: string,
  tokens: readonly Token[],
  mark: WishHit,
): string | null {
  const end = tokens[mark.to - 1]?.end ?? 0;
  const tail = text.slice(end);
  const number =
    /^\W*(?:the\s+)?(?:(?:mix|mon(?:itor)?|aux|weg|iem|retour|circuit|mezcla|mandata|groep|via|ear|wedge|nr\.?|no\.?)\s*#?\s*)?(\d{1,2})\b/i.exec(
      fold(tail),
    );
  let other = number ? mixes.find((it) => it.read.number === Number(number[1]) && it !== mix) : undefined;
  let used = number ? number[0].length : 0;
  if (!other) {
    const cut = behindMix.exec(tail);
    const named = tidy(cut ? tail.slice(0, cut.index) : tail)
      .replace(
        /^(?:(?:the|der|die|das|den|dem|les?|la|el|los|las|il|lo|gli|i|de|het|[oa]s?|bei|beim|à|al|alla?|du|des) )+/i,
        '',
      )
      .replace(/['’]s?(?:\s+mix)?$|\s+mix$/i, '');
    const performer = performerNamed(work, named) ?? listenerByRole(mixes, named, work);
    other = performer
      ? mixes.find((it) => it !== mix && it.read.listeners.includes(performer.name))
      : mixes.find((it) => it !== mix && isCalledSo(work, it, named));
    used = cut ? cut.index : tail.length;
  }
  if (!other && /^(?:as above|ditto|dito|idem|wie oben|[ií]dem)$/i.test(text.trim()))
    other = mixes[mixes.indexOf(mix) - 1];
  if (!other) return null;
  const words = text.slice(0, end + used);
  const rest = tidy(tail.slice(used).replace(/^\W+/, '').replace(leadingTurn, ''));
  const lower = lowerOf.test(fold(rest)) || amountAlone(work, rest) === 'little';
  if (lower && other.read.wishes.every(({ target }) => target.of !== 'mix')) {
    for (const { target, amount, levelDb } of other.read.wishes)
      push(
        mix,
        words,
        target,
        amount && (lowered[amount] ?? amount),
        levelDb === null ? null : levelDb - lowerDb,
      );
    return '';
  }
  push(mix, words, { of: 'mix', mixKey: other.read.key }, null, null);
  return rest;
}

/** Whether a mix is called so: by its label, or by a section that hears it in whatever word ("the horns", "Brass"). */
function isCalledSo(work: Work, { read }: WorkMix, named: string): boolean {
  const key = squash(named);
  if (key === '') return false;
  const meaning = meaningOf(work, named);
  return [read.label, ...read.listeners].some(
    (name) => squash(name) === key || (meaning !== null && meaningOf(work, name) === meaning),
  );
}

const meaningOf = (work: Work, text: string) => {
  const sense = lookUp(wishWords, text, work.tongue.spoken)?.[0];
  return sense && (sense.subject === 'group' || sense.subject === 'source') ? sense.meaning : null;
};

/** "Like the brass but quieter": every amount a step lower. "Más bajo" is no bass here. */
const lowerOf = /^(?:mas|mais|piu)\s+(?:baj|baix|bass|pian)/;
const lowered: Partial<Record<Amount, Amount>> = { lots: 'some', some: 'little' };
/** A step between two amounts, as far as lots and some are apart. */
const lowerDb = 6;

function listenerByRole(mixes: readonly WorkMix[], text: string, work: Work): { name: string } | null {
  const stems = (name: string) => {
    const performer = work.performers.find((it) => it.name === name);
    return performer ? `${performer.role} ${performer.name}` : name;
  };
  const key = squash(text).replace(/(?:mer|er|ist|s|in)$/, '');
  if (key.length < 3) return null;
  const found = mixes.flatMap((mix) => mix.read.listeners).find((name) => squash(stems(name)).includes(key));
  return found ? { name: found } : null;
}
