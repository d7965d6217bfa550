import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { z } from 'zod';
import { comeForwardPath, secretHeader } from '../local-host/second-start.ts';

/** How a second start asks the running program for a way in: an address and a secret that only this user can read. */
const Note = z.object({ address: z.url(), secret: z.string().min(20) });

const answerWithinMs = 3_000;

const noteIn = (folder: string) => join(folder, 'running.json');

/** Leaves the note for as long as the program runs. */
export function leaveNote(folder: string, address: string, secret: string): () => void {
  const path = noteIn(folder);
  try {
    // The mode of an older file would stay: it goes first.
    rmSync(path, { force: true });
    writeFileSync(path, JSON.stringify({ address, secret }), { mode: 0o600, flag: 'wx' });
  } catch {
    return () => undefined;
  }
  return () => rmSync(path, { force: true });
}

/** Asks the program that has the show open for an address that opens its window once; null where none answers. */
export async function askForEntry(folder: string): Promise<string | null> {
  try {
    const { address, secret } = Note.parse(JSON.parse(readFileSync(noteIn(folder), 'utf8')));
    const { hostname, origin } = new URL(address);
    if (hostname !== '127.0.0.1') return null;
    const answer = await fetch(`${origin}${comeForwardPath}`, {
      method: 'POST',
      headers: { [secretHeader]: secret },
      redirect: 'error',
      signal: AbortSignal.timeout(answerWithinMs),
    });
    const entry = answer.ok ? await answer.text() : '';
    return entry.startsWith(`${origin}/`) ? entry : null;
  } catch {
    return null;
  }
}
