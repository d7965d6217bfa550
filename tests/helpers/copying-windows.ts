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
import { TestWindow } from './window.ts';

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
  const window = () => {
    let take: (frame: string) => void = () => undefined;
    const connection = service.connect((frame) => take(frame));
    return new TestWindow({
      send: (frame) => void connection.take(frame),
      onFrame: (it) => {
        take = it;
      },
    });
  };
  return { show, folders, one: window(), other: window() };
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
