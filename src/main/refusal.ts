import type { Refusal } from '../shared/contract.ts';
import type { Finding } from '../shared/measure/finding.ts';

/** A `Refusal` that can be thrown: what a call of the `Contract` rejects with. */
export class Refused extends Error implements Refusal {
  readonly kind: Refusal['kind'];
  readonly words: string;
  readonly findings?: readonly Finding[];

  constructor(kind: Refusal['kind'], words: string, findings?: readonly Finding[]) {
    super(words);
    this.name = 'Refused';
    this.kind = kind;
    this.words = words;
    if (findings !== undefined) this.findings = findings;
  }
}

/** The plain data of a refusal, as it crosses to the window. */
export function plainRefusal(refusal: Refusal): Refusal {
  const { kind, words, findings } = refusal;
  return findings === undefined ? { kind, words } : { kind, words, findings };
}

const FULL = 'The disk is full, so nothing was written. Make room and try again; what was saved before is safe.';
const READ_ONLY =
  'The data folder cannot be written to, so nothing was changed. Give yourself the right to write there, or set PIECEWRIGHT_HOME to another folder.';
const BUSY = 'Another Piecewright is writing to the same data folder just now. Nothing was changed; try again.';
const DAMAGED =
  'The library file cannot be read: it is damaged, or not a library of Piecewright. It was left as it is. Move it out of the data folder, or put one of the copies from “backups” in its place.';
const UNKNOWN = 'Piecewright met something it did not expect. Nothing that was saved is lost; try again.';

/** What the machine's own error codes mean to the designer; SQLite's are matched by their beginning. */
const MACHINE: readonly (readonly [code: string, kind: Refusal['kind'], words: string])[] = [
  ['SQLITE_FULL', 'no-room', FULL],
  ['ENOSPC', 'no-room', FULL],
  ['EDQUOT', 'no-room', FULL],
  ['SQLITE_READONLY', 'no-room', READ_ONLY],
  ['SQLITE_CANTOPEN', 'no-room', READ_ONLY],
  ['EROFS', 'no-room', READ_ONLY],
  ['EACCES', 'no-room', READ_ONLY],
  ['EPERM', 'no-room', READ_ONLY],
  ['ENOTDIR', 'no-room', READ_ONLY],
  ['EEXIST', 'no-room', READ_ONLY],
  ['SQLITE_BUSY', 'broken', BUSY],
  ['SQLITE_LOCKED', 'broken', BUSY],
  ['SQLITE_CORRUPT', 'broken', DAMAGED],
  ['SQLITE_NOTADB', 'broken', DAMAGED],
];

/** Any error as a refusal in words for the designer; `null` from `knownRefusal` marks a bug, which the caller reports. */
export function refusalOf(error: unknown): Refusal {
  return knownRefusal(error) ?? { kind: 'broken', words: UNKNOWN };
}

/** The refusal behind an error, if it is one that the machine or the designer's input explains. */
export function knownRefusal(error: unknown): Refusal | null {
  if (error instanceof Refused) return plainRefusal(error);
  const code = codeOf(error);
  const known = MACHINE.find(([start]) => code.startsWith(start));
  return known === undefined ? null : { kind: known[1], words: known[2] };
}

/** Whether another program holds the library just now, so that asking again may help. */
export function isBusy(error: unknown): boolean {
  return codeOf(error).startsWith('SQLITE_BUSY');
}

function codeOf(error: unknown): string {
  if (typeof error !== 'object' || error === null || !('code' in error)) return '';
  return typeof error.code === 'string' ? error.code : '';
}
