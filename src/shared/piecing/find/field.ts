import { outlinePoints, pointAt } from '../../drawing/curve.ts';
import type { Drawing, PolygonCorner } from '../../drawing/drawing.ts';
import type { Box, Point } from '../../drawing/turn.ts';
import { edgesOf } from '../../drawing/vertex.ts';
import { ownCorners } from './corners.ts';
import { type Lines, linesOf } from './lines.ts';

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

/**
 * A drawing laid on the lines its vertices stand on, so that the questions of the search take no time: does an edge run all
 * the way along this line between those two? which patches does this rectangle hold?
 */
export interface Field {
  readonly drawing: Drawing;
  readonly across: Lines;
  readonly down: Lines;
  readonly whole: Region;
  readonly patches: readonly FieldPatch[];
  /** Whether edges run along the upright line all the way between two lines across. */
  upright(line: number, top: number, bottom: number): boolean;
  /** Whether edges run along the level line all the way between two upright lines. */
  level(line: number, left: number, right: number): boolean;
  /** How many patches a rectangle holds that no patch sticks out of. */
  count(region: Region): number;
  /** Which they are, in the drawing's order. */
  inside(region: Region): readonly number[];
}

export function fieldOf(drawing: Drawing): Field {
  const across = linesOf([0, drawing.width, ...drawing.points.map(({ x }) => x)]);
  const down = linesOf([0, drawing.height, ...drawing.points.map(({ y }) => y)]);
  const [columns, rows] = [across.at.length, down.at.length];
  const upright = new Runs(columns, rows);
  const level = new Runs(rows, columns);
  for (const [a, b] of straightEdges(drawing)) {
    const [x, y] = [across.indexOf(a.x), down.indexOf(a.y)];
    const [x2, y2] = [across.indexOf(b.x), down.indexOf(b.y)];
    if (x === x2) upright.mark(x, Math.min(y, y2), Math.max(y, y2));
    else if (y === y2) level.mark(y, Math.min(x, x2), Math.max(x, x2));
  }
  const patches = drawing.patches.map((_, index) => fieldPatch(drawing, index, across, down));
  const counts = new Counts(columns, rows, patches);
  return {
    drawing,
    across,
    down,
    whole: { left: 0, top: 0, right: columns - 1, bottom: rows - 1 },
    patches,
    upright: (line, top, bottom) => upright.whole(line, top, bottom),
    level: (line, left, right) => level.whole(line, left, right),
    count: (region) => counts.of(region),
    inside: (region) => insideOf(patches, region),
  };
}

function insideOf(patches: readonly FieldPatch[], region: Region): readonly number[] {
  const found: number[] = [];
  for (let index = 0; index < patches.length; index += 1)
    if (holds(region, patches[index] as FieldPatch)) found.push(index);
  return found;
}

function holds({ left, top, right, bottom }: Region, { column, row }: FieldPatch): boolean {
  return column >= left && column < right && row >= top && row < bottom;
}

function straightEdges(drawing: Drawing): readonly (readonly [Point, Point])[] {
  const curved = new Set((drawing.arcs ?? []).flatMap(({ a, b }) => [`${a} ${b}`, `${b} ${a}`]));
  return edgesOf(drawing).flatMap(([a, b]) =>
    curved.has(`${a} ${b}`) ? [] : [[pointAt(drawing, a), pointAt(drawing, b)] as const],
  );
}

/** For every line, how much of it up to a place has an edge on it: sums, so that any stretch is asked in one step. */
class Runs {
  readonly #marked: Uint8Array;
  readonly #length: number;
  #sums: Int32Array | null = null;

  constructor(lines: number, length: number) {
    this.#length = length;
    this.#marked = new Uint8Array(lines * length);
  }

  mark(line: number, from: number, to: number): void {
    this.#marked.fill(1, line * this.#length + from, line * this.#length + to);
  }

  whole(line: number, from: number, to: number): boolean {
    const sums = this.#sums ?? this.#sum();
    const start = line * this.#length;
    return (sums[start + to] as number) - (sums[start + from] as number) === to - from;
  }

  #sum(): Int32Array {
    const sums = new Int32Array(this.#marked.length + 1);
    for (let i = 0; i < this.#marked.length; i += 1) sums[i + 1] = (sums[i] as number) + (this.#marked[i] as number);
    this.#sums = sums;
    return sums;
  }
}

/** Patches counted by the cell that holds their inside, as sums from the top left corner. */
class Counts {
  readonly #sums: Int32Array;
  readonly #wide: number;

  constructor(columns: number, rows: number, patches: readonly FieldPatch[]) {
    this.#wide = columns + 1;
    this.#sums = new Int32Array(this.#wide * (rows + 1));
    for (const { column, row } of patches) {
      const cell = (row + 1) * this.#wide + column + 1;
      this.#sums[cell] = (this.#sums[cell] as number) + 1;
    }
    for (let row = 1; row <= rows; row += 1) {
      for (let column = 1; column <= columns; column += 1) {
        const before = this.#at(column - 1, row) + this.#at(column, row - 1) - this.#at(column - 1, row - 1);
        this.#sums[row * this.#wide + column] = this.#at(column, row) + before;
      }
    }
  }

  #at(column: number, row: number): number {
    return this.#sums[row * this.#wide + column] as number;
  }

  of({ left, top, right, bottom }: Region): number {
    return this.#at(right, bottom) - this.#at(left, bottom) - this.#at(right, top) + this.#at(left, top);
  }
}

function fieldPatch(drawing: Drawing, index: number, across: Lines, down: Lines): FieldPatch {
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

/** The rectangle in grid units. */
export function boxOf({ across, down }: Field, region: Region): Box {
  return boxBetween(across, down, region);
}

function boxBetween(across: Lines, down: Lines, { left, top, right, bottom }: Region): Box {
  const [x, y] = [across.at[left] as number, down.at[top] as number];
  return { x, y, width: (across.at[right] as number) - x, height: (down.at[bottom] as number) - y };
}

/** The rectangle between the lines that a box in grid units lies on. */
export function regionOf({ across, down }: Field, { x, y, width, height }: Box): Region {
  return {
    left: across.indexOf(x),
    top: down.indexOf(y),
    right: across.indexOf(x + width),
    bottom: down.indexOf(y + height),
  };
}
