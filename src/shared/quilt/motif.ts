import type { Setting } from '../pattern/schema.ts';
import { readRow, readToken, type Token } from '../recipe/token.ts';

/** The motif as blocks and turns; misspelt entries stay as their text. */
export function readMotif(setting: Setting): readonly (readonly (Token | string)[])[] {
  return setting.motif.map(readRow);
}

/**
 * What stands at a place of the quilt: a single block if one was given for this place and size, else the motif, which
 * repeats across and down from the top left corner. Null when the motif's row is empty or the entry is misspelt.
 * @param size the size's id
 */
export function blockAt(setting: Setting): (size: string, column: number, row: number) => Token | null {
  const motif = readMotif(setting);
  const placeOf = (size: string | undefined, column: number, row: number) => `${size ?? '*'} ${column} ${row}`;
  const single = new Map(setting.single.map((one) => [placeOf(one.size, one.column, one.row), readToken(one.block)]));
  return (size, column, row) => {
    const alone = single.get(placeOf(size, column, row)) ?? single.get(placeOf(undefined, column, row));
    if (alone !== undefined) return alone;
    const line = motif[row % motif.length] ?? [];
    const entry = line[column % line.length];
    return entry === undefined || typeof entry === 'string' ? null : entry;
  };
}
