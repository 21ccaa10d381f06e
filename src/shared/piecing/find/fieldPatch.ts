import { outlinePoints } from '../../drawing/curve.ts';
import type { Drawing, PolygonCorner } from '../../drawing/drawing.ts';
import type { Box, Point } from '../../drawing/turn.ts';
import { ownCorners } from './corners.ts';
import type { Lines } from './lines.ts';

/** A rectangle between lines of the drawing: indices of its left, top, right and bottom line. */
export interface Region {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Which way the parts of a row stand: across, left to right, its seams running up and down; or down, the other way. */
export type Along = 'across' | 'down';

/** One patch as the search sees it. */
export interface FieldPatch {
  readonly role: string;
  readonly corners: readonly PolygonCorner[];
  /** The rectangle of lines about it, and the same in grid units. */
  readonly region: Region;
  readonly box: Box;
  /** Whether it fills that rectangle. */
  readonly isRectangle: boolean;
  /** The cell that holds one point of its inside. */
  readonly column: number;
  readonly row: number;
}

/** A patch of the drawing as the search sees it. */
export function fieldPatch(drawing: Drawing, index: number, across: Lines, down: Lines): FieldPatch {
  const patch = drawing.patches[index] as Drawing['patches'][number];
  const corners = ownCorners(drawing, patch);
  const outline = outlinePoints(drawing, patch);
  const columns = corners.map(({ x }) => across.indexOf(x));
  const rows = corners.map(({ y }) => down.indexOf(y));
  const inner = innerPoint(outline);
  const region = {
    left: Math.min(...columns),
    top: Math.min(...rows),
    right: Math.max(...columns),
    bottom: Math.max(...rows),
  };
  const isRectangle =
    corners.length === 4 &&
    corners.every((corner, i) => {
      const atEdge = columns[i] === region.left || columns[i] === region.right;
      return corner.centre === undefined && atEdge && (rows[i] === region.top || rows[i] === region.bottom);
    });
  return {
    role: patch.role,
    corners,
    region,
    box: boxBetween(across, down, region),
    isRectangle,
    column: across.indexOf(inner.x),
    row: down.indexOf(inner.y),
  };
}

/**
 * A point well inside an outline: level with the middle of the widest gap between the heights of its corners, in the middle
 * of the widest stretch there.
 */
function innerPoint(outline: readonly Point[]): Point {
  const heights = outline.map(({ y }) => y).sort((a, b) => a - b);
  const gap = widest(heights);
  const y = (gap.from + gap.to) / 2;
  const crossings = outline.flatMap((a, i) => {
    const b = outline[(i + 1) % outline.length] as Point;
    return a.y > y === b.y > y ? [] : [a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x)];
  });
  crossings.sort((a, b) => a - b);
  const stretch = widest(
    crossings.filter((_, i) => i % 2 === 0).flatMap((from, i) => [from, crossings[2 * i + 1] ?? from]),
    2,
  );
  return { x: (stretch.from + stretch.to) / 2, y };
}

/** The widest of the stretches between numbers that follow one another, every `step`-th one looked at. */
function widest(numbers: readonly number[], step = 1): { readonly from: number; readonly to: number } {
  let best = { from: numbers[0] as number, to: numbers[0] as number };
  for (let i = 0; i + 1 < numbers.length; i += step) {
    const [from, to] = [numbers[i] as number, numbers[i + 1] as number];
    if (to - from > best.to - best.from) best = { from, to };
  }
  return best;
}

/** A rectangle between lines, in grid units. */
export function boxBetween(across: Lines, down: Lines, { left, top, right, bottom }: Region): Box {
  const [x, y] = [across.at[left] as number, down.at[top] as number];
  return { x, y, width: (across.at[right] as number) - x, height: (down.at[bottom] as number) - y };
}
