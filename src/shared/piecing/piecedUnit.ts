import { arcBetween, pointAt } from '../drawing/curve.ts';
import type { Drawing, Patch } from '../drawing/drawing.ts';
import type { Point } from '../drawing/turn.ts';
import { renumberSeams } from './seamTree.ts';
import type { Shape } from './shape.ts';

type Pieced = Extract<Shape, { kind: 'pieced' }>;

/** A unit of its own drawing with its patches in an order that depends on nothing but the drawing. */
export interface OrderedPieced {
  readonly shape: Pieced;
  /** For each patch, which one it was before. */
  readonly order: readonly number[];
  /** Says all that is drawn: equal words are equal drawings. */
  readonly words: string;
}

/** Puts the patches of a unit's own drawing in order. */
export function orderPieced(shape: Pieced): OrderedPieced {
  const words = shape.drawing.patches.map((patch) => patchWords(shape.drawing, patch));
  const order = words.map((_, index) => index).sort((a, b) => compare(words[a] as string, words[b] as string));
  const place = new Map(order.map((was, now) => [was, now]));
  const patches = order.map((was) => shape.drawing.patches[was] as Patch);
  const seams = renumberSeams(shape.seams, (patch) => place.get(patch) as number);
  const ordered = { ...shape, drawing: { ...shape.drawing, patches }, seams };
  return { shape: ordered, order, words: order.map((was) => words[was]).join('; ') };
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

/** A patch by its role and its corners from the topmost leftmost on; vertices in the middle of a straight edge are left out. */
function patchWords(drawing: Drawing, { outline, role }: Patch): string {
  const corners = outline.flatMap((vertex, i) => {
    const before = outline[(i + outline.length - 1) % outline.length] as number;
    const after = outline[(i + 1) % outline.length] as number;
    const arc = arcBetween(drawing, before, vertex);
    const here = pointAt(drawing, vertex);
    if (arc !== null) return [`${pointWords(here)} about ${pointWords(arc.centre)}`];
    const curvedOn = arcBetween(drawing, vertex, after) !== null;
    return !curvedOn && isStraight(pointAt(drawing, before), here, pointAt(drawing, after)) ? [] : [pointWords(here)];
  });
  const first = corners.indexOf([...corners].sort(compare)[0] as string);
  return `${role} ${[...corners.slice(first), ...corners.slice(0, first)].join(' ')}`;
}

function isStraight(a: Point, b: Point, c: Point): boolean {
  const turn = (b.x - a.x) * (c.y - b.y) - (b.y - a.y) * (c.x - b.x);
  return Math.abs(turn) < 1e-9 * (Math.hypot(b.x - a.x, b.y - a.y) + Math.hypot(c.x - b.x, c.y - b.y));
}

function pointWords({ x, y }: Point): string {
  return `${lengthWords(x)},${lengthWords(y)}`;
}

/** A length in grid units as a name has it: whole, or with four decimals at most. */
export function lengthWords(length: number): string {
  return String(Number(length.toFixed(4)) + 0);
}

/**
 * Ten letters and digits that stand for a long text, so that a unit's name can be written in a file. Two texts of one block
 * with the same ten would be a chance of one in a thousand million million. (The mixing is the multiply and shift of
 * public-domain string hashes, over two halves of 32 bits.)
 */
export function digest(text: string): string {
  let [high, low] = [0xdeadbeef, 0x41c6ce57];
  for (const letter of text) {
    const code = letter.codePointAt(0) as number;
    high = Math.imul(high ^ code, 2654435761);
    low = Math.imul(low ^ code, 1597334677);
  }
  const mix = (a: number, b: number) => Math.imul(a ^ (a >>> 16), 2246822507) ^ Math.imul(b ^ (b >>> 13), 3266489909);
  [high, low] = [mix(high, low), mix(low, high)];
  return (4294967296 * (2097151 & low) + (high >>> 0)).toString(36).padStart(10, '0').slice(-10);
}
