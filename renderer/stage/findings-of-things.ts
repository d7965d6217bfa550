import type { Finding } from '../../core/derive/derived.ts';
import { listenersOf } from '../parts/names.ts';
import type { ActOnScreen } from '../state/derive-cache.ts';
import { findingPlaces } from '../state/finding-places.ts';
import { keyOfThing, type StageThing } from './stage-objects.ts';

/**
 * The findings to mark at each thing on the stage, by its key. What is wrong with a mix that has no device on the
 * stage, as in-ears, is marked at who hears it.
 */
export function findingsOfThings(
  open: ActOnScreen,
  things: readonly StageThing[],
): ReadonlyMap<string, readonly Finding[]> {
  const { ofSource, ofMix } = findingPlaces(open);
  const drawn = new Set(things.map(({ key }) => key));
  const found = new Map<string, Set<Finding>>();
  const add = (key: string, findings: readonly Finding[]) => {
    const known = found.get(key) ?? new Set();
    for (const finding of findings) known.add(finding);
    found.set(key, known);
  };
  for (const [id, findings] of ofSource) add(keyOfThing('source', id), findings);
  for (const [id, findings] of ofMix) {
    const wedge = keyOfThing('wedge', id);
    const keys = drawn.has(wedge)
      ? [wedge]
      : listenersOf(open.sheet, id).map((it) => keyOfThing('performer', it.id));
    for (const key of keys) add(key, findings);
  }
  return new Map([...found].map(([key, findings]) => [key, [...findings]]));
}
