import { isAllIn } from '../inputs/details.ts';
import { findHits } from '../language/lexicon.ts';
import { channelNumbers, letterNumber, numberedText } from '../language/numbers.ts';
import { listed, tidy, tokenize } from '../language/text.ts';
import { mixWords, wishWords } from '../language/vocabulary.ts';
import { type FoundMix, type MatrixCell, note } from '../page/draft.ts';
import { type Block, cellsByRole } from '../page/headers.ts';
import { type Line, saysNothing } from '../page/lines.ts';
import type { Walk } from '../page/walk-state.ts';
import type { ColumnRole } from '../words/headers.ts';
import { type MixLine, readMixCell } from './mix-line.ts';
import { isDevice, isWish, leadingLabel, type PieceFacts, pieceFacts } from './mix-pieces.ts';
import { pushMix } from './mix-rows.ts';

/** A row of a table of mixes by what its columns hold; a column that is missing or empty is the empty string. */
type Row = {
  get: (role: ColumnRole) => string;
  filled: number;
  matrix: MatrixCell[];
  hasMixColumn: boolean;
  /** The cell of the mix: its number or letter, how it is called, and what else it tells. */
  numbers: readonly number[];
  label: string;
  beside: string;
};

/** A row of a table of mixes. False where the row is none of its rows. */
export function takeMixRow(walk: Walk, line: Line, block: Block): boolean {
  const row = rowOf(walk, line, block);
  if (!row || !isRowOfMix(row, line)) return false;
  const { numbers, filled } = row;
  const told = telling.filter((role) => !saysNothing(row.get(role)));
  if (told.length === 0 && row.matrix.length === 0 && row.beside === '')
    note(walk.found, line.at, 'set aside', 'A mix left empty.');
  else if (numbers.length > 0 && filled === 2 && told.every((role) => isUnused(row.get(role))))
    note(walk.found, line.at, 'set aside', 'A mix kept in reserve.');
  else pushMix(walk, line, mixOfRow(row, walk));
  return true;
}

const telling = ['performer', 'device', 'wishes', 'role', 'notes', 'format'] as const;

function rowOf(walk: Walk, line: Line, block: Block): Row | null {
  const { byRole, matrix } = cellsByRole(line, block);
  if (byRole.size === 0) return null;
  const get = (role: ColumnRole) => tidy(byRole.get(role) ?? '');
  const text = get('mix');
  const named = leadingLabel(text, walk);
  const counted = named ? null : numberedText(text);
  const numbers = named?.numbers ?? numbersOf(text);
  const row = { get, filled: byRole.size, matrix, hasMixColumn: [...block.roles.values()].includes('mix') };
  if (named) return { ...row, numbers, label: named.label, beside: named.rest };
  if (numbers.length > 0) return { ...row, numbers, label: `Mix ${text.replace(/[.:)]+$/, '')}`, beside: '' };
  // "1 Anna": the number and who listens in one cell.
  if (counted)
    return {
      ...row,
      numbers: counted.numbers,
      label: `Mix ${counted.numbers.join('/')}`,
      beside: counted.rest,
    };
  return { ...row, numbers, label: text, beside: saysNothing(text) ? '' : text };
}

function isRowOfMix({ numbers, hasMixColumn, filled }: Row, line: Line): boolean {
  if (numbers.length > 0) return true;
  return line.cells.length > 1 && !(hasMixColumn && filled === 1);
}

function mixOfRow(row: Row, walk: Walk): Partial<FoundMix> {
  const { get, numbers } = row;
  const who = whoListens(row, walk);
  const notes = readNotes(row, walk);
  const { lead, wishText } = splitLeadingDevice(get('wishes'), walk);
  const device = [
    ...who.devices,
    get('device'),
    lead,
    get('format'),
    ownerText(get('own')),
    get('supplied'),
    countText(get('count')),
    notes.device,
    numbers.length === 2 ? 'stereo' : '',
    // "Mon 1" tells little of the device, but more than nothing.
    namesKind(row.label.replace(/\d/g, ''), walk) ? row.label.replace(/[\d/+]/g, '') : '',
  ];
  const said = (texts: readonly string[]) => texts.filter((text) => text !== '' && !saysNothing(text));
  return {
    number: numbers[0] ?? null,
    label:
      who.listener === '' && !saysNothing(get('performer'))
        ? tidy(`${row.label} ${get('performer')}`)
        : row.label,
    listenerText: who.listener,
    deviceText: listed(...device),
    place: who.place,
    wishTexts: said([wishText, notes.wishes]),
    exclusionTexts: said([get('exclusions')]),
    matrix: row.matrix,
    inTable: true,
    notes: [notes.other, ...who.roles].filter((text) => text !== ''),
  };
}

const namesKind = (text: string, walk: Walk, kind = /./) =>
  findHits(mixWords, tokenize(text), walk.tongue.spoken).some(
    ({ senses }) => senses[0]?.subject === 'device' && kind.test(senses[0].meaning),
  );

/** Side fills, and others that nobody in particular hears. */
const isFill = (text: string, walk: Walk) => namesKind(text, walk, /fill/);

type Who = { listener: string; place: string; devices: string[]; roles: string[] };

/** Who listens, and what the same cells tell of the place and the device: "Anna, centre, 2 wedges". */
function whoListens({ get, beside, numbers, hasMixColumn }: Row, walk: Walk): Who {
  const read = (text: string) => (text === '' || saysNothing(text) ? null : readMixCell(text, walk));
  // A column "group" in a table of mixes names the sections that listen.
  const performer = read(get('performer') || get('group'));
  // "Moni" with a device of her own is who listens, "Side fills" alone is what the mix is called by.
  const isName = performer?.listener === '' && get('device') !== '' && !isFill(get('performer'), walk);
  if (performer && isName) Object.assign(performer, { listener: get('performer'), device: '' });
  const mix = read(beside);
  const isNamed = performer !== null || get('role') !== '' || (hasMixColumn && numbers.length === 0);
  const position = isNamed ? null : read(get('position'));
  const told = [performer, mix, position].filter((it): it is MixLine => it !== null);
  const listener = told.find((it) => it.listener !== '')?.listener ?? '';
  const place = told.map((it) => it.place).find((it) => it !== '') ?? '';
  return {
    listener: listener || get('role'),
    place: place || (position ? '' : get('position')),
    devices: told.map((it) => it.device),
    roles: [listener === '' ? '' : get('role'), ...told.map((it) => it.role)],
  };
}

type Notes = { wishes: string; device: string; other: string };

/** A column of notes may hold the wishes, or tell more of the device. */
function readNotes({ get }: Row, walk: Walk): Notes {
  const notes = get('notes');
  const facts = pieceFacts(notes, walk);
  if (notes !== '' && get('wishes') === '' && areWishes(notes, facts, walk))
    return { wishes: notes, device: '', other: '' };
  return { wishes: '', device: facts.device || mentionsOwn(notes) ? notes : '', other: notes };
}

const areWishes = (notes: string, facts: PieceFacts, walk: Walk) =>
  isWish(facts, notes) || (facts.targets > 0 && isAllIn(wishWords, notes, walk.tongue));

/** "IEM stereo: click, keys": a device told before the wishes of one cell. */
function splitLeadingDevice(text: string, walk: Walk): { lead: string; wishText: string } {
  const [, lead = '', others = ''] = /^([^:,;]{2,40})[:,;]\s*(.+)$/su.exec(text) ?? [];
  const isLead = lead !== '' && isDevice(lead, walk) && pieceFacts(lead, walk).targets === 0;
  return isLead ? { lead, wishText: others } : { lead: '', wishText: text };
}

/** A column "own?" answers yes or no, or says whose it is. */
function ownerText(text: string): string {
  if (/^(?:y|yes|x|ja|oui|s[ií]|sim|✓|✔)$/i.test(text)) return 'own';
  return /^(?:n|no|nein|non|nee|n[aã]o|-)$/i.test(text) ? 'house' : text;
}

/** Numbers of a mix, or its letter. */
const numbersOf = (text: string): number[] =>
  /^[A-H]$/.test(text) ? [letterNumber(text)] : channelNumbers(text);

const isUnused = (text: string) =>
  /^(?:spare|free|unused|empty|frei|reserve|libre|vide|vac[ií]o|libero|vuoto|riserva|vrij|leeg|livre|vago|reserva)$/i.test(
    text,
  );

const mentionsOwn = (text: string) =>
  /\b(?:own|eigen\w*|propi[oa]s?|propri[oa]?|propres?|pr[oó]pri[oa]s?)\b/i.test(text);

const countText = (text: string) => (/^\d+$/.test(text) ? `${text}x` : text);
