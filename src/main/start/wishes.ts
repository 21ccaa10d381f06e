import { accept, type Maybe, refuse } from '../../shared/measure/finding.ts';

/** What the designer asked for when she started the studio. */
export interface Wishes {
  /** The browser, even where the window could be opened. */
  readonly browser: boolean;
  /** The port for the browser; `null` for the usual one, or any other when that is taken. */
  readonly port: number | null;
}

/** Reads `--browser` and `PIECEWRIGHT_PORT`; refuses what it does not know. */
export function readWishes(words: readonly string[], env: Readonly<Record<string, string | undefined>>): Maybe<Wishes> {
  const strange = words.find((word) => word !== '--browser');
  if (strange !== undefined) {
    return refuse(`npm start does not know “${strange}”. It knows --browser: npm start -- --browser`, '');
  }
  const port = env.PIECEWRIGHT_PORT ?? '';
  if (port !== '' && !(/^\d{1,5}$/.test(port) && Number(port) <= 65_535)) {
    return refuse(
      `PIECEWRIGHT_PORT is “${port}”, which is no port: it must be a number from 0 to 65535.`,
      'PIECEWRIGHT_PORT',
    );
  }
  return accept({ browser: words.includes('--browser'), port: port === '' ? null : Number(port) });
}
