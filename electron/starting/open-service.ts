import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Outcome, refuse } from '../../core/contract/problem.ts';
import { ShowDocument } from '../../core/show/show.ts';
import { openShow } from '../database/open-show.ts';
import { openLog } from '../service/log.ts';
import { Service } from '../service/service.ts';
import { makeDataFolder } from './data-folder.ts';

export type OpenService = { service: Service; showPath: string; close(): void };

/** Opens the user's show (the demo festival on the very first start) and the service on it. */
export function openService(
  root: string,
  folder: string,
  host: 'electron' | 'browser',
): Outcome<OpenService> {
  try {
    makeDataFolder(folder);
  } catch {
    return refuse(
      'cannot write',
      `The folder for the show cannot be made: ${folder}`,
      'Allow writing there, or name another folder in FOLDBOOK_DATA, and start again.',
    );
  }
  const showPath = join(folder, 'festival.foldbook');
  const show = openShow(showPath, { firstRows: () => readDemo(root) });
  if (!show.ok) return show;
  const service = new Service(show.value, host, openLog(join(folder, 'log')));
  return { ok: true, value: { service, showPath, close: () => show.value.close() } };
}

function readDemo(root: string): ShowDocument {
  const text = readFileSync(join(root, 'assets', 'demo', 'festival.json'), 'utf8');
  return ShowDocument.parse(JSON.parse(text));
}
