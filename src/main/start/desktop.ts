import { spawn, spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

type Env = Readonly<Record<string, string | undefined>>;

/** How long the desktop program may take to be fetched, milliseconds; it is about 100 MB. */
const PATIENCE = 300_000;

/** A window that fails this soon never came up, milliseconds. */
const SOON = 15_000;

/** Whether a window could be shown at all. */
export function hasDisplay(env: Env, platform: NodeJS.Platform): boolean {
  if (platform === 'darwin' || platform === 'win32') return true;
  return Boolean(env.DISPLAY) || Boolean(env.WAYLAND_DISPLAY);
}

/** The desktop program's own file, as its package notes it once it has been fetched; `null` before. */
export function electronBinary(program: string, env: Env): string | null {
  const folder = join(program, 'node_modules', 'electron');
  const note = join(folder, 'path.txt');
  const name = existsSync(note) ? readFileSync(note, 'utf8') : 'electron';
  const file = join(env.ELECTRON_OVERRIDE_DIST_PATH ?? join(folder, 'dist'), name);
  return existsSync(file) ? file : null;
}

/** Fetches the desktop program by its package's own means; answers whether it is there now. */
export function fetchElectron(program: string, say: (line: string) => void): boolean {
  const tool = join(program, 'node_modules', 'electron', 'install.js');
  if (!existsSync(tool)) return false;
  say('Fetching the desktop window, once (about 100 MB). Ctrl-C and “npm start -- --browser” go without it.');
  const fetched = spawnSync(process.execPath, [tool], { stdio: 'ignore', timeout: PATIENCE });
  return fetched.status === 0;
}

/** How the desktop window ended: with a code, or without having come up. */
export type Ended = { readonly code: number } | { readonly cameUp: false };

/** Opens the desktop window and waits until it is closed. */
export function runElectron(binary: string, program: string): Promise<Ended> {
  const { ELECTRON_RUN_AS_NODE: _none, ...env } = process.env;
  const began = Date.now();
  const window = spawn(binary, [program], { stdio: 'inherit', env });
  const passOn = (signal: NodeJS.Signals): void => {
    window.kill(signal);
  };
  process.on('SIGINT', passOn).on('SIGTERM', passOn);
  return new Promise((resolve) => {
    const done = (ended: Ended): void => {
      process.off('SIGINT', passOn).off('SIGTERM', passOn);
      resolve(ended);
    };
    window.once('error', () => done({ cameUp: false }));
    window.once('exit', (code, signal) => {
      const failed = code !== 0 && signal !== 'SIGINT' && signal !== 'SIGTERM';
      done(failed && Date.now() - began < SOON ? { cameUp: false } : { code: failed ? (code ?? 1) : 0 });
    });
  });
}
