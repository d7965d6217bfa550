import type { ActSheet } from '../show/act-sheet.ts';
import type { SheetIndex } from './sheet-index.ts';

/** For each mix, the mixes it names with "same as", with the place of the wish that does. */
type NamedMixes = { wishAt: number; otherAt: number }[][];

function namedMixes(sheet: ActSheet, index: SheetIndex): NamedMixes {
  const named: NamedMixes = sheet.mixes.map(() => []);
  sheet.wishes.forEach((wish, wishAt) => {
    if (wish.sameAsMixId === null) return;
    const mixAt = index.mixAt.get(wish.mixId);
    const otherAt = index.mixAt.get(wish.sameAsMixId);
    if (mixAt !== undefined && otherAt !== undefined) named[mixAt]?.push({ wishAt, otherAt });
  });
  return named;
}

/** Places of the wishes that are part of a circle of "same as", so that following them would never end. */
export function cyclicSameAs(sheet: ActSheet, index: SheetIndex): Set<number> {
  const circular = new Set<number>();
  if (!sheet.wishes.some((wish) => wish.sameAsMixId !== null)) return circular;
  const named = namedMixes(sheet, index);
  named.forEach((wishes, mixAt) => {
    if (wishes.length === 0) return;
    for (const { wishAt, otherAt } of wishes) if (reaches(named, otherAt, mixAt)) circular.add(wishAt);
  });
  return circular;
}

function reaches(named: NamedMixes, from: number, to: number): boolean {
  const seen = new Set<number>([from]);
  const pending = [from];
  for (let at = pending.pop(); at !== undefined; at = pending.pop()) {
    if (at === to) return true;
    for (const { otherAt } of named[at] ?? [])
      if (!seen.has(otherAt)) {
        seen.add(otherAt);
        pending.push(otherAt);
      }
  }
  return false;
}

/** Places of the mixes in an order in which every mix comes after those it names; circles are left out. */
export function orderOfMixes(sheet: ActSheet, index: SheetIndex, circular: ReadonlySet<number>): number[] {
  const named = namedMixes(sheet, index);
  const order: number[] = [];
  const state = new Uint8Array(sheet.mixes.length);
  for (let start = 0; start < sheet.mixes.length; start++) {
    // An explicit stack: a chain of thousands of mixes must not exhaust the call stack.
    const stack = [start];
    while (stack.length > 0) {
      const at = stack[stack.length - 1] ?? 0;
      const waiting =
        state[at] === 0
          ? (named[at] ?? []).filter((it) => !circular.has(it.wishAt) && state[it.otherAt] === 0)
          : [];
      if (waiting.length > 0) for (const { otherAt } of waiting) stack.push(otherAt);
      else {
        stack.pop();
        if (state[at] === 0) {
          state[at] = 1;
          order.push(at);
        }
      }
    }
  }
  return order;
}
