import type { Id } from '../../core/show/rig.ts';
import { whoHears } from '../parts/names.ts';
import type { ActOnScreen } from '../state/derive-cache.ts';

export type StageItem = {
  key: string;
  kind: 'performer' | 'wedge' | 'box';
  name: string;
  /** Metres as in `core/show/rig.ts`: x to stage left, y upstage from the front edge. */
  xM: number;
  yM: number;
  reachM: number | null;
  mixId: Id | null;
};

export type UnplacedItem = Pick<StageItem, 'key' | 'kind' | 'name'>;

/** Performers, wedges and fills, and boxes: those with a place on the plot, and those without. */
export function itemsOnStage({ sheet }: ActOnScreen): { placed: StageItem[]; unplaced: UnplacedItem[] } {
  const mixOf = (performerId: Id) =>
    sheet.listeners.find((it) => it.performerId === performerId)?.mixId ?? null;
  // In the order of drawing: what is listed later lies on top.
  const all = [
    ...sheet.boxes.map((it) => ({ ...it, kind: 'box' as const, mixId: null })),
    ...sheet.performers.map((it) => ({
      ...it,
      kind: 'performer' as const,
      reachM: null,
      mixId: mixOf(it.id),
    })),
    ...sheet.mixes
      .filter((it) => it.deviceKind !== null && it.deviceKind !== 'in-ear')
      .map((it) => ({
        ...it,
        name: whoHears(sheet, it),
        kind: 'wedge' as const,
        reachM: null,
        mixId: it.id,
      })),
  ];
  const placed: StageItem[] = [];
  const unplaced: UnplacedItem[] = [];
  for (const { id, kind, name, xM, yM, reachM, mixId } of all) {
    const key = `${kind} ${id}`;
    if (xM === null || yM === null) unplaced.push({ key, kind, name });
    else placed.push({ key, kind, name, xM, yM, reachM, mixId });
  }
  return { placed, unplaced };
}
