import { rename, rm, writeFile } from 'node:fs/promises';
import { type Outcome, refuse } from '../../core/contract/problem.ts';

/** Writes a file so that under its name there is never half of it. */
export async function writeWhole(path: string, bytes: Uint8Array): Promise<Outcome<null>> {
  const unfinished = `${path}.unfinished`;
  try {
    await writeFile(unfinished, bytes, { flush: true });
    await rename(unfinished, path);
    return { ok: true, value: null };
  } catch (error) {
    await rm(unfinished, { force: true }).catch(() => {});
    const code = error instanceof Error && 'code' in error ? String(error.code) : '';
    return refuse(
      'cannot write',
      `“${path}” could not be written (${code}).`,
      'Check that the folder may be written to and the disk is not full.',
    );
  }
}
