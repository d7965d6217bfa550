import { zipSync } from 'fflate';
import { saveFile } from '../parts/save-file.ts';

export type PaperFile = { name: string; bytes: Uint8Array<ArrayBuffer> };

/**
 * Gives files to be saved where the browser or the system saves them. Several go as one archive, because a browser
 * lets a page give one file at a time. Answers the name it is saved under.
 */
export function saveFiles(files: readonly PaperFile[], archiveName: string): string {
  const [first] = files;
  if (!first) return '';
  const file =
    files.length === 1
      ? first
      : {
          name: `${archiveName}.zip`,
          bytes: zipSync(Object.fromEntries(files.map(({ name, bytes }) => [name, bytes]))),
        };
  saveFile(file.name, file.bytes, 'application/octet-stream');
  return file.name;
}
