import { z } from 'zod';
import type { ActView } from './act-view.ts';
import { advanceReply } from './advance-reply.ts';
import { type ChangeoverView, changeoverByPerson, changeoverByPlace } from './changeover-sheets.ts';
import { copiesAndGains } from './copies-and-gains.ts';
import { cueTable } from './cue-table.ts';
import { dayPatch } from './day-patch.ts';
import type { DayView } from './day-view.ts';
import { findingsOfAct, findingsOfDay } from './findings.ts';
import { inputListForBand, inputListForFoh, inputListForStage } from './input-lists.ts';
import { kit } from './kit.ts';
import { LabelForm } from './label-form.ts';
import { channelLabels, lineLabels } from './labels.ts';
import { lineCheck } from './line-check.ts';
import { mixes } from './mixes.ts';
import { outputsAndDevices } from './outputs-and-devices.ts';
import { patchByAct, patchByBox } from './patch-sheets.ts';
import { runningOrder } from './running-order.ts';
import type { Sheet } from './sheet.ts';
import { stagePlot } from './stage-plot.ts';

/** What somebody wants of the sheets beside their content. */
export const SheetOptions = z.strictObject({
  channelLabels: LabelForm.default(LabelForm.parse({ is: 'strip' })),
  lineLabels: LabelForm.default(LabelForm.parse({ is: 'sheet' })),
  /** Line numbers as colours of IEC 60062 beside the figures. */
  lineColours: z.boolean().default(true),
});
export type SheetOptions = z.infer<typeof SheetOptions>;

export const fileForms = ['pdf', 'xlsx', 'csv'] as const;
export type FileForm = (typeof fileForms)[number];

const asTable: readonly FileForm[] = fileForms;
const onPaper: readonly FileForm[] = ['pdf'];

type OfAct = {
  /** Tells of what the rider leaves open, so the rider has to be read for it. */
  readsRider?: true;
  of: 'act';
  title: string;
  files: readonly FileForm[];
  make(view: ActView, options: SheetOptions): Sheet;
};
type OfDay = {
  of: 'day';
  title: string;
  files: readonly FileForm[];
  make(day: DayView, options: SheetOptions): Sheet;
};
type OfChangeover = {
  of: 'changeover';
  title: string;
  files: readonly FileForm[];
  make(view: ActView, before: ChangeoverView | null): Sheet;
};
/** A sheet of a changeover is named by the act that comes on. */
export type SheetMaker = OfAct | OfDay | OfChangeover;

/**
 * Every sheet there is, in the order in which a set of them is printed. Whoever adds one adds its file and its line
 * here; screens, the command line and the tests follow this table.
 */
export const sheets = {
  'running order': { of: 'day', title: 'Running order', files: asTable, make: runningOrder },
  'day patch': { of: 'day', title: 'Patch of the whole day', files: asTable, make: dayPatch },
  kit: { of: 'day', title: 'Kit needed', files: asTable, make: kit },
  'day findings': { of: 'day', title: 'Findings of the day', files: asTable, make: findingsOfDay },
  'changeover by person': {
    of: 'changeover',
    title: 'Changeover, by person',
    files: asTable,
    make: changeoverByPerson,
  },
  'changeover by place': {
    of: 'changeover',
    title: 'Changeover, by place',
    files: asTable,
    make: changeoverByPlace,
  },
  'input list foh': {
    of: 'act',
    title: 'Input list for front of house',
    files: asTable,
    make: inputListForFoh,
  },
  'input list stage': {
    of: 'act',
    title: 'Input list for the stage',
    files: asTable,
    make: inputListForStage,
  },
  'input list band': { of: 'act', title: 'Input list for the band', files: asTable, make: inputListForBand },
  'patch by box': { of: 'act', title: 'Patch by stage box', files: asTable, make: patchByBox },
  'patch by act': { of: 'act', title: 'Patch by act', files: asTable, make: patchByAct },
  'copies and gains': { of: 'act', title: 'Copies and gains', files: asTable, make: copiesAndGains },
  mixes: { of: 'act', title: 'Mixes: wishes and start levels', files: asTable, make: mixes },
  'outputs and devices': { of: 'act', title: 'Outputs and devices', files: asTable, make: outputsAndDevices },
  'cue table': { of: 'act', title: 'Cue table', files: asTable, make: cueTable },
  'line check': { of: 'act', title: 'Line check', files: asTable, make: lineCheck },
  'stage plot': { of: 'act', title: 'Stage plot', files: onPaper, make: stagePlot },
  findings: { of: 'act', title: 'Findings still open', files: asTable, make: findingsOfAct },
  'advance reply': {
    of: 'act',
    title: 'Reply to the band',
    files: onPaper,
    readsRider: true,
    make: advanceReply,
  },
  'channel labels': {
    of: 'act',
    title: 'Labels for channels',
    files: onPaper,
    make: (view, options) => channelLabels(view, { form: options.channelLabels, lineColours: false }),
  },
  'line labels': {
    of: 'act',
    title: 'Labels for lines',
    files: onPaper,
    make: (view, options) => lineLabels(view, { form: options.lineLabels, lineColours: options.lineColours }),
  },
} satisfies Record<string, SheetMaker>;

export type SheetId = keyof typeof sheets;
export const sheetIds = Object.keys(sheets) as [SheetId, ...SheetId[]];
export const SheetId = z.enum(sheetIds);

export function makerOf(id: SheetId): SheetMaker {
  return sheets[id];
}
