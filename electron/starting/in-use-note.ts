import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { hostname } from 'node:os';
import { z } from 'zod';
import { type Outcome, refuse } from '../../core/contract/problem.ts';

/**
 * A note beside a show that says which machine works on it. The lock of the file keeps out a second program on one
 * machine; between machines on a shared folder such locks often do not hold, and then this note does.
 */
const Note = z.object({ host: z.string(), since: z.string(), lastSeen: z.string() });

const beatEveryMs = 20_000;
/** A note that was not renewed for so long was left by a machine that went off. */
const goneAfterMs = 120_000;

type Settings = { host?: string; now?: () => Date };

/** Takes the show for this machine; answers what gives it free again. Where no note can be written, none is kept. */
export function takeShow(showPath: string, settings: Settings = {}): Outcome<() => void> {
  const path = `${showPath}.in-use.json`;
  const { host = hostname(), now = () => new Date() } = settings;
  const other = readNote(path);
  if (other && other.host !== host && now().getTime() - Date.parse(other.lastSeen) < goneAfterMs)
    return refuse(
      'show in use',
      `The show is open on the machine “${other.host}” since ${other.since.slice(0, 16).replace('T', ' ')} (UTC).`,
      `Go on there, or close it there and start again. If that machine is off, wait two minutes; if clocks differ, delete “${path}”.`,
    );
  const since = now().toISOString();
  const beat = () => write(path, { host, since, lastSeen: now().toISOString() });
  beat();
  const timer = setInterval(beat, beatEveryMs);
  timer.unref();
  return {
    ok: true,
    value: () => {
      clearInterval(timer);
      if (readNote(path)?.host === host) tryTo(() => rmSync(path, { force: true }));
    },
  };
}

function readNote(path: string): z.infer<typeof Note> | null {
  try {
    return Note.parse(JSON.parse(readFileSync(path, 'utf8')));
  } catch {
    return null;
  }
}

function write(path: string, note: z.infer<typeof Note>): void {
  tryTo(() => writeFileSync(path, `${JSON.stringify(note)}\n`, { mode: 0o600 }));
}

function tryTo(work: () => void): void {
  try {
    work();
  } catch {
    // Where nothing can be written, the show is worked on in memory, and no other machine can take the file either.
  }
}
