import { readRow, readToken, type Token } from '../recipe/token.ts';
import type { Setting } from './schema.ts';

/** The motif as blocks and turns; misspelt entries stay as their text. */
export function readMotif(setting: Setting): readonly (readonly (Token | string)[])[] {
  return setting.motif.map(readRow);
}

/** What the motif has at a place: it repeats across and down from the top left corner. Null where it is misspelt or empty. */
export function motifAt(setting: Setting): (column: number, row: number) => Token | null {
  const motif = readMotif(setting);
  return (column, row) => {
    const line = motif[row % motif.length] ?? [];
    const entry = line[column % line.length];
    return entry === undefined || typeof entry === 'string' ? null : entry;
  };
}

/**
 * What stands at a place of the quilt: a single block given for this place in this size, else one given for this place in
 * every size, else the motif's.
 * @param setting read once; the answer is quick to ask many times
 */
export function blockAt(setting: Setting): (size: string, column: number, row: number) => Token | null {
  const motif = motifAt(setting);
  const placeOf = (size: string | undefined, column: number, row: number) => `${size ?? '*'} ${column} ${row}`;
  const single = new Map(setting.single.map((one) => [placeOf(one.size, one.column, one.row), readToken(one.block)]));
  return (size, column, row) => {
    const alone = single.get(placeOf(size, column, row)) ?? single.get(placeOf(undefined, column, row));
    return alone ?? motif(column, row);
  };
}
