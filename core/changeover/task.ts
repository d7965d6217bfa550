import type { Id } from '../show/rig.ts';
import type { StagePlace } from '../show/stage-place.ts';
import type { TaskKind } from './task-kinds.ts';

/** One thing to do in a changeover. Indexes in `after` are places in the list of tasks. */
export type Task = {
  kind: TaskKind;
  /** What to do, with names: "Plug Kick in into A1". */
  what: string;
  /** Where: the name for the sheet, and the spot on the stage for the way there; null: not known. */
  placeName: string;
  place: StagePlace | null;
  sourceId: Id | null;
  mixId: Id | null;
  deviceId: Id | null;
  socketId: Id | null;
  seconds: number;
  hands: number;
  desk: number;
  after: number[];
};

/** What a task is about and where it is done, as far as it says. */
export type TaskSubject = Partial<
  Pick<Task, 'sourceId' | 'mixId' | 'deviceId' | 'socketId' | 'placeName' | 'place'>
>;
