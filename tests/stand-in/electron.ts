import { EventEmitter } from 'node:events';
import { readFileSync } from 'node:fs';
import type * as Real from 'electron';
import type { BrowserContext, Page, Route } from 'playwright';

/**
 * Stands in for the `electron` module where its binary cannot be had: `electron/main.ts` runs on it unchanged, its
 * windows are pages of a real Chromium, and the built preload runs in them as a sandboxed preload does (one file,
 * `require` gives it `electron` and nothing else). Only what main.ts uses is here; what it does is Electron's
 * documented behaviour. `main.ts` and `preload.ts` themselves are checked against Electron's own types by tsc.
 */

/** Chromium does not know a program's own schemes, so pages are loaded under https and named as Electron would. */
const hostSuffix = '.stand-in.invalid';

type Handler = (request: Request) => Response | Promise<Response>;

class App extends EventEmitter {
  root = process.cwd();
  sandboxed = false;
  exitCode: number | null = null;
  readonly paths = new Map<string, string>();
  #ready = Promise.withResolvers<void>();

  getAppPath = () => this.root;
  setPath = (name: string, path: string) => this.paths.set(name, path);
  enableSandbox = () => {
    this.sandboxed = true;
  };
  requestSingleInstanceLock = () => true;
  whenReady = () => this.#ready.promise;
  becomeReady = () => this.#ready.resolve();
  quit = () => {
    this.emit('will-quit');
  };
  exit = (code: number) => {
    this.exitCode = code;
  };
}

class Protocol {
  readonly privileged: Real.CustomScheme[] = [];
  readonly handlers = new Map<string, Handler>();

  registerSchemesAsPrivileged = (schemes: Real.CustomScheme[]) => this.privileged.push(...schemes);
  handle = (scheme: string, handler: Handler) => this.handlers.set(scheme, handler);
}

class Session {
  permissionRequest:
    | ((contents: unknown, permission: string, answer: (granted: boolean) => void) => void)
    | null = null;
  permissionCheck: (() => boolean) | null = null;
  devicePermission: (() => boolean) | null = null;

  setPermissionRequestHandler = (handler: NonNullable<Session['permissionRequest']>) => {
    this.permissionRequest = handler;
  };
  setPermissionCheckHandler = (handler: () => boolean) => {
    this.permissionCheck = handler;
  };
  setDevicePermissionHandler = (handler: () => boolean) => {
    this.devicePermission = handler;
  };
}

export const app = new App();
export const protocol = new Protocol();
export const session = { defaultSession: new Session() };
export const ipcMain = new EventEmitter();
export const shownErrors: string[][] = [];
export const dialog = { showErrorBox: (...words: string[]) => shownErrors.push(words) };

export const menus: Real.MenuItemConstructorOptions[][] = [];
export const Menu = {
  buildFromTemplate: (template: Real.MenuItemConstructorOptions[]) => template,
  setApplicationMenu: (template: Real.MenuItemConstructorOptions[]) => menus.push(template),
};

class WebContents extends EventEmitter {
  readonly window: BrowserWindow;
  openHandler: (details: { url: string }) => { action: 'allow' | 'deny' } = () => ({ action: 'allow' });
  #sending = Promise.resolve();

  constructor(window: BrowserWindow) {
    super();
    this.window = window;
  }

  isDestroyed = () => this.window.page?.isClosed() ?? true;
  setWindowOpenHandler = (handler: WebContents['openHandler']) => {
    this.openHandler = handler;
  };

  send = (channel: string, ...values: unknown[]) => {
    this.#sending = this.#sending
      .then(() =>
        this.window.page?.evaluate(([name, given]) => globalThis.standInHear?.(name, given), [
          channel,
          values,
        ] as const),
      )
      .catch(() => undefined);
  };
}

export class BrowserWindow extends EventEmitter {
  static context: BrowserContext | null = null;
  static readonly all: BrowserWindow[] = [];
  static getAllWindows = () => BrowserWindow.all;

  readonly options: Real.BrowserWindowConstructorOptions;
  readonly webContents: WebContents;
  page: Page | null = null;
  shown = false;
  focused = 0;

  constructor(options: Real.BrowserWindowConstructorOptions = {}) {
    super();
    this.options = options;
    this.webContents = new WebContents(this);
    BrowserWindow.all.push(this);
    app.emit('web-contents-created', {}, this.webContents);
  }

  show = () => {
    this.shown = true;
  };
  isMinimized = () => false;
  restore = () => {};
  focus = () => {
    this.focused += 1;
  };

  loadURL = async (address: string) => {
    const context = BrowserWindow.context;
    if (!context) throw new Error('The test has given the stand-in no browser.');
    const page = await context.newPage();
    this.page = page;
    await page.exposeBinding('standInSend', ({ frame }, channel: string, values: unknown[]) => {
      const senderFrame = { url: namedAddress(frame.url()), parent: frame.parentFrame() };
      ipcMain.emit(channel, { sender: this.webContents, senderFrame }, ...values);
    });
    const preload = this.options.webPreferences?.preload;
    if (preload) await page.addInitScript(asPreload(readFileSync(preload, 'utf8')));
    await page.route('**/*', (route) => this.#answer(route));
    page.on('popup', (popup) => {
      if (this.webContents.openHandler({ url: popup.url() }).action === 'deny') void popup.close();
    });
    page.on('close', () => this.webContents.emit('destroyed'));
    this.webContents.emit('did-start-loading');
    await page.goto(loadedAddress(address));
    this.emit('ready-to-show');
  };

  /** The first navigation is the program's own; those that the page begins may be prevented, as in Electron. */
  async #answer(route: Route): Promise<void> {
    const request = route.request();
    const url = namedAddress(request.url());
    const byPage = request.isNavigationRequest() && this.page?.url() !== 'about:blank';
    if (byPage && !this.#mayNavigate(url, request.frame().parentFrame() === null))
      return route.abort('aborted');
    const handler = protocol.handlers.get(new URL(url).protocol.slice(0, -1));
    if (!handler) return route.abort('namenotresolved');
    const response = await handler(new Request(url, { headers: request.headers() }));
    await route.fulfill({
      status: response.status,
      headers: Object.fromEntries(response.headers),
      body: Buffer.from(await response.arrayBuffer()),
    });
  }

  #mayNavigate(url: string, isMainFrame: boolean): boolean {
    let prevented = false;
    const event = { url, isMainFrame, preventDefault: () => (prevented = true) };
    this.webContents.emit('will-navigate', event);
    if (!prevented) this.webContents.emit('did-start-loading');
    return !prevented;
  }
}

/** "foldbook://page/a" is loaded as "https://page.foldbook.stand-in.invalid/a", and the other way round. */
function loadedAddress(address: string): string {
  const { protocol: scheme, host, pathname } = new URL(address);
  return `https://${host}.${scheme.slice(0, -1)}${hostSuffix}${pathname}`;
}

function namedAddress(address: string): string {
  const { hostname, pathname } = URL.canParse(address) ? new URL(address) : new URL('about:blank');
  if (!hostname.endsWith(hostSuffix)) return address;
  const [host, scheme] = hostname.slice(0, -hostSuffix.length).split('.');
  return `${scheme}://${host}${pathname}`;
}

declare global {
  var standInHear: ((channel: string, values: unknown[]) => void) | undefined;
}

/** The preload in the page: its `require` knows one module, with what Electron gives to a sandboxed preload. */
function asPreload(source: string): string {
  return `(() => {
    const listeners = [];
    globalThis.standInHear = (channel, values) => {
      for (const listener of listeners) if (listener.channel === channel) listener.take({}, ...values);
    };
    const electron = {
      contextBridge: {
        exposeInMainWorld: (name, value) =>
          Object.defineProperty(globalThis, name, { value: Object.freeze(value), enumerable: true }),
      },
      ipcRenderer: {
        send: (channel, ...values) => void standInSend(channel, values),
        on: (channel, take) => listeners.push({ channel, take }),
      },
    };
    const require = (name) => {
      if (name !== 'electron') throw new Error('A sandboxed preload cannot require ' + name);
      return electron;
    };
    ((require, module, exports) => { ${source}
    })(require, { exports: {} }, {});
  })();`;
}
