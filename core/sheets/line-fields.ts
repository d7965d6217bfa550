import type { Purpose } from '../show/words.ts';
import type { LineView } from './act-view.ts';
import type { Field } from './table.ts';
import { broughtByText, phantomText, phantomWord, pickUpText, placeText, remarks } from './words.ts';

/** The columns in which sheets tell of a line. A sheet picks those that its readers need. */
export const lineFields = {
  line: { title: 'Line', kind: 'number', of: ({ line }) => line },
  riderLine: { title: 'Your no.', kind: 'number', of: ({ source }) => source.riderLine },
  socket: { title: 'Socket', of: ({ socketName }) => socketName || 'not patched' },
  source: { title: 'Source', grow: 2, of: ({ source }) => source.name },
  performer: { title: 'Performer', grow: 1, of: ({ performer }) => performer },
  pickUp: { title: 'Mic, DI', grow: 1, of: pickUpText },
  phantom: { title: phantomWord, of: phantomText },
  stand: { title: 'Stand', of: ({ source }) => source.stand },
  place: { title: 'Place', grow: 1, of: placeText },
  broughtBy: { title: 'Brought by', of: broughtByText },
  remarks: { title: 'Notes', grow: 2, of: remarks },
  audience: {
    title: 'Heard',
    of: ({ source }) => (source.audience === 'front of house and monitors' ? '' : source.audience),
  },
} satisfies Record<string, Field<LineView>>;

/** The channel of one copy. */
export function channelField(title: string, purpose: Purpose): Field<LineView> {
  return { title, kind: 'number', of: ({ channels }) => channels[purpose] ?? null };
}

export function tickField<T>(title: string): Field<T> {
  return { title, kind: 'tick', of: () => null };
}

export const lineKey = ({ source }: LineView) => source.id;
