import { arcBetween, pointAt } from '../../drawing/curve.ts';
import type { Drawing } from '../../drawing/drawing.ts';
import { distance } from '../../drawing/near.ts';
import { same } from '../../measure/inches.ts';
import { sideOf } from '../allowance/work.ts';
import { cornersOf } from '../templates/shapes.ts';

/** A patch that is half of a square: a right triangle with two equal short sides. */
export interface RightTriangle {
  readonly patch: number;
  readonly role: string;
  /** Its short side, in the units of the drawing. */
  readonly leg: number;
  /** How many of its short sides lie on the edge of the unit. */
  readonly legsOnRim: 0 | 1 | 2;
  /** Whether its long side does. */
  readonly longOnRim: boolean;
}

/** Those of a unit's patches that can be cut from squares with the ruler alone. */
export function rightTriangles(drawing: Drawing, patches: readonly number[]): readonly RightTriangle[] {
  return patches.flatMap((patch) => rightTriangle(drawing, patch) ?? []);
}

function rightTriangle(drawing: Drawing, patch: number): RightTriangle | null {
  const { outline, role } = drawing.patches[patch] as Drawing['patches'][number];
  const corners = cornersOf(drawing, { outline, role });
  if (corners.length !== 3 || isCurved(drawing, outline)) return null;
  const sides = corners.map((at, i) => {
    const next = corners[(i + 1) % 3] as number;
    const [a, b] = [outline[at] as number, outline[next] as number];
    return { length: distance(pointAt(drawing, a), pointAt(drawing, b)), onRim: sideOf(drawing, a, b) !== null };
  });
  const [one, other, long] = sides.sort((a, b) => a.length - b.length) as [Side, Side, Side];
  if (!same(one.length, other.length) || !same(long.length, one.length * Math.SQRT2)) return null;
  const legsOnRim = [one, other].filter(({ onRim }) => onRim).length as 0 | 1 | 2;
  return { patch, role, leg: one.length, legsOnRim, longOnRim: long.onRim };
}

interface Side {
  readonly length: number;
  readonly onRim: boolean;
}

function isCurved(drawing: Drawing, outline: readonly number[]): boolean {
  return outline.some((a, i) => arcBetween(drawing, a, outline[(i + 1) % outline.length] as number) !== null);
}
