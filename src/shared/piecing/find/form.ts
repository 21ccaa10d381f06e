import type { PolygonCorner } from '../../drawing/drawing.ts';
import { ALL_TURNS, type Box, type Turn, turnPoint, UNTURNED } from '../../drawing/turn.ts';
import type { Field } from './field.ts';
import type { FieldPatch, Region } from './fieldPatch.ts';

/**
 * What a rectangle of the drawing looks like, without regard to where it stands and how it lies. Rectangles that are the
 * same thing turned or mirrored have the same `likeness`, so that what was found for one serves for all; those that are the
 * same thing turned, but not mirrored, have the same `handed` likeness, because a maker sews them alike.
 */
export interface Form {
  readonly likeness: number;
  readonly handed: number;
  /** The turn that brings the rectangle to the way all of its likeness lie. */
  readonly turn: Turn;
}

/** Answers what rectangles of one drawing look like. */
export interface Forms {
  of(region: Region, patches: readonly number[]): Form;
}

/** Lengths are compared in thousandths of a grid unit. */
const FINE = 1000;

export function formsOf(field: Field): Forms {
  const known = new Map<string, Int32Array>();
  const seen = field.patches.map((patch) => seenPatch(patch, known));
  const cells = { across: field.across.at.map(fine), down: field.down.at.map(fine) };
  const numbers = new Map<number, number>();
  /** A small number for each likeness, in the order they are met: the search asks for it again and again. */
  const numbered = (mark: number): number => {
    const number = numbers.get(mark) ?? numbers.size;
    if (number === numbers.size) numbers.set(mark, number);
    return number;
  };
  return {
    of: (region, patches) => {
      const [x, y] = [cells.across[region.left] as number, cells.down[region.top] as number];
      const width = (cells.across[region.right] as number) - x;
      const height = (cells.down[region.bottom] as number) - y;
      return formFrom(likenesses({ x, y, width, height }, patches, seen), numbered);
    },
  };
}

function fine(length: number): number {
  return Math.round(length * FINE);
}

/** A patch in thousandths: the box about its corners, and two numbers for its shape and role in each of the eight ways to lie. */
interface Seen {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly shapes: Int32Array;
}

/** @param known numbers of shapes met before, by their words as they lie: most patches of a block look like another */
function seenPatch(patch: FieldPatch, known: Map<string, Int32Array>): Seen {
  const { box } = patch;
  const words = shapeWords(patch, box, UNTURNED);
  const shapes = known.get(words) ?? shapeNumbers(patch, box);
  known.set(words, shapes);
  return { x: fine(box.x), y: fine(box.y), width: fine(box.width), height: fine(box.height), shapes };
}

function shapeNumbers(patch: FieldPatch, box: Box): Int32Array {
  const numbers = new Int32Array(2 * ALL_TURNS.length);
  ALL_TURNS.forEach((turn, way) => {
    const words = shapeWords(patch, box, turn);
    numbers.set([numberOf(words, 7), numberOf(words, 31)], 2 * way);
  });
  return numbers;
}

/** The corners of a turned patch from its box's corner on, in an order that depends on the shape alone. */
function shapeWords({ corners, role }: FieldPatch, box: Box, turn: Turn): string {
  const place = ({ x, y }: { readonly x: number; readonly y: number }) => {
    const turned = turnPoint({ x: x - box.x, y: y - box.y }, turn, box.width, box.height);
    return `${fine(turned.x)},${fine(turned.y)}`;
  };
  const edges = corners.map((corner: PolygonCorner, i) => {
    const ends = [place(corners[(i + corners.length - 1) % corners.length] as PolygonCorner), place(corner)].sort();
    return `${ends.join('-')}${corner.centre === undefined ? '' : `@${place(corner.centre)}`}`;
  });
  return `${role} ${edges.sort().join(' ')}`;
}

interface Whole {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/**
 * A number for everything that lies in a rectangle, for each of the eight ways to turn it: the sum of a scattered number for
 * each patch, so that their order does not matter. Two different rectangles of one block get the same 53 bits by a chance of
 * less than one in a thousand million; and what is taken over from a likeness is checked when it is laid out.
 */
function likenesses(
  { x, y, width, height }: Whole,
  patches: readonly number[],
  seen: readonly Seen[],
): readonly number[] {
  const sums = new Int32Array(16).fill(scattered(width + height, patches.length, 17));
  for (const index of patches) {
    const one = seen[index] as Seen;
    const fromLeft = one.x - x;
    const fromTop = one.y - y;
    const fromRight = width - fromLeft - one.width;
    const fromBottom = height - fromTop - one.height;
    // Where its box stands once all is turned, in the order of ALL_TURNS.
    addTo(sums, 0, fromLeft, fromTop, one.shapes);
    addTo(sums, 1, fromBottom, fromLeft, one.shapes);
    addTo(sums, 2, fromRight, fromBottom, one.shapes);
    addTo(sums, 3, fromTop, fromRight, one.shapes);
    addTo(sums, 4, fromRight, fromTop, one.shapes);
    addTo(sums, 5, fromBottom, fromRight, one.shapes);
    addTo(sums, 6, fromLeft, fromBottom, one.shapes);
    addTo(sums, 7, fromTop, fromLeft, one.shapes);
  }
  return ALL_TURNS.map(({ quarters }, way) => {
    const upright = quarters % 2 === 0 ? width < height : height < width;
    const [high, low] = [sums[2 * way] as number, sums[2 * way + 1] as number];
    return ((high & 0xfffff) * 2 + (upright ? 1 : 0)) * 0x100000000 + (low >>> 0);
  });
}

/** Adds a patch to both numbers of one way to lie. */
function addTo(sums: Int32Array, way: number, column: number, row: number, shapes: Int32Array): void {
  const at = 2 * way;
  sums[at] = (sums[at] as number) + scattered(column, row, shapes[at] as number);
  sums[at + 1] = (sums[at + 1] as number) + scattered(row, column, shapes[at + 1] as number);
}

/** A text as a whole number of 32 bits: the same text always gives the same number, whatever was asked before. */
function numberOf(words: string, start: number): number {
  let number = start;
  for (let i = 0; i < words.length; i += 1) number = Math.imul(number ^ words.charCodeAt(i), 0x01000193) + start;
  return scattered(number, start, words.length);
}

/** Three whole numbers scattered over 32 bits (multiply and shift, as public-domain hashes do). */
function scattered(a: number, b: number, c: number): number {
  let mixed = Math.imul(a ^ 0x9e3779b9, 0x85ebca6b) ^ Math.imul(b + 0x7f4a7c15, 0xc2b2ae35);
  mixed = Math.imul(mixed ^ (mixed >>> 15) ^ Math.imul(c, 0x27d4eb2f), 0x165667b1);
  mixed = Math.imul(mixed ^ (mixed >>> 13), 0x5bd1e995);
  return mixed ^ (mixed >>> 16);
}

function formFrom(marks: readonly number[], numbered: (mark: number) => number): Form {
  const first = leastOf(marks, 8);
  const handed = numbered(marks[leastOf(marks, 4)] as number);
  return { likeness: numbered(marks[first] as number), handed, turn: ALL_TURNS[first] as Turn };
}

/** Of the first so many marks, the place of the least. */
function leastOf(marks: readonly number[], many: number): number {
  let least = 0;
  for (let way = 1; way < many; way += 1) if ((marks[way] as number) < (marks[least] as number)) least = way;
  return least;
}
