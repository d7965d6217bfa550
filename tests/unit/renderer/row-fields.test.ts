import { expect, test } from 'vitest';
import { parseNumber, parseTime, timeText } from '../../../renderer/parts/format.ts';
import { withField } from '../../../renderer/parts/row-fields.ts';
import { smallFestival } from '../../fixtures/small-festival.ts';

const rig = [...smallFestival().rigs.values()][0];
const box = smallFestival().boxes.get('box-a');

test.each([
  ['channelCount', '96', 96],
  ['headroomDb', '6,5', 6.5],
  ['targetLevelDbfs', '−20', -20],
] as const)('a good number in %s is taken', (field, text, value) => {
  if (!rig) throw new Error('the rig is in the fixture');
  expect(withField('rigs', rig, field, 'number', text)).toEqual({ row: { ...rig, [field]: value } });
});

test.each([
  ['channelCount', 'many', /no number/],
  ['channelCount', '', /no number/],
  ['channelCount', '12.5', /not a whole number/],
  ['channelCount', '9000', /most is 1024/],
  ['channelCount', '-3', /least is 0/],
  ['stageWidthM', '0', /above 0/],
] as const)('a bad number in %s ("%s") gets a sentence', (field, text, why) => {
  if (!rig) throw new Error('the rig is in the fixture');
  expect(withField('rigs', rig, field, 'number', text)).toEqual({ why: expect.stringMatching(why) });
});

test('an optional number may be empty, a name may not', () => {
  if (!box) throw new Error('the box is in the fixture');
  expect(withField('boxes', box, 'reachM', 'optional number', '')).toEqual({ row: { ...box, reachM: null } });
  expect(withField('boxes', box, 'name', 'text', '  ')).toEqual({ why: expect.stringMatching(/empty/) });
  expect(withField('boxes', box, 'name', 'text', 'x'.repeat(201))).toEqual({
    why: expect.stringMatching(/too long/),
  });
});

test.each([
  ['-6', -6],
  [' −6,5 ', -6.5],
  ['+1.25', 1.25],
  ['1,2,3', null],
  ['6 dB', null],
  ['.5', null],
  ['', null],
])('the number "%s" is read', (text, number) => {
  expect(parseNumber(text)).toBe(number);
});

test.each([
  ['14:05', 845],
  ['9.30', 570],
  ['0000', 0],
  ['25:10', 1510],
  ['14:75', null],
  ['noon', null],
])('the time "%s" is read', (text, minute) => {
  expect(parseTime(text)).toBe(minute);
});

test('a set past midnight is shown as the clock shows it', () => {
  expect(timeText(1510)).toBe('01:10');
});
