import { describe, expect, test } from 'vitest';
import {
  actOfArchive,
  documentOfArchive,
  namesOfArchive,
  withoutRun,
} from '../../../core/archive/archived-act.ts';
import { bringIntoDay } from '../../../core/archive/bring-into-day.ts';
import { sideBySide } from '../../../core/archive/side-by-side.ts';
import { Day } from '../../../core/show/act.ts';
import { applyChange, findBrokenReferences } from '../../../core/show/apply-change.ts';
import { type Put, put } from '../../../core/show/change.ts';
import { Box, Rig, Socket } from '../../../core/show/rig.ts';
import {
  documentFromShow,
  type Show,
  ShowDocument,
  showFromRows,
  tableNames,
} from '../../../core/show/show.ts';
import { smallFestival } from '../../fixtures/small-festival.ts';
import { derivedAct } from '../../helpers/derived-act.ts';

const at = '2031-06-14T15:00:00.000Z';

const withRows = (show: Show, ...rows: Put[]): Show =>
  applyChange(show, { label: 'Keep', put: rows, remove: [] });

const level = (id: string, mixId: string, sourceId: string, levelDb: number | null) =>
  put('ranLevels', { id, actId: 'tarn', mixId, sourceId, fromDb: null, levelDb, changedAt: at });

function archived(show: Show, actId = 'tarn'): ShowDocument {
  const document = documentOfArchive(show, actId);
  if (!document) throw new Error('the act is there');
  return ShowDocument.parse(JSON.parse(JSON.stringify(document)));
}

const stateOf = (document: ShowDocument) => {
  const act = actOfArchive(document);
  if (!act) throw new Error('one act');
  return derivedAct(act.show, act.actId);
};

function newIds() {
  let count = 0;
  return () => `new-${count++}`;
}

test('an archived act stands alone: everything derived of it is what it was in its show', () => {
  const show = smallFestival();
  const document = archived(show);
  expect(document.acts.map((act) => act.id)).toEqual(['tarn']);
  expect(findBrokenReferences(showFromRows(document))).toEqual([]);
  expect(stateOf(document).derived).toEqual(derivedAct(show, 'tarn').derived);
  expect(documentOfArchive(show, 'nowhere')).toBeNull();
});

test('its plan is without what happened on the day', () => {
  const show = withRows(
    smallFestival(),
    level('a', 'tarn-m1', 'tarn-s10', -3),
    put('actRuns', { id: 'run', actId: 'tarn', beganAt: at, endedAt: at }),
    put('ticks', { id: 't', actId: 'tarn', taskKey: 'some task', doneAt: at }),
  );
  expect(withoutRun(archived(show))).toEqual(archived(smallFestival()));
});

test('act, performers and sources are found by their names, each once', () => {
  const names = namesOfArchive(archived(smallFestival()));
  expect(names).toContainEqual({ kind: 'act', name: 'Tarn & the Ferrymen' });
  expect(names).toContainEqual({ kind: 'performer', name: 'Mara' });
  expect(names).toContainEqual({ kind: 'source', name: 'Kick in' });
  expect(new Set(names.map((it) => `${it.kind} ${it.name}`)).size).toBe(names.length);
});

describe('as planned beside as it ran', () => {
  const beside = (show: Show) =>
    sideBySide(stateOf(withoutRun(archived(smallFestival()))), stateOf(archived(show)));

  test('an act that ran as planned has no difference', () => {
    const { lines, mixes } = beside(smallFestival());
    expect(lines).toHaveLength(16);
    expect(mixes).toHaveLength(5);
    expect([...lines, ...mixes].filter((it) => it.differs)).toEqual([]);
  });

  test('a level, a socket, a microphone, a line that came and one that went are marked, and nothing else', () => {
    const base = smallFestival();
    const vocal = base.sources.get('tarn-s13');
    if (!vocal) throw new Error('the lead vocal');
    const changed = withRows(
      applyChange(base, { label: 'x', put: [], remove: [{ table: 'sources', id: 'tarn-s8' }] }),
      level('a', 'tarn-m1', 'tarn-s10', -3),
      put('sources', { ...vocal, pickUpModel: 'spare vocal mic' }),
      put('lineResults', {
        id: 'r',
        actId: 'tarn',
        sourceId: 'tarn-s0',
        found: 'noisy',
        cameSourceId: null,
        foundAt: at,
      }),
      put('sources', { ...vocal, id: 'extra', name: 'Guest vocal', order: 40 }),
    );
    const { lines, mixes } = beside(changed);
    const differing = lines.filter((it) => it.differs).map((it) => it.source.name);
    expect(differing).toContain('Lead vocal');
    expect(differing).toContain('Guest vocal');
    expect(differing).toContain('Overhead right');
    expect(differing).not.toContain('Kick in');
    expect(lines.find((it) => it.source.id === 'tarn-s0')?.result?.found).toBe('noisy');
    expect(lines.find((it) => it.source.id === 'tarn-s8')).toMatchObject({ ran: null });
    expect(lines.find((it) => it.source.id === 'extra')).toMatchObject({ planned: null });
    const elin = mixes.find((it) => it.mix.id === 'tarn-m1');
    expect(elin?.levels.filter((it) => it.differs).map((it) => [it.source.name, it.planned, it.ran])).toEqual(
      [['Guitar', { levelDb: expect.any(Number) }, { levelDb: -3 }]],
    );
  });
});

describe('brought into a day', () => {
  const barn = (show: Show): Show =>
    withRows(
      show,
      put('rigs', Rig.parse({ id: 'barn', name: 'Barn rig', channelCount: 8 })),
      put('boxes', Box.parse({ id: 'box-barn', rigId: 'barn', name: 'K' })),
      ...Array.from({ length: 24 }, (_, n) =>
        put('sockets', Socket.parse({ id: `k${n + 1}`, boxId: 'box-barn', number: n + 1 })),
      ),
      put('days', Day.parse({ id: 'sunday', rigId: 'barn', order: 1, name: 'Sunday' })),
    );
  const brought = (show: Show, document: ShowDocument, dayId: string) => {
    const it = bringIntoDay(show, document, dayId, newIds());
    if (!it) throw new Error('the day is there');
    const after = applyChange(show, it.change);
    const act = [...after.acts.values()].find((row) => !show.acts.has(row.id));
    if (!act) throw new Error('a new act');
    return { ...it, after, act };
  };

  test('it is a new act after the others, without times, and no row that was there is touched', () => {
    const show = smallFestival();
    const document = archived(show);
    const { change, after, act, losses, leftOut } = brought(show, document, 'day');
    expect(act).toMatchObject({ dayId: 'day', state: 'advancing', startMinute: null, endMinute: null });
    expect(act.order).toBeGreaterThan(Math.max(...[...show.acts.values()].map((it) => it.order)));
    expect({ losses, leftOut, remove: change.remove }).toEqual({ losses: [], leftOut: 0, remove: [] });
    for (const table of tableNames)
      for (const [id, row] of show[table]) expect(after[table].get(id)).toBe(row);
    expect(
      derivedAct(after, act.id)
        .derived.feeds.flat()
        .map((it) => it.levelDb),
    ).toEqual(
      derivedAct(show, 'tarn')
        .derived.feeds.flat()
        .map((it) => it.levelDb),
    );
    expect(findBrokenReferences(after)).toEqual([]);
  });

  test('what happened on the old day stays there; the levels it ended with come along as confirmed wishes', () => {
    const show = smallFestival();
    const ran = withRows(
      show,
      level('a', 'tarn-m1', 'tarn-s10', -3),
      level('b', 'tarn-m1', 'tarn-s0', -12),
      level('c', 'tarn-m1', 'tarn-s13', null),
      level('d', 'tarn-m1', 'tarn-s14', 6),
      put('actRuns', { id: 'run', actId: 'tarn', beganAt: at, endedAt: at }),
      put('runNotes', { id: 'n', actId: 'tarn', mixId: null, sourceId: null, text: 'x', notedAt: at }),
    );
    const { after, act } = brought(show, archived(ran), 'day');
    expect([after.actRuns.size, after.runNotes.size, after.ranLevels.size]).toEqual([0, 0, 0]);
    const { sheet, derived } = derivedAct(after, act.id);
    const elin = sheet.mixes[1]?.id;
    const levelOf = (name: string) => {
      const place = sheet.sources.findIndex((it) => it.name === name);
      const feed = derived.feeds[place]?.find((it) => it.mixId === elin);
      return feed?.purpose === null ? 'not in it' : feed?.levelDb;
    };
    expect(levelOf('Guitar')).toBe(-3);
    expect(levelOf('Kick in')).toBe(-12);
    expect(levelOf('Lead vocal')).toBe('not in it');
    // Nothing starts above unity (product.md, safe start levels).
    expect(levelOf('Vocal Elin')).toBeLessThanOrEqual(0);
  });

  test('what the other rig has not is named with what it was for, and the act is planned anew there', () => {
    const show = barn(smallFestival());
    const decided = withRows(
      show,
      put('decisions', {
        id: 'd1',
        actId: 'tarn',
        locked: true,
        about: 'socket',
        sourceId: 'tarn-s0',
        socketId: 'a7',
      }),
      put('decisions', {
        id: 'd2',
        actId: 'tarn',
        locked: true,
        about: 'bus',
        mixId: 'tarn-m1',
        busId: 'bus4',
      }),
      put('decisions', {
        id: 'd3',
        actId: 'tarn',
        locked: true,
        about: 'output',
        mixId: 'tarn-m1',
        outputId: 'out5',
      }),
      put('decisions', {
        id: 'd4',
        actId: 'tarn',
        locked: true,
        about: 'device',
        mixId: 'tarn-m1',
        deviceId: 'wedge2',
      }),
      put('decisions', {
        id: 'd5',
        actId: 'tarn',
        locked: true,
        about: 'cue',
        mixId: 'tarn-m1',
        cueOutputId: 'cue-w',
      }),
      put('copies', {
        id: 'c1',
        sourceId: 'tarn-s1',
        purpose: 'foh',
        wanted: true,
        locked: true,
        channel: 33,
        trimDb: 0,
        polarityInverted: false,
        latencyMs: 0,
        inMainMix: null,
      }),
    );
    const { losses, after, act } = brought(decided, archived(decided), 'sunday');
    expect(losses).toEqual([
      { what: 'socket', name: 'A7', of: 'Kick in' },
      { what: 'bus', name: '4', of: 'Mix 2' },
      { what: 'output', name: 'Out 5', of: 'Mix 2' },
      { what: 'device', name: 'Wedge 2', of: 'Mix 2' },
      { what: 'cue output', name: 'cue wedge', of: 'Mix 2' },
      { what: 'channel', name: '33', of: 'Kick out' },
    ]);
    expect([...after.decisions.values()].filter((it) => it.actId === act.id)).toEqual([]);
    const { derived, sheet } = derivedAct(after, act.id);
    expect(sheet.rig.id).toBe('barn');
    expect(derived.plan.patches.every((it) => it.socketId === null || it.socketId.startsWith('k'))).toBe(
      true,
    );
  });

  test('an act can come in twice, and a day that is not there takes none', () => {
    const show = smallFestival();
    const document = archived(show);
    const once = brought(show, document, 'day').after;
    const ids = { count: 0 };
    const twice = bringIntoDay(once, document, 'day', () => `again-${ids.count++}`);
    expect(applyChange(once, twice?.change ?? { label: '', put: [], remove: [] }).acts.size).toBe(5);
    expect(bringIntoDay(show, document, 'nowhere', newIds())).toBeNull();
    expect(bringIntoDay(show, documentFromShow(show), 'day', newIds())).toBeNull();
  });
});
