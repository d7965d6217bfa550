import type { ActSheet } from '../show/act-sheet.ts';
import { remembered } from '../show/remember.ts';
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

const namesAnotherMix = remembered((sheet: ActSheet) =>
  sheet.wishes.some((wish) => wish.sameAsMixId !== null),
);

/** Places of the wishes that are part of a circle of "same as", so that following them would never end. */
export function cyclicSameAs(sheet: ActSheet, index: SheetIndex): Set<number> {
  const circular = new Set<number>();
  if (!namesAnotherMix(sheet)) return circular;
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
  if (!namesAnotherMix(sheet)) return sheet.mixes.map((_, at) => at);
  const named = namedMixes(sheet, index);
  const order = new Set<number>();
  const waitsFor = (at: number) =>
    (named[at] ?? [])
      .filter((it) => !circular.has(it.wishAt) && !order.has(it.otherAt))
      .map((it) => it.otherAt);
  for (let start = 0; start < sheet.mixes.length; start++) {
    // An explicit stack: a chain of thousands of mixes must not exhaust the call stack.
    const stack = [start];
    for (let at = stack.at(-1); at !== undefined; at = stack.at(-1)) {
      const waiting = order.has(at) ? [] : waitsFor(at);
      if (waiting.length > 0) stack.push(...waiting);
      else {
        order.add(at);
        stack.pop();
      }
    }
  }
  return [...order];
}
