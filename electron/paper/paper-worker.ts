import { parentPort } from 'node:worker_threads';
import { TypeCase } from './fonts/type-case.ts';
import { makeFiles, type PaperInput } from './make-files.ts';
import type { FromWorker } from './make-paper.ts';

/** The other side of `makePaper`: one set of sheets for each message. */
const typeCase = new TypeCase();
const say = (message: FromWorker) => parentPort?.postMessage(message);

parentPort?.on('message', async (input: PaperInput) => {
  const made = await makeFiles(input, typeCase, (done, of, what) =>
    say({ says: 'progress', done, of, what }),
  );
  say({ says: 'made', made });
});
