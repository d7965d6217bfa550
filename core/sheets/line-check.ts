import { longNotes, sheetOfAct } from './act-heading.ts';
import type { ActView, LineView } from './act-view.ts';
import { cautions } from './cautions.ts';
import { lineFields, lineKey, tickField } from './line-fields.ts';
import type { Sheet } from './sheet.ts';
import { type Field, tableOf } from './table.ts';
import { channelsText, copyKey } from './words.ts';

const fields: Field<LineView>[] = [
  lineFields.line,
  lineFields.socket,
  lineFields.source,
  lineFields.pickUp,
  lineFields.phantom,
  { title: 'Channels', of: channelsText },
  lineFields.performer,
  tickField('Signal'),
  tickField('Clean'),
  tickField('All copies'),
  { title: 'Found', kind: 'write', grow: 3, of: () => null },
];

/** One row to tick for every line; the words under "Found" are written by hand. */
export function lineCheck(view: ActView): Sheet {
  return sheetOfAct('line check', 'Line check', view, {
    cautions: [cautions.lineCheck],
    parts: [
      tableOf(fields, view.lines, { key: lineKey, empty: 'This act has no input yet.' }),
      { is: 'text', heading: null, paragraphs: [copyKey] },
      ...longNotes(view),
    ],
  });
}
