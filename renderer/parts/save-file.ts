/** Gives a file to the browser to keep: it asks where, or puts it where the user keeps downloads. */
export function saveFile(name: string, content: BlobPart, type: string): void {
  const address = URL.createObjectURL(new Blob([content], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // The content is read after the click; a minute is long enough for the largest.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

export function bytesOf(base64: string): Uint8Array<ArrayBuffer> {
  return Uint8Array.from(atob(base64), (char) => char.charCodeAt(0));
}
