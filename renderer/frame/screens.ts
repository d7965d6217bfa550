import type { ComponentType } from 'react';
import { MixesScreen } from '../mixes/mixes-screen.tsx';
import type { Moment } from '../state/view-store.ts';

/** The screen of each moment. Whoever adds a moment adds its screen here. */
export const screens: Record<Moment, ComponentType> = {
  advance: MixesScreen,
  mixes: MixesScreen,
  stage: MixesScreen,
  day: MixesScreen,
  changeover: MixesScreen,
  show: MixesScreen,
  paper: MixesScreen,
  rig: MixesScreen,
};
