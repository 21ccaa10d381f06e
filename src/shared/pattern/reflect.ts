import { afterTurn, type Turn } from '../drawing/turn.ts';
import type { Setting } from './schema.ts';

/** Which entry of a motif a place takes, and how often it is reflected on the way there. */
export interface MotifPlace {
  readonly column: number;
  readonly row: number;
  /** Reflected left to right. */
  readonly across: boolean;
  /** Reflected top to bottom. */
  readonly down: boolean;
}

type Reflect = Setting['reflect'];

/**
 * The entry a place takes before the motif repeats. A reflected motif is counted from the middle of the quilt outwards, so
 * that a larger quilt has every smaller one in its middle; with an odd number of blocks the middle one is not reflected.
 * @param across how many blocks stand side by side, @param down how many one below another
 */
export function motifPlace(reflect: Reflect, column: number, row: number, across: number, down: number): MotifPlace {
  const x = reflect === 'across' || reflect === 'both' ? fromMiddle(column, across) : { at: column, beyond: false };
  const y = reflect === 'down' || reflect === 'both' ? fromMiddle(row, down) : { at: row, beyond: false };
  return { column: x.at, row: y.at, across: x.beyond, down: y.beyond };
}

function fromMiddle(place: number, count: number): { readonly at: number; readonly beyond: boolean } {
  const middle = Math.floor(count / 2);
  if (place >= middle) return { at: place - middle, beyond: false };
  const last = count % 2 === 0 ? middle - 1 : middle;
  return { at: last - place, beyond: true };
}

const LEFT_TO_RIGHT: Turn = { quarters: 0, mirrored: true };
const TOP_TO_BOTTOM: Turn = { quarters: 2, mirrored: true };

/**
 * How a block lies once it is reflected.
 * @param as 'mirrored', or the diagonal the block is alike about: such a block mirrored is the same block turned, by a
 * quarter one way or the other, and needs no second kind of block.
 */
export function reflectTurn(turn: Turn, { across, down }: MotifPlace, as: Setting['reflected'] = 'mirrored'): Turn {
  const once = across ? afterTurn(turn, LEFT_TO_RIGHT) : turn;
  const lying = down ? afterTurn(once, TOP_TO_BOTTOM) : once;
  if (as === 'mirrored' || !lying.mirrored) return lying;
  const mirror: Turn = { quarters: as === 'falling' ? 1 : 3, mirrored: false };
  return afterTurn(mirror, { quarters: lying.quarters, mirrored: false });
}
