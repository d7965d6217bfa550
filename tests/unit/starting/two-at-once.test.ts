import { existsSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { takeShow } from '../../../electron/starting/in-use-note.ts';
import { fakeBrowser } from '../../helpers/fake-browser.ts';
import { showPath } from '../../helpers/open-shows.ts';
import { printedAddress, startServing } from '../../helpers/serving-process.ts';
import { smallRoot } from '../../helpers/small-root.ts';
import { openSocket } from '../../helpers/socket.ts';
import { temporaryFolder } from '../../helpers/temporary-folder.ts';

test('a second start leads to the window of the first, and the way in works once', async () => {
  const [root, folder] = [smallRoot(), temporaryFolder()];
  const first = startServing(root, folder);
  const { origin } = new URL(await printedAddress(first));
  expect(statSync(join(folder, 'running.json')).mode & 0o077).toBe(0);
  const second = startServing(root, folder);
  expect(await second.ended).toBe(0);
  expect(second.said()).toContain('Foldbook is running already.');
  const entry = /http:\S+/.exec(second.said())?.[0] ?? '';
  expect(new URL(entry).origin).toBe(origin);
  const [once, twice] = [
    await fetch(entry, { redirect: 'manual' }),
    await fetch(entry, { redirect: 'manual' }),
  ];
  expect([once.status, twice.status]).toEqual([303, 404]);
  first.process.kill('SIGTERM');
  await first.ended;
  expect(existsSync(join(folder, 'running.json'))).toBe(false);
});

test('while a window lives, a second start tells it and opens no other', async () => {
  const [root, folder] = [smallRoot(), temporaryFolder()];
  const first = startServing(root, folder);
  const { window } = await openSocket(await printedAddress(first));
  await window.call('show.open', {});
  const opened = join(temporaryFolder(), 'opened');
  const second = startServing(root, folder, fakeBrowser(`touch ${opened}`));
  expect(await second.ended).toBe(0);
  expect(second.said()).toContain('look for “Here is Foldbook”');
  expect(existsSync(opened)).toBe(false);
  await expect.poll(() => window.pushes).toContainEqual({ push: 'come forward' });
});

test('a program that was killed is found again at its address by the window it left, and by no other', async () => {
  const [root, folder] = [smallRoot(), temporaryFolder()];
  const first = startServing(root, folder);
  const address = await printedAddress(first);
  first.process.kill('SIGKILL');
  await first.ended;
  const second = startServing(root, folder);
  expect(await printedAddress(second)).toBe(address);
  await expect(openSocket(`${address}x`)).rejects.toThrow();
  expect(await (await openSocket(address)).window.call('show.open', {})).toMatchObject({ ok: true });
  second.process.kill('SIGTERM');
  await second.ended;
  const third = startServing(root, folder);
  expect(await printedAddress(third), 'after an orderly end everything is new').not.toBe(address);
});

test('whoever has not the secret gets no way in', async () => {
  const [root, folder] = [smallRoot(), temporaryFolder()];
  const { origin } = new URL(await printedAddress(startServing(root, folder)));
  for (const headers of [{}, { 'x-foldbook-secret': 'guessed' }] as Record<string, string>[]) {
    const answer = await fetch(`${origin}/come-forward`, { method: 'POST', headers });
    expect(answer.status).toBe(403);
  }
});

test('a show that is open on another machine is refused with its name and time, and free when that is gone', () => {
  const path = showPath();
  let now = new Date('2026-07-04T12:00:00Z');
  const settings = (host: string) => ({ host, now: () => now });
  const taken = takeShow(path, settings('van'));
  if (!taken.ok) throw new Error(taken.problem.what);
  const refused = takeShow(path, settings('tower'));
  expect(refused).toMatchObject({ ok: false, problem: { code: 'show in use' } });
  if (!refused.ok) expect(refused.problem.what).toContain('“van” since 2026-07-04 12:00');
  expect(takeShow(path, settings('van')).ok, 'the same machine is kept out by the lock of the file').toBe(
    true,
  );
  now = new Date('2026-07-04T12:03:00Z');
  expect(takeShow(path, settings('tower')).ok, 'a machine that went off left its note').toBe(true);
  taken.value();
  expect(JSON.parse(readFileSync(`${path}.in-use.json`, 'utf8'))).toMatchObject({ host: 'tower' });
});

test('a note that is no note keeps nobody out', () => {
  const path = showPath();
  writeFileSync(`${path}.in-use.json`, '{');
  const taken = takeShow(path, { host: 'van' });
  expect(taken.ok).toBe(true);
  if (taken.ok) taken.value();
});
