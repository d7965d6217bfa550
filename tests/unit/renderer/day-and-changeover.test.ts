import { describe, expect, test } from 'vitest';
import { actsOfDay } from '../../../core/show/act-sheet.ts';
import { changeoverByBox } from '../../../renderer/changeover/changeover-table.ts';
import { dayTable } from '../../../renderer/day/day-table.ts';
import { actOnScreen } from '../../../renderer/state/derive-cache.ts';
import { smallFestival } from '../../fixtures/small-festival.ts';

const show = smallFestival();

describe('the patch of the day', () => {
  const table = dayTable(show, actsOfDay(show, 'day'));

  test('has a row for every socket of the rig and a cell for every act', () => {
    expect(table?.rows).toHaveLength(40);
    expect(table?.rows.every((row) => row.cells.length === 3)).toBe(true);
  });

  test('counts every line of the first act as plugged, and none twice', () => {
    expect(table?.totals[0]).toEqual({ plugged: 16, lines: 16, withoutSocket: 0 });
  });

  test('a day without an act has no table', () => {
    expect(dayTable(show, [])).toBeNull();
  });
});

describe('a changeover', () => {
  const act = (id: string) => {
    const open = actOnScreen(show, id);
    if (!open) throw new Error('the act is in the fixture');
    return open;
  };

  test('says at each socket what is pulled and what is plugged', () => {
    const [boxA] = changeoverByBox(act('tarn'), act('pale'));
    expect(boxA?.tasks.find((task) => task.socket === 'A1')).toMatchObject({
      pull: 'Kick in',
      plug: 'Choir left',
    });
    expect(boxA?.tasks.find((task) => task.socket === 'A16')).toMatchObject({
      pull: 'Vocal Noor',
      plug: null,
    });
  });

  test('has 48 V go off before a condenser is pulled and come on after one is plugged', () => {
    const [boxA] = changeoverByBox(act('tarn'), act('pale'));
    expect(boxA?.tasks.find((task) => task.socket === 'A8')?.phantom).toBe('goes off');
    expect(boxA?.tasks.find((task) => task.socket === 'A1')?.phantom).toBe('comes on');
  });

  test('between an act and itself there is nothing to do', () => {
    const boxes = changeoverByBox(act('glass'), act('glass'));
    expect(boxes.flatMap((box) => box.tasks)).toEqual([]);
    expect(boxes.reduce((sum, box) => sum + box.stays, 0)).toBe(13);
  });
});
