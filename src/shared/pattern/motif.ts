import { readRow, readToken, type Token } from '../recipe/token.ts';
import { lengthsAt } from './places.ts';
import { motifPlace, reflectTurn } from './reflect.ts';
import type { Pattern, Setting, Size } from './schema.ts';

/** The motif as blocks and turns; misspelt entries stay as their text. */
export function readMotif(setting: Setting): readonly (readonly (Token | string)[])[] {
  return setting.motif.map(readRow);
}

/** What the motif itself has at a place: it repeats across and down. Null where it is misspelt or empty. */
export function motifAt(setting: Setting): (column: number, row: number) => Token | null {
  const motif = readMotif(setting);
  return (column, row) => {
    const line = motif[row % motif.length] ?? [];
    const entry = line[column % line.length];
    return entry === undefined || typeof entry === 'string' ? null : entry;
  };
}

type Counts = Pick<Size, 'across' | 'down'>;

type InQuilt = (counts: Counts, column: number, row: number) => Token | null;

/** What the motif puts at a place of a quilt of so many blocks, reflected as the setting says. */
function motifIn(setting: Setting): InQuilt {
  const own = reflectedIn(setting, motifAt(setting));
  if (setting.kind === 'strips')
    return (counts, column, row) => own(lengthsAt(setting, counts, { column, row }), column, row);
  if (setting.kind === 'straight') return own;
  const { between = setting.motif } = setting;
  const others = reflectedIn(setting, motifAt({ ...setting, motif: between }));
  // On point every second row of the quilt is of the blocks between: one fewer across, and one row fewer in all.
  return ({ across, down }, column, row) =>
    row % 2 === 0
      ? own({ across, down }, column, row / 2)
      : others({ across: across - 1, down: down - 1 }, column, (row - 1) / 2);
}

function reflectedIn(setting: Setting, motif: (column: number, row: number) => Token | null): InQuilt {
  return ({ across, down }, column, row) => {
    const place = motifPlace(setting.reflect, column, row, across, down);
    const token = motif(place.column, place.row);
    if (token === null || !(place.across || place.down)) return token;
    return { ...token, turn: reflectTurn(token.turn, place, setting.reflected) };
  };
}

const ANY_SIZE: Counts = { across: 1, down: 1 };

/**
 * What stands at a place of the quilt: a single block given for this place in this size, else one given for this place in
 * every size, else the motif's. Asked for no size that the pattern has, it answers for the first.
 * @param pattern read once; the answer is quick to ask many times
 */
export function blockAt({
  setting,
  sizes,
}: Pick<Pattern, 'setting' | 'sizes'>): (size: string, column: number, row: number) => Token | null {
  const motif = motifIn(setting);
  const counts = new Map<string, Counts>(sizes.map((size) => [size.id, size]));
  const [first = ANY_SIZE] = sizes;
  const placeOf = (size: string | undefined, column: number, row: number) => `${size ?? '*'} ${column} ${row}`;
  const single = new Map(setting.single.map((one) => [placeOf(one.size, one.column, one.row), readToken(one.block)]));
  return (size, column, row) => {
    const alone = single.get(placeOf(size, column, row)) ?? single.get(placeOf(undefined, column, row));
    return alone ?? motif(counts.get(size) ?? first, column, row);
  };
}
