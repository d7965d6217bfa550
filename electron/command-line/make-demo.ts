import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { unzipSync, zipSync } from 'fflate';
import writeWorkbook from 'write-excel-file/node';
import { Day } from '../../core/show/act.ts';
import { applyChange, findBrokenReferences } from '../../core/show/apply-change.ts';
import { documentFromShow, ShowDocument, showFromRows } from '../../core/show/show.ts';
import { gridFromFile } from '../documents/grid-from-file.ts';
import { exitCodes } from './command.ts';
import { rowsOfAct } from './demo/act-rows.ts';
import { demoActs, demoDay } from './demo/demo-day.ts';
import { houseRig } from './demo/house-rig.ts';
import { workbookRiders } from './demo/workbook-riders.ts';
import { demoShowPath } from './house-of-file.ts';

/**
 * `npm run make-demo`: writes the workbooks among the demo's riders and the demo show, from its rig and its riders
 * on the same way a user's riders take. The same sources give the same bytes.
 */
const ridersFolder = join(demoShowPath, '..', 'riders');
const dayId = 'day';

await writeWorkbooks();
await writeShow();

async function writeWorkbooks(): Promise<void> {
  for (const { fileName, sheets } of workbookRiders) {
    const bytes = await writeWorkbook(sheets).toBuffer();
    // Packed again with one fixed time, or each run would give another file.
    await writeFile(
      join(ridersFolder, fileName),
      zipSync(unzipSync(bytes), { mtime: '2026-05-01T12:00:00' }),
    );
  }
}

async function writeShow(): Promise<void> {
  let show = showFromRows({
    ...houseRig,
    days: [Day.parse({ ...demoDay, id: dayId, rigId: houseRig.rigs?.[0]?.id })],
  });
  for (const [order, demo] of demoActs.entries()) {
    const grid = await gridFromFile(demo.riderFile, await readFile(join(ridersFolder, demo.riderFile)));
    if (!grid.ok) throw new Error(`${grid.problem.what} ${grid.problem.todo}`);
    show = applyChange(show, { label: 'Demo', put: rowsOfAct(demo, order, dayId, grid.value), remove: [] });
  }
  const broken = findBrokenReferences(show);
  if (broken.length > 0) throw new Error(`Broken references: ${JSON.stringify(broken.slice(0, 5))}`);
  const document = ShowDocument.parse(documentFromShow(show));
  await writeFile(demoShowPath, `${JSON.stringify(document, null, 1)}\n`);
  console.log(
    `${document.acts.length} acts, ${document.sources.length} sources, ${document.mixes.length} mixes`,
  );
  process.exitCode = exitCodes.done;
}
