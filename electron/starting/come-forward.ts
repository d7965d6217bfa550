import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { z } from 'zod';
import type { LocalAddress } from '../local-host/local-host.ts';
import { CameForward, comeForwardPath, secretHeader } from '../local-host/second-start.ts';

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

/**
 * Port and token of a program that was killed: its note is still there. Whoever takes both is found again by the
 * window of that program, which then sends what it kept unsent. Null after an orderly end.
 */
export function leftBehind(folder: string): LocalAddress | null {
  const note = readNote(folder);
  if (!note) return null;
  const { port, hash } = new URL(note.address);
  return Number(port) > 0 && hash.length > 20 ? { port: Number(port), token: hash.slice(1) } : null;
}

/**
 * Asks the program that has the show open to show its window. Answers an address that opens one more, once, and how
 * many windows were told; null where no program answers.
 */
export async function askToComeForward(folder: string): Promise<CameForward | null> {
  try {
    const note = readNote(folder);
    if (!note) return null;
    const { address, secret } = note;
    const { hostname, origin } = new URL(address);
    if (hostname !== '127.0.0.1') return null;
    const answer = await fetch(`${origin}${comeForwardPath}`, {
      method: 'POST',
      headers: { [secretHeader]: secret },
      redirect: 'error',
      signal: AbortSignal.timeout(answerWithinMs),
    });
    const came = CameForward.parse(answer.ok ? await answer.json() : null);
    return came.entry.startsWith(`${origin}/`) ? came : null;
  } catch {
    return null;
  }
}

function readNote(folder: string): z.infer<typeof Note> | null {
  try {
    return Note.parse(JSON.parse(readFileSync(noteIn(folder), 'utf8')));
  } catch {
    return null;
  }
}
