import type { StagePlace } from '../../core/show/stage-place.ts';
import type { LaidOutMark } from './laid-out.ts';
import type { StageThing } from './stage-objects.ts';
import type { StageSettings } from './stage-settings.ts';
import type { StageView } from './stage-view.ts';

/** What the hands, pointer or keys, know of the stage and can do to it. */
export type StageActs = {
  view: StageView;
  settings: StageSettings;
  things: readonly StageThing[];
  marks: readonly LaidOutMark[];
  chosen: ReadonlySet<string>;
  /** What moves when the chosen things do: they, and what they take along. */
  moving: ReadonlySet<string>;
  /** Chooses things by key, and nothing else. */
  choose(keys: Iterable<string>): void;
  /** Where the keyboard is on the drawing, by the key of a thing. */
  focusOn(key: string): void;
  /** Moves the chosen things, and what they take along. */
  moveBy(by: StagePlace): void;
  turnTo(thing: StageThing, aimDeg: number): void;
  zoomTo(view: StageView): void;
};

/** Some things more, or without them where all of them were chosen. */
export function toggled(chosen: ReadonlySet<string>, keys: readonly string[]): string[] {
  if (keys.every((key) => chosen.has(key))) return [...chosen].filter((key) => !keys.includes(key));
  return [...new Set([...chosen, ...keys])];
}
