import { fold, squash, type Token, tidy } from '../language/text.ts';
import type { WorkMix } from '../mixes/build-mixes.ts';
import type { Work } from '../page/work.ts';
import { performerNamed } from '../performers/performers.ts';
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
      .replace(/^(?:the|der|die|le|la|el|il|de|o|a|bei)\s+/i, '')
      .replace(/['’]s?(?:\s+mix)?$|\s+mix$/i, '');
    const performer = performerNamed(work, named) ?? listenerByRole(mixes, named, work);
    other = performer
      ? mixes.find((it) => it !== mix && it.read.listeners.includes(performer.name))
      : mixes.find((it) => it !== mix && squash(it.read.label) === squash(named) && named !== '');
    used = cut ? cut.index : tail.length;
  }
  if (!other && /^(?:as above|ditto|dito|idem|wie oben|[ií]dem)$/i.test(text.trim()))
    other = mixes[mixes.indexOf(mix) - 1];
  if (!other) return null;
  push(mix, text.slice(0, end + used), { of: 'mix', mixKey: other.read.key }, null, null);
  return tidy(tail.slice(used).replace(/^\W+/, '').replace(leadingTurn, ''));
}

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
