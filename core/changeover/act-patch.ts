import type { Entry } from '../plan/day/problem.ts';
import type { ActWithPlan } from '../plan/plan-act.ts';
import type { Id } from '../show/rig.ts';

/** One side of a changeover: an act with its plan, and how each of its lines enters its socket. */
export type ActPatch = ActWithPlan & { entryOf: (sourceId: Id) => Entry };
