import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { afterEach, describe, expect, it } from 'vitest';
import { serve } from '../../../src/main/start/serve.ts';
import type { About, Contract } from '../../../src/shared/contract.ts';
import { freshFolder } from '../helpers/folder.ts';
import { serviceOn } from '../helpers/service.ts';

let running: ChildProcess | null = null;

afterEach(() => {
  running?.kill('SIGKILL');
  running = null;
});

/** Starts the host in a process of its own and waits for the line with the address. */
async function start(home: string) {
  const child = spawn(process.execPath, [join(import.meta.dirname, 'servesForTest.ts'), freshFolder()], {
    env: { ...process.env, PIECEWRIGHT_HOME: home },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  running = child;
  const lines: string[] = [];
  let trouble = '';
  child.stderr.on('data', (part: Buffer) => {
    trouble += part.toString();
  });
  const said = createInterface({ input: child.stdout });
  const address = await new Promise<string>((resolve, reject) => {
    said.on('line', (line) => {
      lines.push(line);
      const found = /^Open (\S+)$/.exec(line)?.[1];
      if (found !== undefined) resolve(found);
    });
    child.once('exit', () => reject(new Error(`it ended early: ${trouble}`)));
  });
  return { child, address, lines, trouble: () => trouble };
}

/** Opens the address as a browser does and makes one call. */
async function callAt<Name extends keyof Contract>(address: string, name: Name): Promise<unknown> {
  const entered = await fetch(address, { redirect: 'manual' });
  const { origin } = new URL(address);
  const headers = {
    Cookie: String(entered.headers.get('set-cookie')).split(';')[0] ?? '',
    Origin: origin,
    'Content-Type': 'application/json',
  };
  const reply = await fetch(`${origin}/call/${name}`, { method: 'POST', headers, body: '[]' });
  return ((await reply.json()) as { value: unknown }).value;
}

describe('the studio in the browser', () => {
  it('opens a first start on the demo, keeps its data where it says, and ends cleanly on Ctrl-C', async () => {
    const home = join(freshFolder(), 'home');
    const { child, address, lines, trouble } = await start(home);
    expect(lines[0]).toBe(`Everything is kept in ${home}`);
    const about = (await callAt(address, 'about')) as About;
    expect(about).toMatchObject({ host: 'browser', folder: home, first: 'harbour-lights' });
    expect(about.version).toMatch(/^\d+\.\d+\.\d+/);
    const ended = once(child, 'exit');
    child.kill('SIGINT');
    expect(await ended).toEqual([0, null]);
    expect(lines.at(-1)).toBe('Stopped. Everything is saved.');
    expect(trouble()).toBe('');
    // Closing puts all of the log into the library's one file.
    expect(existsSync(join(home, 'library.db'))).toBe(true);
    expect(existsSync(join(home, 'library.db-wal'))).toBe(false);
  });

  it('refuses a port that another program has, and closes the library again', async () => {
    const { address } = await start(join(freshFolder(), 'home'));
    const { service } = serviceOn();
    let closed = false;
    const closing = {
      ...service,
      close: async () => {
        closed = true;
      },
    };
    const port = Number(new URL(address).port);
    const second = serve({ service: closing, program: freshFolder(), port, say: () => {}, report: () => {} });
    await expect(second).rejects.toMatchObject({ code: 'EADDRINUSE' });
    expect(closed).toBe(true);
  });
});
