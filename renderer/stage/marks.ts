import { distanceM, type StagePlace } from '../../core/show/stage-place.ts';
import { isPlaced, type PlacedThing, type StageThing } from './stage-objects.ts';

/**
 * One mark on the drawing: a thing, or several lines that stand at one place, as at a drum kit. `atPerformer`: the
 * lines of the mark stand where somebody stands.
 */
export type Mark = {
  key: string;
  things: readonly [PlacedThing, ...PlacedThing[]];
  at: StagePlace;
  atPerformer: boolean;
};

/** So near that two marks would cover each other. */
const sameSpotM = 0.2;

/**
 * The marks of all things with a place, in the order of drawing. Lines at one spot share a mark as long as they are
 * chosen together and would move together, so that one of them can be drawn away from the others.
 */
export function marksOf(
  things: readonly StageThing[],
  chosen: ReadonlySet<string>,
  moving: ReadonlySet<string>,
): Mark[] {
  const placed = things.filter(isPlaced);
  const performers = placed.filter((it) => it.kind === 'performer');
  const marks: (Mark & { group: string })[] = [];
  for (const thing of placed) {
    const isLine = thing.kind === 'source';
    const group = `${isLine} ${chosen.has(thing.key)} ${moving.has(thing.key)}`;
    const near = isLine ? marks.findIndex((it) => it.group === group && isSameSpot(it.at, thing.at)) : -1;
    const mark = marks[near];
    if (mark) {
      marks[near] = { ...mark, things: [...mark.things, thing] };
      continue;
    }
    const atPerformer = isLine && performers.some((it) => isSameSpot(it.at, thing.at));
    marks.push({ key: thing.key, things: [thing], at: thing.at, atPerformer, group });
  }
  return marks.map(({ group: _, ...mark }) => mark);
}

const isSameSpot = (a: StagePlace, b: StagePlace) => distanceM(a, b) < sameSpotM;
