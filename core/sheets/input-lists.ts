import { longNotes, sheetOfAct } from './act-heading.ts';
import type { ActView, LineView, MixView } from './act-view.ts';
import { cautions } from './cautions.ts';
import { channelField, lineFields, lineKey, tickField } from './line-fields.ts';
import type { Sheet } from './sheet.ts';
import { type Field, tableOf } from './table.ts';
import { deviceText, listenersText } from './words.ts';

const fields = lineFields;
const noLines = 'This act has no input yet.';

const fohFields: Field<LineView>[] = [
  channelField('Ch', 'foh'),
  channelField('Parallel', 'parallel'),
  fields.line,
  fields.source,
  fields.performer,
  fields.pickUp,
  fields.phantom,
  fields.socket,
  { title: 'Gain by', of: ({ gain }) => gain?.owner ?? 'nobody named' },
  fields.audience,
  fields.remarks,
];

const stageFields: Field<LineView>[] = [
  fields.line,
  fields.socket,
  fields.source,
  fields.pickUp,
  fields.phantom,
  fields.stand,
  fields.place,
  fields.performer,
  fields.broughtBy,
  fields.remarks,
  tickField('Done'),
];

const bandFields: Field<LineView>[] = [
  fields.line,
  fields.riderLine,
  fields.source,
  fields.performer,
  fields.pickUp,
  fields.stand,
  fields.place,
  fields.broughtBy,
  fields.remarks,
];

const mixFields: Field<MixView>[] = [
  { title: 'Mix', kind: 'number', of: ({ number }) => number },
  { title: 'Name', grow: 1, of: ({ mix }) => mix.name },
  { title: 'For', grow: 1, of: listenersText },
  { title: 'Heard through', of: deviceText },
  {
    title: 'Device brought by',
    of: ({ mix }) => (mix.ownDevice === null ? '' : mix.ownDevice ? 'band' : 'house'),
  },
  { title: 'Mixed at', of: ({ mix }) => (mix.mixedAt === 'elsewhere' ? 'the band’s desk' : 'house desk') },
  { title: 'Place', grow: 1, of: ({ mix }) => mix.place },
];

/** The act's inputs for the engineer at front of house: by channel. */
export function inputListForFoh(view: ActView): Sheet {
  const byChannel = view.lines.toSorted(
    (a, b) => (a.channels.foh ?? Infinity) - (b.channels.foh ?? Infinity) || a.line - b.line,
  );
  return sheetOfAct('input list foh', 'Input list for front of house', view, {
    parts: [tableOf(fohFields, byChannel, { key: lineKey, empty: noLines }), ...longNotes(view)],
  });
}

/** The act's inputs for the people who plug and carry. */
export function inputListForStage(view: ActView): Sheet {
  return sheetOfAct('input list stage', 'Input list for the stage', view, {
    cautions: [cautions.patching],
    parts: [tableOf(stageFields, view.lines, { key: lineKey, empty: noLines }), ...longNotes(view)],
  });
}

/** What the house understood, for the band to look over: their numbers beside ours. */
export function inputListForBand(view: ActView): Sheet {
  return sheetOfAct('input list band', 'Input list for the band', view, {
    parts: [
      tableOf(bandFields, view.lines, { heading: 'Inputs', key: lineKey, empty: noLines }),
      tableOf(mixFields, view.mixes, {
        heading: 'Mixes',
        key: ({ mix }) => mix.id,
        empty: 'This act has no mix yet.',
      }),
      ...longNotes(view),
    ],
  });
}
