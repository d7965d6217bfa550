import { join } from 'node:path';
import { app, BrowserWindow, dialog, ipcMain, Menu, protocol, session } from 'electron';
import { frameChannel, pageOrigin, pageScheme } from './frame-channel.ts';
import { readPageFiles } from './local-host/page-files.ts';
import { pageHeaders } from './local-host/page-headers.ts';
import type { Connection, Service } from './service/service.ts';
import { pageFolder } from './starting/build-window.ts';
import { dataFolder } from './starting/data-folder.ts';
import { openService } from './starting/open-service.ts';
import { windowMenu } from './window-menu.ts';

const root = app.getAppPath();
const folder = dataFolder();
app.setPath('userData', join(folder, 'window'));

protocol.registerSchemesAsPrivileged([
  { scheme: pageScheme, privileges: { standard: true, secure: true, supportFetchAPI: true } },
]);
app.enableSandbox();

if (app.requestSingleInstanceLock()) start();
else app.quit();

function start(): void {
  app.on('second-instance', bringForward);
  app.on('window-all-closed', () => app.quit());
  app.on('web-contents-created', (_event, contents) => shut(contents));
  void app.whenReady().then(openWindow);
}

function openWindow(): void {
  const opened = openService(root, folder, 'electron', { chooseFolder });
  if (!opened.ok) {
    dialog.showErrorBox(opened.problem.what, opened.problem.todo);
    app.exit(1);
    return;
  }
  app.on('will-quit', opened.value.close);
  servePage();
  answerFrames(opened.value.service);
  refusePermissions();
  Menu.setApplicationMenu(Menu.buildFromTemplate(windowMenu(process.platform)));
  const window = new BrowserWindow({
    width: 1360,
    height: 860,
    minWidth: 1024,
    minHeight: 640,
    show: false,
    backgroundColor: '#141210',
    autoHideMenuBar: true,
    webPreferences: {
      preload: join(root, 'renderer', 'dist-shell', 'preload.cjs'),
      contextIsolation: true,
      sandbox: true,
      nodeIntegration: false,
      nodeIntegrationInWorker: false,
      nodeIntegrationInSubFrames: false,
      webSecurity: true,
      webviewTag: false,
      navigateOnDragDrop: false,
      spellcheck: false,
    },
  });
  window.once('ready-to-show', () => window.show());
  void window.loadURL(`${pageOrigin}/`);
}

/** A folder for copies, chosen in the dialog of the system: the only way a path comes in. */
async function chooseFolder(): Promise<string | null> {
  const { canceled, filePaths } = await dialog.showOpenDialog({
    properties: ['openDirectory', 'createDirectory'],
  });
  return canceled ? null : (filePaths[0] ?? null);
}

/** Answers the page's own addresses from memory; there is no path from a request to the disk. */
function servePage(): void {
  const files = readPageFiles(pageFolder(root));
  protocol.handle(pageScheme, (request) => {
    const { origin, pathname } = addressOf(request.url);
    const file = origin === pageOrigin ? files.get(pathname) : undefined;
    if (!file)
      return new Response('There is nothing here.', {
        status: 404,
        headers: pageHeaders('text/plain', null),
      });
    return new Response(new Uint8Array(file.bytes), { headers: pageHeaders(file.type, null) });
  });
}

/** Connects each page that sends frames to the service, for as long as it is there. */
function answerFrames(service: Service): void {
  const connections = new Map<Electron.WebContents, Connection>();
  ipcMain.on(frameChannel, (event, frame: unknown) => {
    const { sender, senderFrame } = event;
    const isOurPage =
      senderFrame !== null && senderFrame.parent === null && addressOf(senderFrame.url).origin === pageOrigin;
    if (!isOurPage || typeof frame !== 'string') return;
    let connection = connections.get(sender);
    if (!connection) {
      connection = service.connect((answer) => {
        if (!sender.isDestroyed()) sender.send(frameChannel, answer);
      });
      connections.set(sender, connection);
      const close = () => {
        connection?.close();
        connections.delete(sender);
      };
      sender.once('destroyed', close);
      sender.once('did-start-loading', close);
    }
    connection.take(frame);
  });
}

/** No page of this program leaves its address, opens another window or holds a foreign page. */
function shut(contents: Electron.WebContents): void {
  contents.on('will-navigate', (event) => event.preventDefault());
  contents.on('will-redirect', (event) => event.preventDefault());
  contents.on('will-attach-webview', (event) => event.preventDefault());
  contents.setWindowOpenHandler(() => ({ action: 'deny' }));
}

function refusePermissions(): void {
  session.defaultSession.setPermissionRequestHandler((_contents, _permission, answer) => answer(false));
  session.defaultSession.setPermissionCheckHandler(() => false);
  session.defaultSession.setDevicePermissionHandler(() => false);
}

function bringForward(): void {
  const window = BrowserWindow.getAllWindows()[0];
  if (window?.isMinimized()) window.restore();
  window?.focus();
}

/** Origin and path of an address; Node's URL gives "null" as the origin of a scheme it does not know. */
function addressOf(address: string): { origin: string; pathname: string } {
  const { protocol: scheme, host, pathname } = new URL(address);
  return { origin: `${scheme}//${host}`, pathname };
}
