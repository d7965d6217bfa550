import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { unzipSync, zipSync } from 'fflate';
import writeWorkbook from 'write-excel-file/node';
import { demoRidersFolder, demoShowText, makeDemoShow } from './demo/demo-show.ts';
import { workbookRiders } from './demo/workbook-riders.ts';
import { demoShowPath } from './house-of-file.ts';

/**
 * `npm run make-demo`: writes the workbooks among the demo's riders, and then the demo show from its rig and riders.
 * The same sources give the same bytes. Run it after a change of the riders, or of how riders are read.
 */
for (const { fileName, sheets } of workbookRiders) {
  const bytes = await writeWorkbook(sheets).toBuffer();
  // Packed again with one fixed time, or each run would give another file.
  const packed = zipSync(unzipSync(bytes), { mtime: '2026-05-01T12:00:00' });
  await writeFile(join(demoRidersFolder, fileName), packed);
}

const document = await makeDemoShow();
await writeFile(demoShowPath, demoShowText(document));
console.log(
  `${document.acts.length} acts, ${document.sources.length} sources, ${document.mixes.length} mixes`,
);
