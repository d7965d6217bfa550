import { join } from 'node:path';
import { type CallName, type CallOutput, contract } from '../../core/contract/contract.ts';
import { documentFromShow } from '../../core/show/show.ts';
import { CopyKeeper } from '../../electron/copies/copy-keeper.ts';
import { openLog } from '../../electron/service/log.ts';
import { Service } from '../../electron/service/service.ts';
import { testFolders } from './copy-folders.ts';
import { opened } from './open-shows.ts';
import { smallShow } from './small-show.ts';
import { temporaryFolder } from './temporary-folder.ts';
import { type TestWindow, windowOf } from './window.ts';

/** Two windows on the small show, in a file that keeps copies. */
export function twoWindows({ chosenFolder, stick }: { chosenFolder?: string; stick?: string } = {}) {
  const folder = temporaryFolder();
  const show = opened(join(folder, 'festival.foldbook'), documentFromShow(smallShow()));
  const folders = testFolders(folder);
  const service = new Service(show, 'browser', openLog(join(folder, 'log')), {
    copies: new CopyKeeper(show, folders),
    chooseFolder: chosenFolder === undefined ? null : async () => chosenFolder,
    findDrives: async () => (stick === undefined ? [] : [{ id: 'stick', name: 'STICK', path: stick }]),
    notice: null,
  });
  return { show, folders, one: windowOf(service).window, other: windowOf(service).window };
}

/** The value that a call answers. Fails the test with the sentence of its problem. */
export async function answer<C extends CallName>(
  window: TestWindow,
  call: C,
  input: unknown,
): Promise<CallOutput<C>> {
  const reply = await window.call(call, input);
  if (!reply.ok) throw new Error(reply.problem.what);
  return contract[call].out.parse(reply.value) as CallOutput<C>;
}
