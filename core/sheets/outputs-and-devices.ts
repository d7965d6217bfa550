import type { Device, Output } from '../show/rig.ts';
import { lying, sheetOfAct } from './act-heading.ts';
import type { ActView, MixView } from './act-view.ts';
import { cautions } from './cautions.ts';
import { tickField } from './line-fields.ts';
import type { Sheet } from './sheet.ts';
import { type Field, tableOf } from './table.ts';
import { deviceText, listenersText } from './words.ts';

const joined =
  <T>(say: (it: T) => string, of: (mix: MixView) => readonly T[]) =>
  (mix: MixView) =>
    [...new Set(of(mix).map(say))].filter((it) => it !== '').join(' + ');
const ofDevices = (say: (device: Device) => string) => joined(say, ({ devices }) => devices);
const ofOutputs = (say: (output: Output) => string) => joined(say, ({ outputs }) => outputs);

const fields: Field<MixView>[] = [
  { title: 'Mix', kind: 'number', of: ({ number }) => number },
  { title: 'Name', grow: 1, of: ({ mix }) => mix.name },
  { title: 'For', grow: 1, of: listenersText },
  { title: 'Place', grow: 1, of: ({ mix }) => mix.place },
  { title: 'Bus', of: ({ buses }) => buses },
  { title: 'Output', of: ofOutputs(({ name }) => name) },
  { title: 'Leaves at', of: ofOutputs(({ place }) => place) },
  { title: 'Heard through', of: deviceText },
  { title: 'Device', grow: 1, of: deviceNames },
  {
    title: 'MHz',
    of: ofDevices(({ frequencyMhz }) => (frequencyMhz === null ? '' : frequencyMhz.toFixed(3))),
  },
  { title: 'Limiter', of: ofDevices(limiterText) },
  tickField('Given out'),
  tickField('Back'),
];

function deviceNames(view: MixView): string {
  const own = view.mix.ownDevice === true ? 'band’s own' : '';
  const house = ofDevices(({ name, model }) => (model === '' ? name : `${name} (${model})`))(view);
  return [own, house].filter((it) => it !== '').join(', ');
}

function limiterText({ kind, limiter }: Device): string {
  if (kind !== 'in-ear') return '';
  return limiter ?? 'NOT CHECKED';
}

/** The way of every mix to whoever hears it, for the people who put up wedges and hand out packs. */
export function outputsAndDevices(view: ActView): Sheet {
  return sheetOfAct('outputs and devices', 'Outputs and devices', view, {
    cautions: [cautions.outputs],
    page: lying,
    parts: [tableOf(fields, view.mixes, { key: ({ mix }) => mix.id, empty: 'This act has no mix yet.' })],
  });
}
