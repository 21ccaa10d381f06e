import { EventEmitter } from 'node:events';
import type { Answer, Job } from '../../../../src/shared/contract.ts';

/**
 * Stands in for the desktop while the built program runs: when its window is opened, it does what a designer's first minute
 * does, prints what came of it, and closes.
 */
type Handler = (...args: unknown[]) => unknown;

let preload = '';
let answerCall: Handler = () => null;
let answerPage: Handler = () => null;

class App extends EventEmitter {
  readonly isPackaged = true;
  setName(): void {}
  setPath(): void {}
  enableSandbox(): void {}
  requestSingleInstanceLock = () => true;
  whenReady = () => Promise.resolve();
  exit = (code: number) => process.exit(code);
}

export const app = new App();
export const dialog = { showErrorBox: (...words: string[]) => console.error(...words) };
export const ipcMain = {
  handle: (_name: string, handler: Handler) => {
    answerCall = handler;
  },
};
export const Menu = { buildFromTemplate: () => null, setApplicationMenu: () => {} };
export const nativeTheme = { shouldUseDarkColors: false };
export const protocol = {
  registerSchemesAsPrivileged: () => {},
  handle: (_scheme: string, handler: Handler) => {
    answerPage = handler;
  },
};
export const session = {
  defaultSession: Object.assign(new EventEmitter(), {
    setPermissionRequestHandler: () => {},
    setPermissionCheckHandler: () => {},
  }),
};

export class BrowserWindow extends EventEmitter {
  constructor(options: { webPreferences: { preload: string } }) {
    super();
    preload = options.webPreferences.preload;
  }
  show(): void {}
  async loadURL(address: string): Promise<void> {
    await firstMinute(address);
    app.emit('will-quit', { preventDefault: () => {} });
  }
}

async function call<T>(name: string, ...args: unknown[]): Promise<T> {
  const event = { senderFrame: { url: 'piecewright://studio/#quilt', parent: null } };
  const answer = (await answerCall(event, name, args)) as Answer;
  if ('refusal' in answer) throw new Error(answer.refusal.words);
  return answer.value as T;
}

async function firstMinute(address: string): Promise<void> {
  const page = (await answerPage({ url: address })) as Response;
  const { first } = await call<{ first: string }>('about');
  const pattern = await call('openPattern', first);
  const begun = await call<{ job: string }>('publish', { pattern, paper: 'letter', draft: false, plainInk: false });
  let job = await call<Job>('job', begun.job);
  while (job.state === 'working') {
    await new Promise((wait) => setTimeout(wait, 20));
    job = await call<Job>('job', begun.job);
  }
  const file = job.state === 'done' ? (await call<{ name: string }>('result', begun.job)).name : null;
  console.log(JSON.stringify({ preload, first, job, file, page: [page.status, page.headers.get('content-type')] }));
}
