import { homedir } from 'node:os';
import { posix, resolve, win32 } from 'node:path';

/** The parts of the process's environment that say where data is kept. */
export interface Surroundings {
  readonly env: Readonly<Record<string, string | undefined>>;
  readonly platform: NodeJS.Platform;
  readonly home: string;
}

/** This process's own surroundings. */
export function surroundings(): Surroundings {
  return { env: process.env, platform: process.platform, home: homedir() };
}

/**
 * The folder that holds everything Piecewright keeps: `PIECEWRIGHT_HOME`, else the place where the operating system
 * wants a program's data. The folder need not exist yet.
 */
export function dataFolder({ env, platform, home }: Surroundings): string {
  const chosen = env.PIECEWRIGHT_HOME;
  if (chosen !== undefined && chosen !== '') return resolve(chosen);
  if (platform === 'win32') {
    return win32.join(env.APPDATA || win32.join(home, 'AppData', 'Roaming'), 'Piecewright');
  }
  if (platform === 'darwin') return posix.join(home, 'Library', 'Application Support', 'Piecewright');
  // The XDG base directory specification: a relative XDG_DATA_HOME is to be ignored.
  const shared = env.XDG_DATA_HOME;
  const base = shared !== undefined && posix.isAbsolute(shared) ? shared : posix.join(home, '.local', 'share');
  return posix.join(base, 'piecewright');
}
