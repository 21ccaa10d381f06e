import type { Inches } from '../../measure/inches.ts';
import { same } from '../../measure/inches.ts';
import type { Traced } from '../../measure/traced.ts';
import type { Cut, Scale } from '../method.ts';
import type { Scene, SceneLine } from '../scene.ts';
import { asScene, below, beside, type Picture, picture } from './picture.ts';
import { cloth, falling, rectangle, rising } from './pieces.ts';
import { cutUp, halfSquareAdd, larger, multiple, quarterSquareAdd, roomyLength } from './sums.ts';

/** Triangles cut from squares before they are sewn: how large the squares are, how many, and how they are cut. */

/** Finished and s(2 + √2), up to the ruler: a square cut once gives two triangles with short sides of so many grid units. */
export function squareForHalves(units: number, scale: Scale): Traced {
  return cutUp(scale, roomyLength(units, scale), halfSquareAdd(scale));
}

/** Finished and s(2 + 2√2), up to the ruler: a square cut twice gives four triangles whose long side is so many grid units. */
export function squareForQuarters(units: number, scale: Scale): Traced {
  return cutUp(scale, roomyLength(units, scale), quarterSquareAdd(scale));
}

/** The same for a triangle that must be so high as well: half its long side. */
export function squareForQuartersAsHigh(units: number, height: number, scale: Scale): Traced {
  const wide = larger(roomyLength(units, scale), multiple(2, roomyLength(height, scale)));
  return cutUp(scale, wide, quarterSquareAdd(scale));
}

/** Triangles of one role that a unit takes, and the square they are cut from. */
export interface Triangles {
  readonly role: string;
  readonly square: Traced;
  /** Triangles in one unit. */
  readonly inUnit: number;
  /** Triangles from one square: 2 when it is cut once, 4 when it is cut on both diagonals. */
  readonly from: 2 | 4;
  readonly use: string;
}

/** Triangles of one role cut from equal squares are one line of the cut list. */
export function triangleLines(all: readonly Triangles[]): readonly Triangles[] {
  const lines: Triangles[] = [];
  for (const one of all) {
    const alike = lines.findIndex(
      ({ role, square, from }) => role === one.role && from === one.from && same(square.value, one.square.value),
    );
    const known = lines[alike];
    if (known === undefined) lines.push(one);
    else lines[alike] = { ...known, inUnit: known.inUnit + one.inUnit };
  }
  return lines;
}

/** The fewest units for which every square is used up. */
export function wholeSquares(lines: readonly Triangles[]): number {
  return lines.reduce((units, { inUnit, from }) => leastMultiple(units, from / divisor(from, inUnit)), 1);
}

function divisor(a: number, b: number): number {
  return b === 0 ? a : divisor(b, a % b);
}

function leastMultiple(a: number, b: number): number {
  return (a * b) / divisor(a, b);
}

/** The squares of one batch of so many units. */
export function squareCuts(lines: readonly Triangles[], units: number): readonly Cut[] {
  return lines.map(({ role, square, inUnit, from, use }) => ({
    role,
    width: square,
    height: square,
    count: (inUnit * units) / from,
    patches: from,
    use,
  }));
}

const IN_A_ROW = 4;

/** The squares of a batch with the cuts through them, and whatever else is cut for it beside them. */
export function squaresScene(
  lines: readonly Triangles[],
  units: number,
  alt: string,
  others: readonly Picture[] = [],
): Scene {
  const squares = lines.flatMap(({ role, square, inUnit, from }) =>
    Array.from({ length: (inUnit * units) / from }, () => cutSquare(role, square.value, from)),
  );
  return laidOut([...others, ...squares], alt);
}

/** Pieces on the table, a few to a row. */
export function laidOut(all: readonly Picture[], alt: string): Scene {
  const gap = Math.min(...all.map(widthOf)) / 5;
  const rows: Picture[] = [];
  for (let i = 0; i < all.length; i += IN_A_ROW) rows.push(beside(gap, ...all.slice(i, i + IN_A_ROW)));
  return asScene(below(gap, ...rows), alt);
}

function widthOf({ cloth: pieces }: Picture): Inches {
  const xs = pieces.flatMap(({ corners }) => corners.map(({ x }) => x));
  return Math.max(...xs) - Math.min(...xs);
}

/** A square and the cuts through it. */
export function cutSquare(role: string, side: Inches, from: 2 | 4): Picture {
  const lines: SceneLine[] = [rising('cut', side, side)];
  if (from === 4) lines.push(falling('cut', side, 0));
  return picture({ cloth: [cloth(role, rectangle(0, 0, side, side))], lines });
}
