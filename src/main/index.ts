import { join } from 'node:path';
import {
  app,
  BrowserWindow,
  dialog,
  type IpcMainInvokeEvent,
  ipcMain,
  Menu,
  nativeTheme,
  protocol,
  session,
  type WebContents,
} from 'electron';
import type { Answer } from '../shared/contract.ts';
import { openService, programFolder } from './openService.ts';
import { refusalOf } from './refusal.ts';
import { answer } from './service/answer.ts';
import type { Service } from './service.ts';
import { dataFolder, surroundings } from './store/folder.ts';
import { addressOf, isOwn, SCHEME } from './window/address.ts';
import { fileResponse } from './window/fileResponse.ts';
import { menuLines } from './window/menu.ts';
import { FILE_ENDINGS, filesAmong, importFrom, messageOf } from './window/openFile.ts';
import { UNSAVED_QUESTION, windowOptions } from './window/options.ts';

// The desktop window: everything it can do is asked of the service, which the browser host serves just the same.

const address = addressOf(process.env.ELECTRON_RENDERER_URL, app.isPackaged);
const report = (error: unknown): void => console.error(error);
/** Files the desktop asks for before the library is open. */
const waiting = [...filesAmong(process.argv.slice(1), process.cwd())];
let service: Service | null = null;
let studio: BrowserWindow | null = null;

app.setName('Piecewright');
app.setPath('userData', join(dataFolder(surroundings()), 'window'));
app.enableSandbox();
protocol.registerSchemesAsPrivileged([
  { scheme: SCHEME, privileges: { standard: true, secure: true, supportFetchAPI: true } },
]);
app.on('open-file', (event, path) => {
  event.preventDefault();
  void open([path]);
});
app.on('second-instance', (_event, words, folder) => {
  studio?.show();
  void open(filesAmong(words, folder));
});
app.on('web-contents-created', (_event, contents) => keepIn(contents));
app.on('window-all-closed', () => app.quit());
app.on('will-quit', leave);
if (app.requestSingleInstanceLock()) void begin();
else app.quit();

async function begin(): Promise<void> {
  await app.whenReady();
  try {
    service = openService('window', report);
  } catch (error) {
    dialog.showErrorBox('Piecewright cannot open its library', refusalOf(error).words);
    app.exit(1);
    return;
  }
  prepareSession();
  ipcMain.handle('call', (event, name: unknown, args: unknown) => answerWindow(event, name, args));
  const on = { mac: process.platform === 'darwin', installed: app.isPackaged };
  Menu.setApplicationMenu(Menu.buildFromTemplate(menuLines(() => void choose(), on)));
  // A pattern opened together with the program is the one to show first, so it is kept before the window asks.
  await open(waiting.splice(0));
  studio = openWindow();
}

function openWindow(): BrowserWindow {
  const preload = join(programFolder, 'out', 'preload', 'preload.cjs');
  const window = new BrowserWindow(windowOptions({ preload, dark: nativeTheme.shouldUseDarkColors }));
  window.once('ready-to-show', () => window.show());
  window.on('closed', () => {
    studio = null;
  });
  void window.loadURL(address);
  return window;
}

/** Files come from the built window only, nothing is permitted but the clipboard, and a download asks where to. */
function prepareSession(): void {
  const { defaultSession } = session;
  protocol.handle(SCHEME, ({ url }) => fileResponse(join(programFolder, 'out', 'renderer'), url));
  defaultSession.setPermissionRequestHandler((_contents, permission, decide) =>
    decide(permission === 'clipboard-sanitized-write'),
  );
  defaultSession.setPermissionCheckHandler((_contents, permission) => permission === 'clipboard-sanitized-write');
  defaultSession.on('will-download', (_event, item) => {
    item.setSaveDialogOptions({ title: 'Save', defaultPath: join(app.getPath('documents'), item.getFilename()) });
  });
}

/** A page of the studio stays itself: it goes nowhere, opens nothing, and holds no other page. */
function keepIn(contents: WebContents): void {
  contents.on('will-navigate', (event) => event.preventDefault());
  contents.on('will-attach-webview', (event) => event.preventDefault());
  contents.setWindowOpenHandler(() => ({ action: 'deny' }));
  contents.on('will-prevent-unload', (event) => {
    // The window asks to stay while something is not on disk. That takes a moment, or the disk is full.
    if (studio !== null && dialog.showMessageBoxSync(studio, UNSAVED_QUESTION) === 1) event.preventDefault();
  });
}

async function answerWindow(event: IpcMainInvokeEvent, name: unknown, args: unknown): Promise<Answer> {
  const { senderFrame } = event;
  const own = senderFrame !== null && senderFrame.parent === null && isOwn(senderFrame.url, address);
  if (!own || service === null) return { refusal: { kind: 'not-found', words: 'This page is not the studio’s own.' } };
  return answer(service, name, args, report);
}

async function choose(): Promise<void> {
  if (studio === null) return;
  const { filePaths } = await dialog.showOpenDialog(studio, {
    title: 'Open a pattern or recipe file',
    properties: ['openFile', 'multiSelections'],
    filters: [{ name: 'Patterns and recipes', extensions: FILE_ENDINGS }],
  });
  await open(filePaths);
}

/** Keeps each file and tells the window of it; one that cannot be kept is told of in a message. */
async function open(paths: readonly string[]): Promise<void> {
  if (service === null) {
    waiting.push(...paths);
    return;
  }
  for (const path of paths) {
    try {
      const imported = await importFrom(path, service);
      if (studio !== null) studio.webContents.send('opened', imported);
      else if (imported.kind === 'pattern') await service.openPattern(imported.id);
    } catch (error) {
      const message = { type: 'warning' as const, ...messageOf(error) };
      await (studio === null ? dialog.showMessageBox(message) : dialog.showMessageBox(studio, message));
    }
  }
}

/** The library is closed before the program ends. */
function leave(event: { preventDefault(): void }): void {
  if (service === null) return;
  event.preventDefault();
  const closing = service;
  service = null;
  void closing.close().finally(() => app.exit(0));
}
