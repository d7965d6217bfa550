import { type ComponentType, lazy } from 'react';
import { ChangeoverScreen } from '../changeover/changeover-screen.tsx';
import { DayScreen } from '../day/day-screen.tsx';
import { MixesScreen } from '../mixes/mixes-screen.tsx';
import { PaperScreen } from '../paper/paper-screen.tsx';
import { RigScreen } from '../rig/rig-screen.tsx';
import { ShowScreen } from '../show/show-screen.tsx';
import { StageScreen } from '../stage/stage-screen.tsx';
import { loadReader } from '../state/reading-cache.ts';
import type { Moment } from '../state/view-store.ts';

const AdvanceScreen = lazy(async () => {
  await loadReader();
  return { default: (await import('../advance/advance-screen.tsx')).AdvanceScreen };
});

/** The screen of each moment. Whoever adds a moment adds its screen here. */
export const screens: Record<Moment, ComponentType> = {
  advance: AdvanceScreen,
  mixes: MixesScreen,
  stage: StageScreen,
  day: DayScreen,
  changeover: ChangeoverScreen,
  show: ShowScreen,
  paper: PaperScreen,
  rig: RigScreen,
};
