import { readFile } from 'node:fs/promises';
import { type Outcome, refuse } from '../../core/contract/problem.ts';
import { SheetOptions } from '../../core/sheets/sheets.ts';

/** The measures of labels from a JSON file in the shape of `SheetOptions`; what it leaves out is as usual. */
export async function labelsOfFile(path: string): Promise<Outcome<SheetOptions>> {
  const parsed = SheetOptions.safeParse(await jsonOf(path));
  if (parsed.success) return { ok: true, value: parsed.data };
  const issue = parsed.error.issues[0];
  const place = issue?.path.join('.') || 'the whole file';
  return refuse(
    'unreadable file',
    `“${path}” does not hold the measures of labels: ${place}: ${issue?.message ?? 'not readable'}.`,
    `Write, for example, ${JSON.stringify({ lineLabels: { is: 'sheet', labelWidthMm: 48, columns: 4 }, lineColours: false })}.`,
  );
}

async function jsonOf(path: string): Promise<unknown> {
  try {
    return JSON.parse(await readFile(path, 'utf8'));
  } catch {
    return undefined;
  }
}
