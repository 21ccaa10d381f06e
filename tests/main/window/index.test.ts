import { EventEmitter } from 'node:events';
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Answer, PatternCard } from '../../../src/shared/contract.ts';
import { freshFolder } from '../helpers/folder.ts';
import { samplePattern, sampleRecipe } from '../helpers/samples.ts';
import { desktop, type FakeWindow, fakeElectron } from './fakeElectron.ts';

const OWN = { url: 'piecewright://studio/index.html', parent: null };

/** Waits as long as a busy machine may need. */
const soon = (check: () => void) => vi.waitFor(check, { timeout: 10_000 });

let home: string;
let app: EventEmitter;
let session: EventEmitter;

/** Starts the program afresh, as the desktop would, with the data folder of this test. */
async function start({ words = [] as string[], locked = true } = {}): Promise<FakeWindow | undefined> {
  vi.resetModules();
  Object.assign(desktop, { windows: [], messages: [], errors: [], exits: [], quits: 0, permissions: [], locked });
  vi.stubEnv('PIECEWRIGHT_HOME', home);
  process.argv.splice(2, process.argv.length, ...words);
  const electron = fakeElectron();
  vi.doMock('electron', () => electron);
  app = electron.app;
  session = electron.session.defaultSession;
  await import('../../../src/main/index.ts');
  desktop.begin();
  if (locked) await soon(() => expect(desktop.windows.length + desktop.exits.length).toBeGreaterThan(0));
  return desktop.windows[0];
}

const call = (name: unknown, args: unknown, senderFrame: unknown = OWN) =>
  (desktop.handlers.get('call') as unknown as (...words: unknown[]) => Promise<Answer>)({ senderFrame }, name, args);

async function value<T>(name: string, ...args: unknown[]): Promise<T> {
  const answer = await call(name, args);
  if ('refusal' in answer) throw new Error(answer.refusal.words);
  return answer.value as T;
}

function file(name: string, document: unknown): string {
  const path = join(freshFolder(), name);
  writeFileSync(path, typeof document === 'string' ? document : JSON.stringify(document));
  return path;
}

beforeEach(() => {
  home = join(freshFolder(), 'home');
});

afterEach(async () => {
  if (desktop.exits.length > 0 || desktop.quits > 0) return;
  app.emit('will-quit', { preventDefault: () => {} });
  await soon(() => expect(desktop.exits).toEqual([0]));
});

describe('the desktop window', () => {
  it('shows a page that reaches nothing of the machine but the preload’s bridge', async () => {
    const window = await start();
    expect(window?.options).toMatchObject({
      show: false,
      backgroundColor: '#171A22',
      webPreferences: {
        preload: expect.stringMatching(/out[\\/]preload[\\/]preload\.cjs$/),
        contextIsolation: true,
        sandbox: true,
        nodeIntegration: false,
        nodeIntegrationInWorker: false,
        nodeIntegrationInSubFrames: false,
        webSecurity: true,
        webviewTag: false,
      },
    });
    expect(window?.url).toBe('piecewright://studio/');
    expect(desktop.sandboxed).toBe(true);
    expect(desktop.paths.get('userData')).toBe(join(home, 'window'));
    window?.emit('ready-to-show');
    expect(window?.shown).toBe(1);
  });

  it('has one handler, for the calls of the contract, and answers with the envelope', async () => {
    await start();
    expect([...desktop.handlers.keys()]).toEqual(['call']);
    expect(await value('about')).toMatchObject({ host: 'window', folder: home, first: 'harbour-lights' });
    expect(await call('openPattern', ['nowhere'])).toMatchObject({ refusal: { kind: 'not-found' } });
    expect(await call('close', [])).toMatchObject({ refusal: { kind: 'not-found' } });
    expect(await call('patterns', null)).toMatchObject({ refusal: { kind: 'bad-input' } });
  });

  it.each([
    ['another site', { url: 'https://studio.example/', parent: null }],
    ['a name that begins alike', { url: 'piecewright://studio.example/', parent: null }],
    ['a page of the disk', { url: 'file:///out/renderer/index.html', parent: null }],
    ['a frame in the page', { ...OWN, parent: {} }],
    ['a page that has gone', null],
  ])('does not answer %s', async (_, frame) => {
    await start();
    expect(await call('patterns', [], frame)).toEqual({
      refusal: { kind: 'not-found', words: 'This page is not the studio’s own.' },
    });
  });

  it('goes nowhere, opens nothing, holds no other page', async () => {
    await start();
    let decide: (() => unknown) | undefined;
    const contents = Object.assign(new EventEmitter(), {
      setWindowOpenHandler: (handler: () => unknown) => {
        decide = handler;
      },
    });
    app.emit('web-contents-created', {}, contents);
    for (const what of ['will-navigate', 'will-attach-webview']) {
      const event = { preventDefault: vi.fn() };
      contents.emit(what, event);
      expect(event.preventDefault).toHaveBeenCalledOnce();
    }
    expect(decide?.()).toEqual({ action: 'deny' });
  });

  it('is permitted nothing but to put words on the clipboard', async () => {
    await start();
    const [request, check] = desktop.permissions as unknown as ((...words: unknown[]) => boolean)[];
    for (const [permission, expected] of [
      ['clipboard-sanitized-write', true],
      ['geolocation', false],
      ['media', false],
      ['openExternal', false],
    ] as const) {
      request?.({}, permission, (given: boolean) => expect(given).toBe(expected));
      expect(check?.({}, permission)).toBe(expected);
    }
  });

  it('asks where a file should be saved, under its own name', async () => {
    await start();
    const item = { getFilename: () => 'slack-water.pdf', setSaveDialogOptions: vi.fn() };
    session.emit('will-download', {}, item);
    expect(item.setSaveDialogOptions).toHaveBeenCalledWith({
      title: 'Save',
      defaultPath: join('/home/ada/documents', 'slack-water.pdf'),
    });
  });

  it('is asked about before a change that is not on disk is left', async () => {
    await start();
    const contents = Object.assign(new EventEmitter(), { setWindowOpenHandler: () => {} });
    app.emit('web-contents-created', {}, contents);
    for (const [answer, leaves] of [
      [0, 0],
      [1, 1],
    ] as const) {
      desktop.answer = answer;
      const event = { preventDefault: vi.fn() };
      contents.emit('will-prevent-unload', event);
      expect(event.preventDefault).toHaveBeenCalledTimes(leaves);
    }
    expect(desktop.messages).toHaveLength(2);
  });
});

describe('the files of the desktop window', () => {
  const get = (url: string) =>
    (desktop.served.get('piecewright') as unknown as (request: { url: string }) => Promise<Response>)({ url });

  it('come from a place of their own under the browser’s policy', async () => {
    await start();
    expect(desktop.schemes).toContainEqual({
      scheme: 'piecewright',
      privileges: { standard: true, secure: true, supportFetchAPI: true },
    });
    for (const url of [
      'piecewright://studio/../package.json',
      'piecewright://elsewhere/',
      'piecewright://studio/%2e%2e%2fx',
    ]) {
      const reply = await get(url);
      expect(reply.status).toBe(404);
      expect(reply.headers.get('content-security-policy')).toContain("default-src 'none'");
    }
  });
});

describe('a file opened from the desktop', () => {
  const pattern = () => file('slack.pattern.json', samplePattern());
  const kept = () => value<PatternCard[]>('patterns');

  it('is kept and told of while the window is there', async () => {
    const window = await start();
    const event = { preventDefault: vi.fn() };
    app.emit('open-file', event, pattern());
    await soon(() => expect(window?.sent).toHaveLength(1));
    expect(event.preventDefault).toHaveBeenCalled();
    expect(window?.sent).toEqual([['opened', { kind: 'pattern', id: 'slack-water' }]]);
    expect((await kept()).map((card) => card.id)).toContain('slack-water');
  });

  it('with the program is the first pattern to be shown', async () => {
    const window = await start({ words: ['--flag', pattern()] });
    expect(await value('about')).toMatchObject({ first: 'slack-water' });
    expect(window?.sent).toEqual([]);
  });

  it('by a second start goes to the window that is there', async () => {
    const window = await start();
    const path = pattern();
    app.emit('second-instance', {}, ['electron', '.', 'slack.pattern.json'], join(path, '..'));
    await soon(() => expect(window?.sent).toHaveLength(1));
    expect(window?.shown).toBe(1);
  });

  it('is left to the program that is there already', async () => {
    expect(await start({ locked: false })).toBeUndefined();
    expect(desktop.quits).toBe(1);
  });

  it('from the menu may be several, recipes among them', async () => {
    const window = await start();
    desktop.chosen = [file('m.recipe.json', sampleRecipe()), pattern()];
    const lines = desktop.menu.flatMap((menu) => menu.submenu ?? []);
    lines.find((line) => line.label?.startsWith('Open'))?.click?.();
    await soon(() => expect(window?.sent).toHaveLength(2));
    expect(window?.sent[0]).toEqual(['opened', { kind: 'recipe', id: 'mooring' }]);
  });

  it.each([
    ['is not JSON', 'no.pattern.json', '{'],
    ['is not a pattern', 'cake.pattern.json', '{"format":"cake"}'],
  ])('is told of by its name, and nothing is kept, when it %s', async (_, name, text) => {
    const window = await start();
    const before = await kept();
    app.emit('open-file', { preventDefault: () => {} }, file(name, text));
    await soon(() => expect(desktop.messages).toHaveLength(1));
    expect(desktop.messages[0]).toMatchObject({ message: expect.stringContaining(name) });
    expect(window?.sent).toEqual([]);
    expect(await kept()).toEqual(before);
  });

  it('is told of when it is gone', async () => {
    await start({ words: [join(home, 'gone.pattern.json')] });
    expect(desktop.messages).toMatchObject([{ message: expect.stringContaining('gone.pattern.json') }]);
  });
});

describe('the desktop program', () => {
  it('says why when the library cannot be opened, and ends', async () => {
    mkdirSync(home);
    writeFileSync(join(home, 'library.db'), 'not a library, but a shopping list for the haberdasher’s. '.repeat(50));
    expect(await start()).toBeUndefined();
    expect(desktop.errors[0]?.[1]).toContain('library');
    expect(desktop.exits).toEqual([1]);
  });

  it('closes the library before it ends', async () => {
    await start();
    const event = { preventDefault: vi.fn() };
    app.emit('will-quit', event);
    expect(event.preventDefault).toHaveBeenCalledOnce();
    await soon(() => expect(desktop.exits).toEqual([0]));
    expect(await call('patterns', [])).toMatchObject({ refusal: { kind: 'not-found' } });
  });
});
