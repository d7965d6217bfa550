import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { z } from 'zod';
import { Edition } from '../../core/sheets/edition.ts';
import type { OpenedShow } from './show-of-path.ts';
import { writeWhole } from './write-whole.ts';

const Ledger = z.record(z.string(), Edition);

/**
 * The prints of an exported show, remembered in the folder they went to: JSON has no place for them. A ledger that
 * cannot be read is begun again.
 */
export function ledgerIn(folder: string): Pick<OpenedShow, 'lastPrints' | 'keepPrints'> {
  const path = join(folder, 'printed-versions.json');
  const all = new Map(Object.entries(readLedger(path)));
  return {
    lastPrints: () => all,
    keepPrints: (printed) => {
      for (const { key, edition } of printed) all.set(key, edition);
      return writeWhole(path, Buffer.from(JSON.stringify(Object.fromEntries(all))));
    },
  };
}

function readLedger(path: string): Record<string, Edition> {
  try {
    return Ledger.parse(JSON.parse(readFileSync(path, 'utf8')));
  } catch {
    return {};
  }
}
