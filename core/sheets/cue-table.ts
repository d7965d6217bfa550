import type { CueOutput } from '../show/rig.ts';
import { sheetOfAct } from './act-heading.ts';
import type { ActView, MixView } from './act-view.ts';
import { cautions } from './cautions.ts';
import type { Sheet } from './sheet.ts';
import { type Field, tableOf } from './table.ts';
import { deviceText, listenersText } from './words.ts';

function fields(cueOutputs: readonly CueOutput[]): Field<MixView>[] {
  const names = new Map(cueOutputs.map((it) => [it.id, it.name]));
  return [
    { title: 'Mix', kind: 'number', of: ({ number }) => number },
    { title: 'Name', grow: 1, of: ({ mix }) => mix.name },
    { title: 'For', grow: 1, of: listenersText },
    { title: 'Heard through', of: deviceText },
    { title: 'You hear it on', of: ({ cue }) => names.get(cue?.cueOutputId ?? '') ?? 'nothing' },
    { title: 'As', of: ({ cue }) => cue?.format ?? '' },
    { title: 'Level, dB', kind: 'number', decimals: 1, signed: true, of: ({ cue }) => cue?.offsetDb ?? null },
    { title: 'Delay, ms', kind: 'number', decimals: 1, of: ({ cue }) => cue?.delayMs ?? null },
    { title: 'Why', grow: 2, of: ({ cue }) => cue?.why ?? '' },
  ];
}

/** Where the engineer hears every mix, and how loud to be as loud as the performer hears it. */
export function cueTable(view: ActView): Sheet {
  return sheetOfAct('cue table', 'Cue table', view, {
    cautions: [cautions.cue],
    parts: [
      tableOf(fields(view.sheet.cueOutputs), view.mixes, {
        key: ({ mix }) => mix.id,
        empty: 'This act has no mix yet.',
      }),
    ],
  });
}
