import { expect, test } from 'vitest';
import { cursorAt, isInRange, movedCursor, rangeOf } from '../../../renderer/parts/grid-cursor.ts';

const size = { rows: 10, columns: 4, page: 5 };
const press = (key: string, more = {}) => ({
  key,
  shiftKey: false,
  ctrlKey: false,
  metaKey: false,
  altKey: false,
  ...more,
});

test.each([
  ['ArrowDown', {}, 3, 1],
  ['ArrowUp', {}, 1, 1],
  ['ArrowRight', {}, 2, 2],
  ['PageDown', {}, 7, 1],
  ['PageUp', {}, 0, 1],
  ['Home', {}, 2, 0],
  ['End', {}, 2, 3],
  ['ArrowDown', { ctrlKey: true }, 9, 1],
  ['ArrowLeft', { metaKey: true }, 2, 0],
  ['Home', { ctrlKey: true }, 0, 0],
  ['End', { ctrlKey: true }, 9, 3],
])('%s with %o goes from the third row to row %d, column %d', (key, more, row, column) => {
  expect(movedCursor(cursorAt(2, 1), press(key, more), size)).toMatchObject({ row, column });
});

test('the cursor stays inside the table', () => {
  expect(movedCursor(cursorAt(9, 3), press('ArrowDown'), size)).toEqual(cursorAt(9, 3));
  expect(movedCursor(cursorAt(0, 0), press('ArrowDown'), { rows: 0, columns: 0, page: 1 })).toBeNull();
});

test('keys that do not move it are left to others', () => {
  expect(movedCursor(cursorAt(2, 1), press('Enter'), size)).toBeNull();
  expect(movedCursor(cursorAt(2, 1), press('ArrowDown', { altKey: true }), size)).toBeNull();
});

test('Shift spans a range from where it began, in any direction', () => {
  const up = movedCursor(cursorAt(2, 2), press('ArrowUp', { shiftKey: true }), size);
  const upLeft = up && movedCursor(up, press('ArrowLeft', { shiftKey: true }), size);
  const range = upLeft && rangeOf(upLeft);
  expect(range).toEqual({ top: 1, bottom: 2, left: 1, right: 2 });
  expect(range && isInRange(range, 1, 2)).toBe(true);
  expect(range && isInRange(range, 3, 2)).toBe(false);
});
