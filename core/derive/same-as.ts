import type { ActSheet } from '../show/act-sheet.ts';
import type { SheetIndex } from '../show/sheet-index.ts';

/** For each mix, the mixes it names with "same as", with the place of the wish that does. */
export type NamedMixes = readonly (readonly { wishAt: number; otherAt: number }[])[];

/** `naming` are the places of the wishes that name another mix. Those whose mixes are not there name nothing. */
export function namedMixes(sheet: ActSheet, index: SheetIndex, naming: readonly number[]): NamedMixes {
  const named: { wishAt: number; otherAt: number }[][] = sheet.mixes.map(() => []);
  for (const wishAt of naming) {
    const wish = sheet.wishes[wishAt];
    const mixAt = wish && index.mixAt.get(wish.mixId);
    const otherAt = wish && index.mixAt.get(wish.sameAsMixId ?? '');
    if (mixAt !== undefined && otherAt !== undefined) named[mixAt]?.push({ wishAt, otherAt });
  }
  return named;
}

/** Places of the wishes that are part of a circle of "same as", so that following them would never end. */
export function cyclicSameAs(named: NamedMixes): Set<number> {
  const circular = new Set<number>();
  named.forEach((wishes, mixAt) => {
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
export function orderOfMixes(named: NamedMixes, circular: ReadonlySet<number>): number[] {
  const order = new Set<number>();
  const waitsFor = (at: number) =>
    (named[at] ?? [])
      .filter((it) => !circular.has(it.wishAt) && !order.has(it.otherAt))
      .map((it) => it.otherAt);
  for (let start = 0; start < named.length; start++) {
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
