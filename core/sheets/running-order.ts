import type { ActView } from './act-view.ts';
import { clockText } from './cell-text.ts';
import { sheetOfDay } from './day-heading.ts';
import type { DayView } from './day-view.ts';
import type { Sheet } from './sheet.ts';
import { type Field, tableOf } from './table.ts';

const fields: Field<ActView>[] = [
  { title: 'Sound check', of: ({ sheet }) => clockText(sheet.act.soundCheckStartMinute) },
  { title: 'Set from', of: ({ sheet }) => clockText(sheet.act.startMinute) },
  { title: 'to', of: ({ sheet }) => clockText(sheet.act.endMinute) },
  { title: 'Act', grow: 2, of: ({ sheet }) => sheet.act.name },
  { title: 'Lines', kind: 'number', of: ({ lines }) => lines.length },
  { title: 'Mixes', kind: 'number', of: ({ mixes }) => mixes.length },
  { title: 'Pre-patched', of: ({ sheet }) => (sheet.act.prePatch ? 'yes' : '') },
  { title: 'Must fix', kind: 'number', of: ({ derived }) => countOf(derived.findings, 'must fix') },
  { title: 'Look again', kind: 'number', of: ({ derived }) => countOf(derived.findings, 'look again') },
  { title: 'State', of: ({ sheet }) => sheet.act.state },
];

function countOf(findings: readonly { severity: string }[], severity: string): number | null {
  return findings.filter((it) => it.severity === severity).length || null;
}

/** The acts of the day in their order, with how much each of them is. */
export function runningOrder(day: DayView): Sheet {
  return sheetOfDay('running order', 'Running order', day, {
    parts: [
      tableOf(fields, day.acts, { key: ({ sheet }) => sheet.act.id, empty: 'This day has no act yet.' }),
    ],
  });
}
