import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Outcome } from '../../core/contract/problem.ts';
import { ShowDocument } from '../../core/show/show.ts';
import { CopyFolders } from '../copies/copy-folders.ts';
import { CopyKeeper } from '../copies/copy-keeper.ts';
import { foundDrives } from '../copies/found-drives.ts';
import { openSafely } from '../copies/open-safely.ts';
import type { Surroundings } from '../service/handlers.ts';
import { openLog } from '../service/log.ts';
import { Service } from '../service/service.ts';
import { makeDataFolder } from './data-folder.ts';
import { takeShow } from './in-use-note.ts';

export type OpenService = {
  service: Service;
  showPath: string;
  /** What happened at the opening, for a terminal; null where all was well. */
  said: string | null;
  close(): void;
};

type Given = {
  chooseFolder?: Surroundings['chooseFolder'];
  folders?: CopyFolders;
  /** False for a command that is over at once: no copies by themselves. */
  onSchedule?: boolean;
};

/** The file of the show in its folder. */
const showFileName = 'festival.foldbook';

/** Opens the user's show (the demo festival on the very first start), its copies and the service on it. */
export function openService(
  root: string,
  folder: string,
  host: 'electron' | 'browser',
  given: Given = {},
): Outcome<OpenService> {
  try {
    makeDataFolder(folder);
  } catch {
    // Then the show cannot be written either: it is opened in memory, which says so.
  }
  const showPath = join(folder, showFileName);
  const taken = takeShow(showPath);
  if (!taken.ok) return taken;
  let service: Service | null = null;
  const folders = given.folders ?? new CopyFolders(folder);
  const opened = openSafely(showPath, {
    folders,
    firstRows: () => readDemo(root),
    tell: () =>
      service?.tellAll({ push: 'standing', standing: opened.ok ? opened.value.show.standing() : never() }),
  });
  if (!opened.ok) {
    if (opened.problem.code !== 'show in use') taken.value();
    return opened;
  }
  const { show, notice } = opened.value;
  const copies = new CopyKeeper(show, folders);
  service = new Service(show, host, openLog(join(folder, 'log')), {
    copies,
    chooseFolder: given.chooseFolder ?? null,
    findDrives: () => foundDrives(folder),
    notice,
  });
  if (given.onSchedule ?? true) copies.start();
  const unsaved = show.standing().unsaved;
  return {
    ok: true,
    value: {
      service,
      showPath,
      said: notice ? `${notice.what}\n${notice.todo}` : unsaved ? `${unsaved.what}\n${unsaved.todo}` : null,
      close: () => {
        copies.stop();
        show.close();
        taken.value();
      },
    },
  };
}

function never(): never {
  throw new Error('A show told of itself before it was open.');
}

function readDemo(root: string): ShowDocument {
  const text = readFileSync(join(root, 'assets', 'demo', 'festival.json'), 'utf8');
  return ShowDocument.parse(JSON.parse(text));
}
