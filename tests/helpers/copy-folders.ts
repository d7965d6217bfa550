import { join } from 'node:path';
import { CopyFolders } from '../../electron/copies/copy-folders.ts';

/** Folders for copies that are all of the test's own. */
export function testFolders(folder: string, second?: string): CopyFolders {
  return new CopyFolders(folder, second ? { FOLDBOOK_COPIES: second } : {}, [join(folder, 'rescued')]);
}
