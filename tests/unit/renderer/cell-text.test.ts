import { expect, test } from 'vitest';
import { fromTabbedText, readTypedCell, toTabbedText } from '../../../renderer/mixes/cell-text.ts';

test.each([
  ['lots', { of: 'amount', amount: 'lots' }],
  ['lo', { of: 'amount', amount: 'lots' }],
  ['LI', { of: 'amount', amount: 'little' }],
  ['s', { of: 'amount', amount: 'some' }],
  ['off', { of: 'amount', amount: 'none' }],
  ['-6', { of: 'level', levelDb: -6 }],
  ['−6', { of: 'level', levelDb: -6 }],
  ['-6,5 dB', { of: 'level', levelDb: -6.5 }],
  ['0', { of: 'level', levelDb: 0 }],
  ['  ', { of: 'nothing' }],
])('typing "%s" into a cell is understood', (typed, meaning) => {
  expect(readTypedCell(typed)).toEqual(meaning);
});

test.each([
  ['3', /above unity/],
  ['-200', /below -120/],
  ['l', /little or lots/],
  ['loud', /no level/],
  ['-6-6', /no level/],
])('typing "%s" is refused with a sentence that says why', (typed, why) => {
  expect(readTypedCell(typed)).toEqual({ of: 'refused', why: expect.stringMatching(why) });
});

test('cells copied to a spreadsheet come back as they were, whatever ends its lines', () => {
  const cells = [
    ['lots', '-6'],
    ['', 'none'],
  ];
  expect(fromTabbedText(toTabbedText(cells))).toEqual(cells);
  expect(fromTabbedText('lots\t-6\r\n\tnone\r\n')).toEqual(cells);
});
