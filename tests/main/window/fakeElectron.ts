import { EventEmitter } from 'node:events';

type Handler = (...args: never[]) => unknown;

/** A window of the desktop that keeps what was asked of it. */
export class FakeWindow extends EventEmitter {
  readonly options: unknown;
  readonly sent: unknown[][] = [];
  readonly webContents = { send: (...words: unknown[]) => this.sent.push(words) };
  url = '';
  shown = 0;

  constructor(options: unknown) {
    super();
    this.options = options;
    desktop.windows.push(this);
  }

  show(): void {
    this.shown += 1;
  }

  loadURL(url: string): Promise<void> {
    this.url = url;
    return Promise.resolve();
  }
}

/** What the program has asked of the desktop so far, and what the desktop answers. */
export const desktop = {
  windows: [] as FakeWindow[],
  handlers: new Map<string, Handler>(),
  schemes: [] as { scheme: string; privileges: object }[],
  served: new Map<string, Handler>(),
  paths: new Map<string, string>(),
  menu: [] as { label?: string; submenu?: { label?: string; role?: string; click?: () => void }[] }[],
  messages: [] as unknown[],
  errors: [] as string[][],
  permissions: [] as Handler[],
  chosen: [] as string[],
  answer: 0,
  locked: true,
  exits: [] as number[],
  quits: 0,
  sandboxed: false,
  begin: () => {},
};

class FakeApp extends EventEmitter {
  readonly isPackaged = true;
  setName(): void {}
  enableSandbox(): void {
    desktop.sandboxed = true;
  }
  setPath(name: string, path: string): void {
    desktop.paths.set(name, path);
  }
  getPath(name: string): string {
    return `/home/ada/${name}`;
  }
  requestSingleInstanceLock(): boolean {
    return desktop.locked;
  }
  whenReady(): Promise<void> {
    return new Promise((resolve) => {
      desktop.begin = resolve;
    });
  }
  quit(): void {
    desktop.quits += 1;
  }
  exit(code: number): void {
    desktop.exits.push(code);
  }
}

class FakeSession extends EventEmitter {
  setPermissionRequestHandler(handler: Handler): void {
    desktop.permissions.push(handler);
  }
  setPermissionCheckHandler(handler: Handler): void {
    desktop.permissions.push(handler);
  }
}

/** The parts of the `electron` module that the program calls; anything else it reached for would not be there. */
export function fakeElectron() {
  return {
    app: new FakeApp(),
    BrowserWindow: FakeWindow,
    dialog: {
      showErrorBox: (...words: string[]) => desktop.errors.push(words),
      showMessageBox: async (...words: unknown[]) => desktop.messages.push(words.at(-1)),
      showMessageBoxSync: (...words: unknown[]) => {
        desktop.messages.push(words.at(-1));
        return desktop.answer;
      },
      showOpenDialog: async () => ({ filePaths: desktop.chosen }),
    },
    ipcMain: { handle: (name: string, handler: Handler) => desktop.handlers.set(name, handler) },
    Menu: {
      buildFromTemplate: (template: typeof desktop.menu) => template,
      setApplicationMenu: (menu: typeof desktop.menu) => {
        desktop.menu = menu;
      },
    },
    nativeTheme: { shouldUseDarkColors: true },
    protocol: {
      registerSchemesAsPrivileged: (schemes: typeof desktop.schemes) => desktop.schemes.push(...schemes),
      handle: (scheme: string, handler: Handler) => desktop.served.set(scheme, handler),
    },
    session: { defaultSession: new FakeSession() },
  };
}
