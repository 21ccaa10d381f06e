import { arcBetween, pointAt } from '../../drawing/curve.ts';
import type { Drawing, Patch } from '../../drawing/drawing.ts';
import { distance } from '../../drawing/near.ts';
import type { Point } from '../../drawing/turn.ts';

/** Patches of one shape, whichever way they lie. */
export interface ShapeOf {
  /** Equal for equal shapes, at every scale of the drawing. */
  readonly shape: string;
  readonly patches: readonly ShapedPatch[];
}

export interface ShapedPatch {
  readonly patch: number;
  /** Whether it is the mirror image of the first one. A shape that is its own mirror image is never reversed. */
  readonly reversed: boolean;
}

/**
 * The shapes some of a drawing's patches have, in the order they are first met. Notches count: they must match as well.
 * @param among numbers of the patches, in the drawing's order; all of them when left out
 */
export function shapesOf(drawing: Drawing, among?: ReadonlySet<number>): readonly ShapeOf[] {
  const found = new Map<string, { shape: string; first: string; patches: ShapedPatch[] }>();
  drawing.patches.forEach((patch, index) => {
    if (among?.has(index) === false) return;
    const sides = sidesOf(drawing, patch);
    const [plain, mirrored] = [firstTurn(sides), firstTurn(mirroredSides(sides))];
    const [shape = plain] = [plain, mirrored].sort();
    const known = found.get(shape);
    if (known === undefined) found.set(shape, { shape, first: plain, patches: [{ patch: index, reversed: false }] });
    else known.patches.push({ patch: index, reversed: plain !== known.first });
  });
  return [...found.values()].map(({ shape, patches }) => ({ shape, patches }));
}

/** One side of a patch, from corner to corner. */
interface Side {
  readonly length: number;
  /** How far it bulges out (above 0) or in, as a share of its length. */
  readonly bulge: number;
  /** Where its notches are, as shares of its length from where it begins. */
  readonly notches: readonly number[];
  /** The turn at its end, radians. */
  readonly turn: number;
}

function sidesOf(drawing: Drawing, patch: Patch): readonly Side[] {
  const corners = cornersOf(drawing, patch);
  const { outline } = patch;
  return corners.map((start, k) => {
    const end = corners[(k + 1) % corners.length] as number;
    const way = walk(outline, start, end);
    const [from, to] = [vertex(drawing, outline, start), vertex(drawing, outline, end)];
    const length = distance(from, to);
    const [first, second] = [way[0] as number, way[1] as number];
    const arc = arcBetween(drawing, first, second);
    const notches = way.slice(1, -1).map((at) => distance(from, pointAt(drawing, at)) / length);
    const after = walk(outline, end, corners[(k + 2) % corners.length] as number)[1] as number;
    const turn = turnAt(from, to, pointAt(drawing, after));
    if (arc === null) return { length, bulge: 0, notches, turn };
    const radius = distance(from, arc.centre);
    const inward = (to.x - from.x) * (arc.centre.y - from.y) - (to.y - from.y) * (arc.centre.x - from.x);
    return { length, bulge: (inward >= 0 ? 1 : -1) * (length / radius), notches, turn };
  });
}

/** The places on the outline at which the patch has a corner, or an arc begins or ends. */
export function cornersOf(drawing: Drawing, { outline }: Patch): readonly number[] {
  return outline.flatMap((at, i) => {
    const before = outline.at(i - 1) as number;
    const after = outline[(i + 1) % outline.length] as number;
    const curved = arcBetween(drawing, before, at) !== null || arcBetween(drawing, at, after) !== null;
    const turn = turnAt(pointAt(drawing, before), pointAt(drawing, at), pointAt(drawing, after));
    return curved || Math.abs(turn) > 1e-6 ? [i] : [];
  });
}

function vertex(drawing: Drawing, outline: readonly number[], at: number): Point {
  return pointAt(drawing, outline[at] as number);
}

/** The vertices from one place on the outline to another, both with them. */
function walk(outline: readonly number[], start: number, end: number): readonly number[] {
  const steps = (end - start + outline.length) % outline.length || outline.length;
  return Array.from({ length: steps + 1 }, (_, i) => outline[(start + i) % outline.length] as number);
}

function turnAt(a: Point, b: Point, c: Point): number {
  const [ux, uy, vx, vy] = [b.x - a.x, b.y - a.y, c.x - b.x, c.y - b.y];
  return Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy);
}

/** The sides as they come when the patch is turned over. */
function mirroredSides(sides: readonly Side[]): readonly Side[] {
  return [...sides].reverse().map((side, i, all) => ({
    length: side.length,
    bulge: side.bulge,
    notches: side.notches.map((at) => 1 - at).reverse(),
    turn: (all[(i + 1) % all.length] as Side).turn,
  }));
}

/** The sides in words, from whichever corner gives the first of all in the alphabet. */
function firstTurn(sides: readonly Side[]): string {
  const words = sides.map(({ length, bulge, notches, turn }) => {
    return [length, bulge, turn, ...notches].map(rounded).join(',');
  });
  const turns = words.map((_, i) => [...words.slice(i), ...words.slice(0, i)].join(' '));
  return turns.sort()[0] ?? '';
}

/** To about a three-hundredth, by a number that leaves no length of a drawn grid halfway between two. */
function rounded(value: number): string {
  return String(Math.round((value * 1000) / Math.PI) + 0);
}
