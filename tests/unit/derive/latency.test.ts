import { describe, expect, test } from 'vitest';
import { deriveAct } from '../../../core/derive/derive-act.ts';
import { ActDraft } from '../../helpers/clean-act.ts';
import { casesOfKind, num, word } from '../../helpers/reference.ts';
import { sheetOf } from '../../helpers/sheet-of.ts';

const latencies = (draft: ActDraft) => deriveAct(sheetOf(draft.rows)).ownLatencies;

describe('how late a performer hears their own source', () => {
  test('nobody knows without the latency of the desk', () => {
    expect(latencies(new ActDraft())).toEqual([]);
  });

  test('only one’s own sources count, in one’s own mixes', () => {
    const own = latencies(new ActDraft().rig({ deskLatencyMs: 1 }));
    expect(own.map((it) => [it.performerId, it.sourceId, it.mixId])).toEqual([
      ['Noor', 'vocal', 'Noor wedge'],
      ['Tam', 'keys left', 'Tam ears'],
      ['Tam', 'keys right', 'Tam ears'],
    ]);
  });

  test('every stage on the way adds: link, desk, copy, device, and the air from a wedge', () => {
    const draft = new ActDraft()
      .rig({ deskLatencyMs: 1.5 })
      .set('sources', 'vocal', { pickUpLatencyMs: 2.5 })
      .add('copies', { sourceId: 'vocal', purpose: 'monitors', latencyMs: 0.5 })
      .set('devices', 'wedge 1', { latencyMs: 1, listeningDistanceM: 3.432 });
    const [vocal] = latencies(draft);
    expect(vocal?.stages.map((stage) => stage.name)).toEqual(['pick-up', 'desk', 'copy', 'device', 'air']);
    // 3.432 m at 343.2 m/s (ISO 9613-1 at 20 C) are 10 ms.
    expect(vocal?.latencyMs).toBeCloseTo(2.5 + 1.5 + 0.5 + 1 + 10, 6);
  });

  test('of two rows about one copy the later one counts, as it does for its channel', () => {
    const draft = new ActDraft()
      .rig({ deskLatencyMs: 1 })
      .add('copies', { id: 'first', sourceId: 'vocal', purpose: 'monitors', latencyMs: 4 })
      .add('copies', { id: 'later', sourceId: 'vocal', purpose: 'monitors', latencyMs: 0.5 });
    const [vocal] = latencies(draft);
    expect(vocal?.stages.find((stage) => stage.name === 'copy')?.latencyMs).toBe(0.5);
  });

  const kindOf: Record<string, string> = {
    vocals: 'lead vocal',
    guitar: 'electric guitar',
    drums: 'snare',
    bass: 'bass',
    keyboard: 'keys',
    saxophone: 'saxophone',
  };

  test.each(
    casesOfKind('latency', 'latency-by-instrument').flatMap((row) =>
      (['fair', 'longer than rated fair'] as const).map((rated) => ({
        instrument: word(row.in, 'instrument'),
        rated,
        latencyMs: num(row.out, 'in_ear_fair_ms') + (rated === 'fair' ? -0.1 : 0.1),
        from: row.from,
      })),
    ),
  )('$instrument in-ear at $latencyMs ms is $rated ($from)', ({ instrument, latencyMs, rated }) => {
    const draft = new ActDraft()
      .rig({ deskLatencyMs: latencyMs })
      .set('sources', 'keys left', { kind: kindOf[instrument] });
    const own = latencies(draft).find((it) => it.sourceId === 'keys left');
    expect(own?.rated).toBe(rated);
    expect(own?.sentences.at(-1)).toContain('not a limit');
  });
});
