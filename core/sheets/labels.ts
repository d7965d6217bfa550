import type { Purpose } from '../show/words.ts';
import { purposes } from '../show/words.ts';
import { sheetOfAct } from './act-heading.ts';
import type { ActView } from './act-view.ts';
import { digitColours } from './digit-colours.ts';
import type { LabelForm } from './label-form.ts';
import type { Label, Sheet } from './sheet.ts';
import { letterOfPurpose } from './words.ts';

export type LabelWishes = { form: LabelForm; lineColours: boolean };

/** A label for every channel of the desk that carries something, in channel order. */
export function channelLabels(view: ActView, { form }: LabelWishes): Sheet {
  const labels = view.lines
    .flatMap(({ source, channels }) =>
      purposes.flatMap((purpose) => {
        const channel = channels[purpose];
        return channel === undefined ? [] : [{ source, purpose, channel }];
      }),
    )
    .sort((a, b) => a.channel - b.channel)
    .map(
      ({ source, purpose, channel }): Label => ({
        key: `${source.id} ${purpose}`,
        number: String(channel),
        name: source.name,
        below: belowName(purpose),
        digitColours: [],
      }),
    );
  return labelSheet('channel labels', 'Labels for channels', view, form, labels);
}

/** The copies of a source carry one name and a letter, so that they are never mistaken for one another. */
function belowName(purpose: Purpose): string {
  return purpose === 'foh' ? '' : letterOfPurpose[purpose];
}

/** A label for both ends of every line on stage. */
export function lineLabels(view: ActView, { form, lineColours }: LabelWishes): Sheet {
  const labels = view.lines.map(
    ({ source, line, socketName }): Label => ({
      key: source.id,
      number: String(line),
      name: source.name,
      below: socketName,
      digitColours: lineColours ? digitColours(line) : [],
    }),
  );
  return labelSheet('line labels', 'Labels for lines', view, form, labels);
}

function labelSheet(id: string, title: string, view: ActView, form: LabelForm, labels: Label[]): Sheet {
  return sheetOfAct(id, title, view, {
    page: { orientation: form.is === 'strip' ? 'landscape' : 'portrait', paper: null },
    parts: [{ is: 'labels', heading: null, form, labels }],
  });
}
