import { pointAt } from '../../drawing/curve.ts';
import type { Drawing } from '../../drawing/drawing.ts';
import type { Box, Point } from '../../drawing/turn.ts';
import { edgesOf } from '../../drawing/vertex.ts';
import { boxBetween, type FieldPatch, fieldPatch, type Region } from './fieldPatch.ts';
import { type Lines, linesOf } from './lines.ts';
import { Counts, Runs } from './sums.ts';

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

/** The rectangle in grid units. */
export function boxOf({ across, down }: Field, region: Region): Box {
  return boxBetween(across, down, region);
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
