import { expect, test } from 'vitest';
import { findablePast, findables, findByText } from '../../../renderer/frame/find-index.ts';
import { smallFestival } from '../../fixtures/small-festival.ts';

const all = findables(smallFestival(), ['tarn', 'pale', 'glass']);
const found = (text: string) => findByText(all, text, 10);

test.each([
  ['tarn', 'act', 'Tarn & the Ferrymen'],
  ['glass', 'act', 'Glass Antlers'],
  ['elin', 'performer', 'Elin'],
  ['kick out', 'source', 'Kick out'],
  ['A7', 'socket', 'A7 Floor tom'],
  ['mix 4', 'mix', 'mix 4 Mara'],
  ['undo', 'action', 'Undo'],
])('"%s" finds a thing of kind %s first or soon', (text, kind, name) => {
  expect(found(text)).toContainEqual(expect.objectContaining({ kind, name }));
});

test('what begins with the letters comes before what holds them somewhere', () => {
  const names = found('vocal').map((it) => it.name);
  expect(names.indexOf('Vocal Elin')).toBeLessThan(names.indexOf('Lead vocal'));
});

test('two words narrow it down, in any order and without accents', () => {
  expect(found('ruth vócal').map((it) => it.name)).toContain('Vocal Ruth');
  expect(found('no such thing')).toEqual([]);
});

test('a name of the archive says in which act and on which day, and leads to that act on Recall', () => {
  const act = {
    actId: 'old',
    actName: 'Paper Herons',
    dayName: 'Friday',
    date: '2029-07-01',
    rigName: 'House',
    device: 'desk one',
    plannedAt: '',
    ranAt: '',
  };
  const leads = { look: { moment: 'recall', pastActId: 'old' } };
  expect(findablePast({ kind: 'source', name: 'Kick in', act })).toMatchObject({
    kind: 'past',
    name: 'Kick in',
    place: 'Paper Herons, Friday 2029-07-01',
    leads,
  });
  const own = { kind: 'act', name: 'Paper Herons', act: { ...act, date: '' } } as const;
  expect(findablePast(own)).toMatchObject({ place: 'Friday', leads });
});
