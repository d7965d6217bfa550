import type { Plan } from '../plan/plan.ts';
import type { Alternate } from '../show/act.ts';
import type { ActSheet } from '../show/act-sheet.ts';
import type { Id } from '../show/rig.ts';
import type { SourceInput } from './derived.ts';

/** What every source is fed from at this moment: its own line, or the alternate that is switched on. */
export function deriveInputs(sheet: ActSheet, plan: Plan): SourceInput[] {
  const inUse = alternatesInUse(sheet);
  return sheet.sources.map((source, at): SourceInput => {
    const alternate = inUse.get(source.id);
    if (!alternate)
      return {
        sourceId: source.id,
        from: 'own line',
        alternateId: null,
        socketId: plan.patches[at]?.socketId ?? null,
        why: 'It comes from its own line.',
      };
    return {
      sourceId: source.id,
      from: alternate.kind,
      alternateId: alternate.id,
      socketId: alternate.socketId,
      why: `It comes from ${alternate.name === '' ? `its ${alternate.kind}` : `"${alternate.name}"`}; all its copies and mixes hear that.`,
    };
  });
}

/** The alternate each source is on; of two that are switched on the first in order is heard. */
export function alternatesInUse(sheet: ActSheet): Map<Id, Alternate> {
  const inUse = new Map<Id, Alternate>();
  for (const alternate of sheet.alternates)
    if (alternate.inUse && !inUse.has(alternate.sourceId)) inUse.set(alternate.sourceId, alternate);
  return inUse;
}
