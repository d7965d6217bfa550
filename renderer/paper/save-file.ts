import { zipSync } from 'fflate';

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
  const address = URL.createObjectURL(new Blob([file.bytes], { type: 'application/octet-stream' }));
  const link = document.createElement('a');
  link.href = address;
  link.download = file.name;
  link.click();
  // The file is read after the click; a minute is long enough for the largest.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
  return file.name;
}

export function bytesOf(base64: string): Uint8Array<ArrayBuffer> {
  return Uint8Array.from(atob(base64), (sign) => sign.charCodeAt(0));
}
