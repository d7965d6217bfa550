import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { Day } from '../../../core/show/act.ts';
import { applyChange, findBrokenReferences } from '../../../core/show/apply-change.ts';
import { documentFromShow, ShowDocument, showFromRows } from '../../../core/show/show.ts';
import { gridFromFile } from '../../documents/grid-from-file.ts';
import { demoShowPath } from '../house-of-file.ts';
import { rowsOfAct } from './act-rows.ts';
import { demoActs, demoDay } from './demo-day.ts';
import { houseRig } from './house-rig.ts';

export const demoRidersFolder = join(demoShowPath, '..', 'riders');
const dayId = 'day';

/** The demo show from its rig and its riders, read on the same way as a user's. Throws where a part does not fit. */
export async function makeDemoShow(): Promise<ShowDocument> {
  const day = Day.parse({ ...demoDay, id: dayId, rigId: houseRig.rigs?.[0]?.id });
  let show = showFromRows({ ...houseRig, days: [day] });
  for (const [order, demo] of demoActs.entries()) {
    const grid = await gridFromFile(demo.riderFile, await readFile(join(demoRidersFolder, demo.riderFile)));
    if (!grid.ok) throw new Error(`${grid.problem.what} ${grid.problem.todo}`);
    show = applyChange(show, { label: 'Demo', put: rowsOfAct(demo, order, dayId, grid.value), remove: [] });
  }
  const broken = findBrokenReferences(show);
  if (broken.length > 0) throw new Error(`Broken references: ${JSON.stringify(broken.slice(0, 5))}`);
  return ShowDocument.parse(documentFromShow(show));
}

/** The bytes of a show document as the repository keeps it. */
export function demoShowText(document: ShowDocument): string {
  return `${JSON.stringify(document, null, 1)}\n`;
}
