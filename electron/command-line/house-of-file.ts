import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { type Outcome, refuse } from '../../core/contract/problem.ts';
import type { Rig } from '../../core/show/rig.ts';
import { type Show, ShowDocument, showFromRows } from '../../core/show/show.ts';

/** The show that every copy of the program brings along. */
export const demoShowPath = join(import.meta.dirname, '..', '..', 'assets', 'demo', 'festival.json');

/** A show and the rig of it that riders are read against. */
export type House = { house: Show; rig: Rig };

/** The house rig in a show that was exported as JSON; a show of several rigs gives its first. */
export async function houseOfFile(path: string): Promise<Outcome<House>> {
  const document = ShowDocument.safeParse(await jsonOf(path));
  if (!document.success)
    return refuse(
      'not a show',
      `“${path}” is no show that can be read: ${document.error.issues[0]?.message ?? 'it is damaged'}.`,
      'Name a show that Foldbook exported as JSON.',
    );
  const house = showFromRows(document.data);
  const [rig] = house.rigs.values();
  if (!rig)
    return refuse('not a show', `“${path}” holds no rig.`, 'Name a show in which the house rig is entered.');
  return { ok: true, value: { house, rig } };
}

/** null where the file is not there or is not JSON: the check of the show then says so. */
async function jsonOf(path: string): Promise<unknown> {
  try {
    return JSON.parse(await readFile(path, 'utf8'));
  } catch {
    return null;
  }
}
