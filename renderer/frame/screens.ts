import { type ComponentType, lazy } from 'react';
import { MixesScreen } from '../mixes/mixes-screen.tsx';
import { ShowScreen } from '../show/show-screen.tsx';
import { loadReader } from '../state/reading-cache.ts';
import type { Moment } from '../state/view-store.ts';

/**
 * The screen of each moment. Whoever adds a moment adds its screen here. What the first sight of a plan and a
 * running show need is there at once; the others come in files of their own.
 */
export const screens: Record<Moment, ComponentType> = {
  advance: lazy(async () => {
    await loadReader();
    return { default: (await import('../advance/advance-screen.tsx')).AdvanceScreen };
  }),
  mixes: MixesScreen,
  stage: lazy(async () => ({ default: (await import('../stage/stage-screen.tsx')).StageScreen })),
  day: lazy(async () => ({ default: (await import('../day/day-screen.tsx')).DayScreen })),
  changeover: lazy(async () => ({
    default: (await import('../changeover/changeover-screen.tsx')).ChangeoverScreen,
  })),
  show: ShowScreen,
  paper: lazy(async () => ({ default: (await import('../paper/paper-screen.tsx')).PaperScreen })),
  rig: lazy(async () => ({ default: (await import('../rig/rig-screen.tsx')).RigScreen })),
  recall: lazy(async () => ({ default: (await import('../recall/recall-screen.tsx')).RecallScreen })),
};

/** Opened now and then: in a file of its own. */
export const KeepDialog = lazy(async () => ({
  default: (await import('../keep/keep-dialog.tsx')).KeepDialog,
}));
