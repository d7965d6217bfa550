import type { Grid } from '../grid.ts';
import { type TaughtWord, taughtIn } from '../language/taught-words.ts';
import type { LineOutcome, ReadLine } from '../reading.ts';
import { placeOf } from './draft.ts';
import { isBlankRow, textOfRow } from './lines.ts';
import { shorten, type Work } from './work.ts';

/** Below this a reading is a guess and its line wants a look. */
export const sureEnough = 0.8;

/** One entry for every line that is not blank, whatever was made of it. */
export function accountForLines(grid: Grid, work: Work): ReadLine[] {
  const inputs = groupBy(work.inputs, (input) => placeOf(input.found.at));
  const mixes = new Map<string, Work['mixes']>();
  for (const mix of work.mixes)
    for (const line of mix.lines) mixes.set(placeOf(line), [...(mixes.get(placeOf(line)) ?? []), mix]);
  const asked = groupBy(
    work.asker.questions.filter((question) => question.at !== null),
    (question) => (question.at ? placeOf(question.at) : ''),
  );
  return grid.sheets.flatMap((sheet, sheetIndex) =>
    sheet.rows.flatMap((row, rowIndex): ReadLine[] => {
      if (isBlankRow(row)) return [];
      const at = { sheet: sheetIndex, row: rowIndex };
      const place = placeOf(at);
      const here = inputs.get(place) ?? [];
      const mixesHere = mixes.get(place) ?? [];
      const questions = asked.get(place) ?? [];
      const noted = work.found.notes.get(place) ?? {
        outcome: 'set aside' as const,
        why: 'Nothing was made of it.',
      };
      const unsure = here.some((input) => input.read.kindConfidence < sureEnough || input.found.doubt !== '');
      const outcome = questions.length > 0 ? 'question' : outcomeUnasked(noted.outcome, unsure);
      const doubt = here.map((input) => input.found.doubt).find((text) => text !== '');
      const told = questions[0]?.ask ?? doubt ?? (noted.why !== '' ? noted.why : describe(here, mixesHere));
      const text = textOfRow(row);
      const own = noted.outcome === 'set aside' ? [] : taughtIn(work.tongue.spoken, text);
      const why = [told, ...own.map(ownWordText)].join(' ');
      return [
        {
          at,
          text,
          outcome,
          why,
          inputKeys: here.map((input) => input.read.key),
          mixKeys: mixesHere.map((mix) => mix.key),
          questionKeys: questions.map((question) => question.key),
        },
      ];
    }),
  );
}

/** Of a line that nothing is asked about. A question that was not asked in the end leaves a guess. */
function outcomeUnasked(noted: LineOutcome, unsure: boolean): LineOutcome {
  return noted === 'question' || (noted === 'understood' && unsure) ? 'guessed' : noted;
}

const ownWordText = ({ words, kind }: TaughtWord) => `Your own word: “${words}” means ${kind}.`;

function describe(inputs: Work['inputs'], mixes: Work['mixes']): string {
  const kinds = [...new Set(inputs.map((input) => input.read.kind))];
  if (kinds.length > 0) {
    const lines = `Input ${inputs.map((input) => input.read.channel).join(', ')}`;
    const sure = Math.min(...inputs.map((input) => input.read.kindConfidence));
    return sure < sureEnough
      ? `${lines}: taken for ${kinds.join(', ')}, ${Math.round(sure * 100)}% sure.`
      : `${lines}: ${kinds.join(', ')}.`;
  }
  if (mixes.length > 0) return `${mixes.map((mix) => shorten(mix.label)).join(', ')}: what is heard there.`;
  return 'Read with the lines around it.';
}

function groupBy<T>(items: readonly T[], key: (item: T) => string): Map<string, T[]> {
  const groups = new Map<string, T[]>();
  for (const item of items) {
    const group = groups.get(key(item));
    if (group) group.push(item);
    else groups.set(key(item), [item]);
  }
  return groups;
}
