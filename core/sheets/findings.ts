import type { Finding } from '../derive/derived.ts';
import { sheetOfAct } from './act-heading.ts';
import type { ActView } from './act-view.ts';
import { sheetOfDay } from './day-heading.ts';
import type { DayView } from './day-view.ts';
import { tickField } from './line-fields.ts';
import type { Sheet } from './sheet.ts';
import { type Field, tableOf } from './table.ts';

const fields: Field<Finding>[] = [
  { title: 'How serious', of: ({ severity }) => severity.replaceAll(' ', '\u00a0') },
  { title: 'What is wrong', grow: 3, of: ({ cause }) => cause },
  { title: 'What to do', grow: 3, of: ({ remedy }) => remedy },
  tickField('Done'),
];

/** A finding has no name of its own: it is told by its kind and what it is about. */
const findingKey = ({ code, subjects }: Finding) => `${code} ${JSON.stringify(subjects)}`;

/** What is still wrong or doubtful in one act. */
export function findingsOfAct(view: ActView): Sheet {
  return sheetOfAct('findings', 'Findings still open', view, {
    parts: [
      tableOf(fields, view.derived.findings, {
        key: findingKey,
        look: ({ severity }) => (severity === 'must fix' ? 'strong' : 'plain'),
        empty: 'Nothing was found. That proves no more than that the rules of this program found nothing.',
      }),
    ],
  });
}

/** What is still wrong or doubtful in the whole day, act by act. */
export function findingsOfDay(day: DayView): Sheet {
  return sheetOfDay('day findings', 'Findings of the day', day, {
    parts: day.acts.map((view) =>
      tableOf(fields, view.derived.findings, {
        heading: view.sheet.act.name,
        key: (it) => `${view.sheet.act.id} ${findingKey(it)}`,
        look: ({ severity }) => (severity === 'must fix' ? 'strong' : 'plain'),
        empty: 'Nothing was found.',
      }),
    ),
  });
}
