import { describe, expect, test } from 'vitest';
import { planAct } from '../../../core/plan/plan-act.ts';
import { type PlanSection, planSections, restoreProposal } from '../../../core/plan/restore.ts';
import { actSheet } from '../../../core/show/act-sheet.ts';
import { applyChange } from '../../../core/show/apply-change.ts';
import { ActDraft } from '../../helpers/clean-act.ts';
import { sheetOf, showOf } from '../../helpers/sheet-of.ts';

/** The clean act with one decision of every kind. */
const decided = () =>
  new ActDraft()
    .add('copies', { id: 'copy', sourceId: 'vocal', purpose: 'foh', channel: 20, trimDb: 3 })
    .add(
      'decisions',
      { about: 'socket', sourceId: 'vocal', socketId: 'socket 9' },
      { about: 'phantom', sourceId: 'vocal', on: true },
      { about: 'bus', mixId: 'Noor wedge', busId: 'bus 8' },
      { about: 'output', mixId: 'Noor wedge', outputId: 'output 9' },
      { about: 'device', mixId: 'Noor wedge', deviceId: 'wedge 2' },
      { about: 'cue', mixId: 'Noor wedge', cueOutputId: 'cue pack' },
      { about: 'feed', mixId: 'Noor wedge', sourceId: 'vocal', purpose: 'foh' },
      { about: 'second feed', mixId: 'Noor wedge', sourceId: 'vocal', purpose: 'monitors' },
      { about: 'tap', mixId: 'Noor wedge', sourceId: 'vocal', tap: 'post-fader' },
      { about: 'level', mixId: 'Noor wedge', sourceId: 'vocal', levelDb: -20, locked: false },
    );

function restored(section: PlanSection | 'whole act') {
  const show = showOf(decided().rows);
  const before = actSheet(show, 'act');
  if (!before) throw new Error('The act is gone.');
  const { change, decisions } = restoreProposal(before, section);
  const sheet = actSheet(applyChange(show, change), 'act');
  if (!sheet) throw new Error('The act is gone.');
  return { sheet, decisions, left: sheet.decisions.map((decision) => decision.about) };
}

describe('back to what the program proposes', () => {
  test.each<[PlanSection, number, string[]]>([
    ['copies', 3, ['feed', 'second feed']],
    ['channels', 1, []],
    ['sockets', 2, ['socket', 'phantom']],
    ['buses', 1, ['bus']],
    ['outputs', 2, ['output', 'device']],
    ['cue', 1, ['cue']],
    // The level was proposed and taken, so only the tap is the engineer's.
    ['levels', 1, ['tap', 'level']],
  ])('%s: %i decisions of the engineer would go', (section, count, gone) => {
    const { decisions, left } = restored(section);
    const all = decided().rows.decisions?.map((row) => row.about) ?? [];
    expect(decisions).toBe(count);
    expect(left).toEqual(all.filter((about) => !gone.includes(String(about))));
  });

  test('channels give back the channel and keep the trim', () => {
    expect(restored('channels').sheet.copies).toMatchObject([{ id: 'copy', channel: null, trimDb: 3 }]);
  });

  test('the whole act is planned as if nobody had decided anything', () => {
    const { sheet, decisions } = restored('whole act');
    expect(decisions).toBe(10);
    expect(planAct(sheet)).toEqual(planAct(sheetOf(new ActDraft().rows)));
  });

  test('all sections one after another leave as much as the whole act at once', () => {
    let show = showOf(decided().rows);
    for (const section of planSections) {
      const sheet = actSheet(show, 'act');
      if (sheet) show = applyChange(show, restoreProposal(sheet, section).change);
    }
    expect([show.decisions.size, show.copies.size]).toEqual([0, 0]);
  });

  test('where nothing was decided there is nothing to put back', () => {
    expect(restoreProposal(sheetOf(new ActDraft().rows), 'whole act')).toMatchObject({
      decisions: 0,
      change: { put: [], remove: [] },
    });
  });
});
