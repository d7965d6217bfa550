import { sheetOfDay } from './day-heading.ts';
import type { DayView } from './day-view.ts';
import type { Sheet } from './sheet.ts';
import { tableOf } from './table.ts';

/** What a set of sheets holds: the paper layer fills in the pages once it knows them. */
export type CoverEntry = {
  key: string;
  title: string;
  subject: string;
  page: number | null;
  version: string;
};

/** The front of a whole set of sheets: what is in it, and where. */
export function cover(day: DayView, entries: readonly CoverEntry[]): Sheet {
  return sheetOfDay('cover', 'All sheets', day, {
    page: { orientation: 'portrait', paper: null },
    parts: [
      tableOf(
        [
          { title: 'Whose', grow: 2, of: ({ subject }) => subject },
          { title: 'Sheet', grow: 2, of: ({ title }) => title },
          { title: 'Version', of: ({ version }) => version },
          { title: 'Page', kind: 'number', of: ({ page }) => page },
        ],
        entries,
        { key: ({ key }) => key, empty: 'There is no sheet in this set.' },
      ),
    ],
  });
}
