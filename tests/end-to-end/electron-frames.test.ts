import { describeTransport } from '../contract/transport-suite.ts';
import { bridgeWindow } from '../helpers/bridge-window.ts';
import { chromiumForFile } from '../helpers/chromium.ts';
import { smallElectronRoot } from '../helpers/small-root.ts';
import { startOnStandIn } from '../helpers/stand-in-program.ts';

const chromium = chromiumForFile();

describeTransport("Electron's IPC (main.ts and the built preload, on the stand-in)", async () => {
  const { electron, page } = await startOnStandIn(chromium(), await smallElectronRoot());
  const second = new electron.BrowserWindow(electron.BrowserWindow.all[0]?.options);
  await second.loadURL('foldbook://page/');
  if (!second.page) throw new Error('The second window has no page.');
  const [one, other] = [await bridgeWindow(page), await bridgeWindow(second.page)];
  // A window is known to the service from its first frame on.
  await other.call('show.open', {});
  return { one, other, host: 'electron' };
});
