import { join } from 'node:path';
import { onTestFinished } from 'vitest';
import { documentFromShow } from '../../core/show/show.ts';
import { type LocalHost, startLocalHost } from '../../electron/local-host/local-host.ts';
import type { PageFile } from '../../electron/local-host/page-files.ts';
import { openLog } from '../../electron/service/log.ts';
import { Service } from '../../electron/service/service.ts';
import { opened } from './open-shows.ts';
import { smallShow } from './small-show.ts';
import { temporaryFolder } from './temporary-folder.ts';

const smallPage = new Map<string, PageFile>([
  ['/', { type: 'text/html; charset=utf-8', bytes: Buffer.from('<!doctype html><title>Page</title>') }],
  ['/assets/main.js', { type: 'text/javascript', bytes: Buffer.from('1') }],
]);

/** The local host with the small show and a page of one line; it ends with the test. */
export async function startSmallHost(): Promise<LocalHost & { service: Service }> {
  const folder = temporaryFolder();
  const show = opened(join(folder, 'festival.foldbook'), documentFromShow(smallShow()));
  const service = new Service(show, 'browser', openLog(join(folder, 'log')));
  const host = await startLocalHost(service, smallPage);
  onTestFinished(() => host.close());
  return { ...host, service };
}
