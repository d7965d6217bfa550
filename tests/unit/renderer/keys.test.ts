import { expect, test } from 'vitest';
import { bindings } from '../../../renderer/keys/bindings.ts';
import { isKey } from '../../../renderer/keys/use-keys.ts';

const press = (key: string, code = '', more = {}) => ({
  key,
  code,
  ctrlKey: false,
  metaKey: false,
  altKey: false,
  shiftKey: false,
  ...more,
});

test.each([
  ['Ctrl+K', press('k', 'KeyK', { ctrlKey: true }), true],
  ['Ctrl+K', press('k', 'KeyK', { metaKey: true }), true],
  ['Ctrl+K', press('k', 'KeyK'), false],
  ['Ctrl+Z', press('Z', 'KeyZ', { ctrlKey: true, shiftKey: true }), false],
  ['Ctrl+Shift+Z', press('Z', 'KeyZ', { ctrlKey: true, shiftKey: true }), true],
  ['?', press('?', 'Slash', { shiftKey: true }), true],
  ['F8', press('F8'), true],
  ['Shift+F6', press('F6', 'F6', { shiftKey: true }), true],
  ['F6', press('F6', 'F6', { shiftKey: true }), false],
  // On some keyboards Alt and a digit type another sign.
  ['Alt+2', press('€', 'Digit2', { altKey: true }), true],
])('%s is recognised', (written, event, is) => {
  expect(isKey(event, written)).toBe(is);
});

test('no key means two things in one place', () => {
  const places = new Set(bindings.map((binding) => binding.where));
  for (const where of places) {
    const keys = bindings
      .filter((binding) => binding.where === where || binding.where === 'everywhere')
      .flatMap((binding) => binding.keys);
    expect(keys).toEqual([...new Set(keys)]);
  }
});
