import type { Day } from '../show/act.ts';
import type { Rig, StockItem } from '../show/rig.ts';
import type { ActView } from './act-view.ts';

/** A day made ready to be told: its acts in running order. */
export type DayView = {
  day: Day;
  rig: Rig;
  stock: StockItem[];
  acts: ActView[];
};
