import type { Turn } from '../drawing/turn.ts';

/** One entry of a layout or a motif: what stands there and how it lies. */
export interface Token {
  readonly name: string;
  readonly turn: Turn;
}

const FORM = /^([A-Za-z][A-Za-z0-9]*)(?::(m)?(0|90|180|270)?)?$/;

/** Reads "A", "A:90", "A:m" or "A:m270"; null when it is none of these. */
export function readToken(text: string): Token | null {
  const match = FORM.exec(text);
  if (match === null || text.endsWith(':')) return null;
  const [, name = '', mirror, degrees] = match;
  const quarters = (Number(degrees ?? 0) / 90) as Turn['quarters'];
  return { name, turn: { quarters, mirrored: mirror === 'm' } };
}

/** The entry as it is written in a file. */
export function writeToken(token: Token): string {
  const { quarters, mirrored } = token.turn;
  const degrees = quarters === 0 ? '' : String(quarters * 90);
  const turn = `${mirrored ? 'm' : ''}${degrees}`;
  return turn === '' ? token.name : `${token.name}:${turn}`;
}

/** The entries of one row of a layout; a misspelt entry is kept as its text so that it can be named. */
export function readRow(row: string): readonly (Token | string)[] {
  return row
    .split(/\s+/)
    .filter((text) => text !== '')
    .map((text) => readToken(text) ?? text);
}

/** The row as it is written in a file. */
export function writeRow(tokens: readonly Token[]): string {
  return tokens.map(writeToken).join(' ');
}
