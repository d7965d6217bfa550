import { PatchBoard } from './patch-board.ts';
import type { Assignment, Layer } from './problem.ts';
import { type Seeded, seeded } from './seeded-order.ts';

/**
 * Makes a patch cheaper by exchanging what two slots hold, over one act, over a run that stays plugged, or to an
 * end of the day. It starts warm (a dearer exchange is taken now and then, so that it gets out of dead ends) and
 * cools down. Steps are counted, not timed: the same day and seed give the same patch on every machine.
 */
export function improvePatch(
  layer: Layer,
  assignment: Assignment,
  options: { steps: number; seed: number; warmth: number; goodEnough: number; isStopped?: () => boolean },
): { assignment: Assignment; cost: number } {
  const board = new PatchBoard(layer, assignment);
  const next = seeded(options.seed);
  const movable = layer.items.flatMap((item, index) => (item.locked === null ? [index] : []));
  let cost = board.cost();
  let best = { assignment: board.assignment(), cost };
  if (movable.length === 0) return best;
  for (let step = 0; step < options.steps && best.cost > options.goodEnough; step++) {
    if (step % stepsBetweenLooks === 0 && options.isStopped?.()) break;
    const warmth = options.warmth * 0.02 ** (step / options.steps);
    const move = drawMove(board, movable, next);
    if (!move) continue;
    const change = board.exchange(...move);
    if (change === null) continue;
    if (change > 0 && next() >= Math.exp(-change / warmth)) {
      board.takeBack(...move);
      continue;
    }
    cost += change;
    if (cost < best.cost) best = { assignment: board.assignment(), cost };
  }
  return best;
}

/** How often a search asks whether it is stopped. */
const stepsBetweenLooks = 4096;

type Move = [a: number, b: number, width: number, from: number, to: number];

function drawMove(board: PatchBoard, movable: number[], next: Seeded): Move | null {
  const index = movable[Math.floor(next() * movable.length)] ?? 0;
  const choices = board.choices[index];
  const item = board.layer.items[index];
  if (!choices || choices.length === 0 || !item) return null;
  const from = board.slotOf[index] ?? 0;
  let to = choices[Math.floor(next() * choices.length)] ?? 0;
  if (from === to) return null;
  const [first, last] = drawSpan(board, index, item.act, next);
  let width: number = item.width;
  let start = from;
  // Now and then a single takes the whole pair of slots along, so that two singles can make way for a pair.
  if (width === 1 && next() < 0.15) {
    start = pairStart(board, from);
    to = pairStart(board, to);
    width = 2;
    if (start < 0 || to < 0 || start === to) return null;
  }
  return [start, to, width, first, last];
}

function pairStart(board: PatchBoard, slot: number): number {
  if ((board.pairOf[slot] ?? -1) >= 0) return slot;
  return board.pairOf[slot - 1] === slot ? slot - 1 : -1;
}

function drawSpan(board: PatchBoard, index: number, act: number, next: Seeded): [number, number] {
  const draw = next();
  if (draw < 0.25) return [act, act];
  const start = board.chainStart(index);
  const end = board.chainEnd(index);
  if (draw < 0.7) return [start, end];
  if (draw < 0.8) return [act, end];
  if (draw < 0.9) return [start, board.acts - 1];
  return [0, end];
}
