import { join } from 'node:path';
import { type Outcome, refuse } from '../../core/contract/problem.ts';
import type { Rig } from '../../core/show/rig.ts';
import { type Show, showFromRows } from '../../core/show/show.ts';
import { showOfFile } from './show-of-file.ts';

/** The show that every copy of the program brings along. */
export const demoShowPath = join(import.meta.dirname, '..', '..', 'assets', 'demo', 'festival.json');

/** A show and the rig of it that riders are read against. */
export type House = { house: Show; rig: Rig };

/** The house rig in a show that was exported as JSON; a show of several rigs gives its first. */
export async function houseOfFile(path: string): Promise<Outcome<House>> {
  const document = await showOfFile(path);
  if (!document.ok) return document;
  const house = showFromRows(document.value);
  const [rig] = house.rigs.values();
  if (!rig)
    return refuse('not a show', `“${path}” holds no rig.`, 'Name a show in which the house rig is entered.');
  return { ok: true, value: { house, rig } };
}
