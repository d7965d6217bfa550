import { parentPort } from 'node:worker_threads';
import { ignoreLibraryRejections } from './library-rejections.ts';
import { readDocument } from './read-document.ts';

ignoreLibraryRejections();

/** The other side of `gridFromFile`: reads one file for each message and answers with its outcome. */
parentPort?.on('message', async ({ fileName, bytes }: { fileName: string; bytes: Uint8Array }) => {
  parentPort?.postMessage(await readDocument(fileName, bytes));
});
