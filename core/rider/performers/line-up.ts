import { withoutBullet } from '../language/bullets.ts';
import { withDigits } from '../language/count-words.ts';
import { readSourceName } from '../language/source-name.ts';
import { tidy } from '../language/text.ts';
import { isFull, mostPerformers, note } from '../page/draft.ts';
import { type Block, cellsByRole } from '../page/headers.ts';
import type { Line } from '../page/lines.ts';
import type { Walk } from '../page/walk-state.ts';

/** A row of a table that tells who plays what. */
export function takePerformerRow(walk: Walk, line: Line, block: Block): boolean {
  const { byRole } = cellsByRole(line, block);
  const name = tidy(byRole.get('performer') ?? '');
  if (!looksLikeName(name, walk) && line.cells.length < 2) return false;
  if (name === '') return false;
  const role = tidy(
    [byRole.get('role'), byRole.get('source'), byRole.get('notes')]
      .filter((text) => text !== undefined)
      .join(', '),
  );
  pushPerformer(walk, line, name, role, tidy(byRole.get('position') ?? ''));
  const listening = tidy(
    [byRole.get('device'), byRole.get('mix'), byRole.get('own')]
      .filter((text) => text !== undefined)
      .join(', '),
  );
  const wishes = tidy(byRole.get('wishes') ?? '');
  if (listening !== '' || wishes !== '') {
    walk.found.mixes.push({
      at: line.at,
      part: line.part,
      number: null,
      label: '',
      listenerText: name,
      deviceText: listening,
      place: '',
      wishTexts: wishes === '' ? [] : [wishes],
      exclusionTexts: [],
      matrix: [],
      notes: [],
      loose: false,
    });
  }
  return true;
}

function pushPerformer(walk: Walk, line: Line, name: string, role: string, place: string): void {
  if (isFull(walk.found, line.at, walk.found.performers, mostPerformers)) return;
  walk.found.performers.push({ at: line.at, name, role, place });
  note(walk.found, line.at, 'understood', `Who plays: ${name}.`);
}

/** "Noor - lead vocals, guitar", "Drums: Tom", "Tom (drums)". True where the text told at least one performer. */
export function takePerformerText(walk: Walk, line: Line, text: string): boolean {
  const plain = tidy(withoutBullet(text).replace(/^\d{1,2}[.)]\s*/, ''));
  const inBrackets = performersInBrackets(plain, walk);
  if (inBrackets.length > 1) {
    for (const { name, role } of inBrackets) pushPerformer(walk, line, name, role, '');
    return true;
  }
  const split =
    /^(.{1,60}?)(?:\s*[:：]\s+|\s+[-–—=>]+\s+|\s*\(\s*|\s*[,/]\s+|\s*\.{3,}\s*|\s{2,})(.+?)\)?\s*$/u.exec(
      plain,
    );
  if (!split?.[1] || !split[2]) return false;
  const [, left, right] = split;
  const leftStem = readSourceName(left, walk.tongue).stem;
  const rightStem = readSourceName(right, walk.tongue).stem;
  const isName = leftStem === null || (walk.section === 'line-up' && isNearlyAWord(left, walk));
  if (looksLikeName(left, walk) && isName && rightStem !== null) {
    pushPerformer(walk, line, left, right.replace(/\(\s*$|\)\s*$/g, ''), '');
    return true;
  }
  if (leftStem !== null && rightStem === null) {
    const names = right
      .split(/\s*(?:,|&|\+|\/|\band\b|\bund\b|\bet\b|\by\b|\be\b|\ben\b)\s*/)
      .map(tidy)
      .filter((name) => looksLikeName(name, walk));
    for (const name of names) pushPerformer(walk, line, name, left, '');
    return names.length > 0;
  }
  return false;
}

/** In a line-up "Tomas" is a person, no misspelt tom. */
const isNearlyAWord = (text: string, { tongue }: Walk) =>
  /^\p{Lu}\p{Ll}+$/u.test(tidy(text)) && readSourceName(text, tongue).certainty < 1;

/** "Vocals, two guitars, percussion and dance": nobody plays them all. */
const isWholeBand = (roles: string, walk: Walk) =>
  roles.split(/,|(?<!\p{L})(?:and|und|et|y|e|en)(?!\p{L})/iu).length > 3 ||
  /\d\s\p{L}/u.test(withDigits(roles, walk.tongue));

/** Every "Name (role)" of a sentence. */
export function performersInBrackets(text: string, walk: Walk): { name: string; role: string }[] {
  const found: { name: string; role: string }[] = [];
  for (const match of text.matchAll(
    /(\p{Lu}[\p{L}'’.-]*(?:\s\p{Lu}[\p{L}'’.-]*){0,2})\s*\(([^)]{2,60})\)/gu,
  )) {
    const [, name, role] = match;
    if (
      name &&
      role &&
      !isWholeBand(role, walk) &&
      readSourceName(role, walk.tongue).stem !== null &&
      readSourceName(name, walk.tongue).stem === null
    )
      found.push({ name, role });
  }
  return found;
}

/** "Et au fond Paul": a sentence goes on, nobody is called so. */
const goesOnWith =
  /^(?:and|und|et|y|ed|en|then|dann|danach|ensuite|puis|luego|después|poi|dan|daarna|depois|também)$/i;

/** One to four words, the first with a capital or all from another script, no digits. */
export function looksLikeName(text: string, walk: Pick<Walk, 'tongue'>): boolean {
  const plain = tidy(text);
  if (plain === '' || plain.length > 60 || /[\d@:;!?„“"«»]|\([^)]*$/.test(plain)) return false;
  const words = plain.split(' ');
  if (words.length > 4) return false;
  const first = words[0] ?? '';
  if (goesOnWith.test(first)) return false;
  if (!/^["'“(]?[\p{Lu}\p{Lo}]/u.test(first))
    return words.length === 1 && walk.tongue.names.has(first.toLowerCase());
  return true;
}
