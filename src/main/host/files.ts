import { readFile, realpath } from 'node:fs/promises';
import { extname, join, sep } from 'node:path';

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.mjs': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.ico': 'image/x-icon',
  '.woff2': 'font/woff2',
  '.woff': 'font/woff',
  '.ttf': 'font/ttf',
  '.wasm': 'application/wasm',
  '.pdf': 'application/pdf',
};

/** A file of the built window, ready to be sent. */
export interface ServedFile {
  readonly body: Buffer;
  readonly type: string;
  /** How long it may be kept: a file whose name holds its content's hash for ever, anything else not unasked. */
  readonly caching: string;
}

/**
 * The file at a request's path (still percent-encoded, without its query) inside `root`; `null` when there is none. A path
 * that leads out of `root`, by dots or by a link, is none.
 */
export async function fileAt(root: string, path: string): Promise<ServedFile | null> {
  const steps = stepsOf(path);
  if (steps === null) return null;
  const wanted = steps.length === 0 ? 'index.html' : join(...steps);
  try {
    const [base, file] = await Promise.all([realpath(root), realpath(join(root, wanted))]);
    if (!file.startsWith(base + sep)) return null;
    const type = TYPES[extname(file).toLowerCase()] ?? 'application/octet-stream';
    return { body: await readFile(file), type, caching: cachingOf(steps) };
  } catch {
    return null;
  }
}

/** The names along a path; `null` when one of them could mean another folder, a drive or a hidden file. */
function stepsOf(path: string): readonly string[] | null {
  let plain: string;
  try {
    plain = decodeURIComponent(path);
  } catch {
    return null;
  }
  if (!plain.startsWith('/') || /[\\:\0]/.test(plain)) return null;
  if (plain === '/') return [];
  const steps = plain.slice(1).split('/');
  return steps.some((step) => step === '' || step.startsWith('.')) ? null : steps;
}

function cachingOf(steps: readonly string[]): string {
  return steps[0] === 'assets' ? 'private, max-age=31536000, immutable' : 'no-cache';
}
