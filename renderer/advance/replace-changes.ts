import { type Comparison, compareReadings } from '../../core/rider/again/compare-readings.ts';
import { answersAsBefore } from '../../core/rider/again/remembered-answers.ts';
import { takeConsequences } from '../../core/rider/again/take-consequences.ts';
import type { Grid } from '../../core/rider/grid.ts';
import { actSheet } from '../../core/show/act-sheet.ts';
import { type Change, put } from '../../core/show/change.ts';
import type { RiderRecord } from '../../core/show/rider-record.ts';
import type { Show } from '../../core/show/show.ts';
import { newId } from '../state/new-id.ts';
import { readingOfRider } from '../state/reading-cache.ts';
import { words } from '../wording/words.ts';
import { earlierAnswers, readerOf } from './earlier-answers.ts';
import { answerRows, newRider } from './rider-changes.ts';

export type Replacement = {
  comparison: Comparison;
  riderId: string;
  /** The later version in place of the earlier one, with the consequences taken, as one change. */
  changeOf: (taken: ReadonlySet<string>) => Change;
};

/** A later version of a rider of an act, compared with it. `receivedAt` is the time as ISO 8601. */
export function replacementOf(
  show: Show,
  old: RiderRecord,
  grid: Grid,
  receivedAt: string,
): Replacement | null {
  const sheet = actSheet(show, old.actId);
  if (!sheet) return null;
  const read = readerOf(show, { grid, actId: old.actId });
  const answers = answersAsBefore(read, earlierAnswers(show, old.actId, null));
  const comparison = compareReadings(sheet, readingOfRider(show, old), read(answers), newId);
  const rider = newRider(show, old.actId, grid, receivedAt);
  return {
    comparison,
    riderId: rider.id,
    changeOf: (taken) => {
      const rows = takeConsequences(sheet, comparison.consequences, taken);
      return {
        label: words.advance.replaceLabel(old.fileName, rider.fileName),
        put: [
          put('riders', { ...old, replaced: true }),
          put('riders', rider),
          ...answerRows(rider.id, answers),
          ...rows.put,
        ],
        remove: rows.remove,
      };
    },
  };
}
