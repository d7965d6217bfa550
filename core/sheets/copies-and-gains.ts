import type { Purpose } from '../show/words.ts';
import { sheetOfAct } from './act-heading.ts';
import type { ActView, LineView } from './act-view.ts';
import { cautions } from './cautions.ts';
import { numberText } from './cell-text.ts';
import { lineFields, lineKey } from './line-fields.ts';
import type { Sheet } from './sheet.ts';
import { type Field, tableOf } from './table.ts';
import { nameOfPurpose } from './words.ts';

/** The channel of a copy and, where it has been set, its trim: "49, trim −3.0". */
function copyField(purpose: Purpose): Field<LineView> {
  return {
    title: nameOfPurpose[purpose],
    of: ({ channels, gain }) => {
      const channel = channels[purpose];
      if (channel === undefined) return null;
      const trim = gain?.trims.find((it) => it.purpose === purpose);
      if (!trim || (trim.trimDb === 0 && trim.setDb === 0)) return channel;
      const moved = trim.setDb === trim.trimDb ? '' : `, set to ${numberText(trim.setDb, 1, true)}`;
      return `${channel}, trim ${numberText(trim.trimDb, 1, true)}${moved}`;
    },
  };
}

const decibels = { kind: 'number', decimals: 1, signed: true } as const;

const fields: Field<LineView>[] = [
  lineFields.line,
  lineFields.source,
  lineFields.socket,
  { title: 'Gain set by', of: ({ gain }) => gain?.owner ?? 'nobody named' },
  { title: 'Gain, dB', ...decibels, of: ({ gain }) => gain?.gainDb ?? null },
  { title: 'Needed, dB', ...decibels, of: ({ gain }) => gain?.neededDb ?? null },
  { title: 'Moved, dB', ...decibels, of: ({ gain }) => gain?.movedDb || null },
  lineFields.phantom,
  { ...copyField('foh'), align: 'right' },
  { ...copyField('monitors'), align: 'right' },
  { ...copyField('wedges'), align: 'right' },
  { ...copyField('in-ears'), align: 'right' },
  { ...copyField('parallel'), align: 'right' },
];

/** Which channels share one preamp, and who turns it. */
export function copiesAndGains(view: ActView): Sheet {
  const passedOver = view.derived.plan.passedOver.flatMap(({ sourceId, why }) => {
    const line = view.lines.find((it) => it.source.id === sourceId);
    return line ? [{ line, why }] : [];
  });
  const parts = [tableOf(fields, view.lines, { key: lineKey, empty: 'This act has no input yet.' })];
  if (passedOver.length > 0)
    parts.push(
      tableOf(
        [
          { title: 'Line', kind: 'number', of: (it) => it.line.line },
          { title: 'Source', grow: 1, of: (it) => it.line.source.name },
          { title: 'Why it has no copy for monitors', grow: 3, of: (it) => it.why },
        ],
        passedOver,
        { heading: 'Left without a copy', key: (it) => it.line.source.id, empty: '' },
      ),
    );
  return sheetOfAct('copies and gains', 'Copies and gains', view, { cautions: [cautions.gains], parts });
}
