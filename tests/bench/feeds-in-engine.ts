import { HyperFormula } from 'hyperformula';
import type { Computed, FeedWorkbook } from './feed-sheet.ts';
import { processorMs } from './processor-time.ts';

/** The workbook built in a general-purpose JavaScript spreadsheet engine, which computes every formula once. */
export function computedInEngine(workbook: FeedWorkbook): Computed & { ms: number } {
  const started = processorMs();
  const engine = HyperFormula.buildFromSheets(workbook, { licenseKey: 'gpl-v3', maxColumns: 1000 });
  const values = (name: string) => engine.getSheetValues(engine.getSheetId(name) ?? 0);
  const [feeds, levels] = [values('Feeds'), values('Levels')];
  const ms = processorMs() - started;
  engine.destroy();
  return { ms, feeds, levels };
}
