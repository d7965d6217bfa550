import type { Mix } from '../show/act.ts';
import type { ActSheet } from '../show/act-sheet.ts';
import type { Format } from '../show/words.ts';

/**
 * The format each mix is planned in, in sheet order. Where nobody has said it, in-ears are stereo if the house has
 * stereo packs to give (common practice: ear mixes are stereo), and everything else is mono.
 */
export function mixFormats(sheet: ActSheet): Format[] {
  const stereoPacks = sheet.devices.some(
    (device) => device.kind === 'in-ear' && device.format === 'stereo' && !device.forCue,
  );
  const usual = (mix: Mix): Format => (mix.deviceKind === 'in-ear' && stereoPacks ? 'stereo' : 'mono');
  return sheet.mixes.map((mix) => mix.format ?? usual(mix));
}
