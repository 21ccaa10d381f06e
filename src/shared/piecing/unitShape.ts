import type { Polygon } from '../drawing/drawing.ts';
import type { Point } from '../drawing/turn.ts';
import { same } from '../measure/inches.ts';
import type { Corner } from '../recipe/schema.ts';
import type { FlippedCorner, Unit } from './piecing.ts';

/** Clockwise from the top left: the order in which corner triangles are listed. */
const CORNERS: readonly Corner[] = ['top-left', 'top-right', 'bottom-right', 'bottom-left'];

/**
 * The patches of a finished unit lying as the trade draws it, in grid units from its top left corner; every outline runs
 * clockwise on screen. An HST: top left triangle, bottom right triangle. Flying geese: the goose pointing up, sky left,
 * sky right. Flipped corners: what is left of the rectangle, then its corner triangles clockwise from the top left. A
 * four-patch: its squares clockwise from the top left. Plain squares and logs: one rectangle. Corner triangles that
 * would overlap one another are not cut to each other: refusing them is the recipe's check.
 */
export function unitPolygons(unit: Unit): readonly Polygon[] {
  switch (unit.kind) {
    case 'plain':
    case 'log':
      return [{ role: unit.role, corners: rectangle(0, 0, unit.width, unit.height) }];
    case 'hst':
      return halfSquare(unit.width, unit.height, unit.roles);
    case 'geese':
      return geese(unit.width, unit.height, unit.roles);
    case 'four-patch':
      return fourPatch(unit.width / 2, unit.height / 2, unit.roles);
    case 'corners':
      return flipped(unit.width, unit.height, unit.role, unit.corners);
  }
}

function rectangle(x: number, y: number, width: number, height: number): readonly Point[] {
  return [
    { x, y },
    { x: x + width, y },
    { x: x + width, y: y + height },
    { x, y: y + height },
  ];
}

function points(...pairs: readonly (readonly [number, number])[]): readonly Point[] {
  return pairs.map(([x, y]) => ({ x, y }));
}

type Two = readonly [string, string];

function halfSquare(w: number, h: number, [first, second]: Two): readonly Polygon[] {
  return [
    { role: first, corners: points([0, 0], [w, 0], [0, h]) },
    { role: second, corners: points([w, 0], [w, h], [0, h]) },
  ];
}

function geese(w: number, h: number, [goose, sky]: Two): readonly Polygon[] {
  return [
    { role: goose, corners: points([w / 2, 0], [w, h], [0, h]) },
    { role: sky, corners: points([0, 0], [w / 2, 0], [0, h]) },
    { role: sky, corners: points([w / 2, 0], [w, 0], [w, h]) },
  ];
}

function fourPatch(w: number, h: number, [first, second]: Two): readonly Polygon[] {
  return [
    { role: first, corners: rectangle(0, 0, w, h) },
    { role: second, corners: rectangle(w, 0, w, h) },
    { role: first, corners: rectangle(w, h, w, h) },
    { role: second, corners: rectangle(0, h, w, h) },
  ];
}

function flipped(w: number, h: number, role: string, corners: readonly FlippedCorner[]): readonly Polygon[] {
  const triangles: Polygon[] = [];
  const rest: Point[] = [];
  for (const at of CORNERS) {
    const corner = corners.find((one) => one.at === at);
    const spot = {
      x: at.endsWith('right') ? w : 0,
      y: at.startsWith('bottom') ? h : 0,
    };
    if (corner === undefined) {
      rest.push(spot);
      continue;
    }
    const [before, after] = legs(spot, corner);
    rest.push(before, after);
    triangles.push({ role: corner.role, corners: [spot, after, before] });
  }
  return [{ role, corners: withoutRepeats(rest) }, ...triangles];
}

/** The ends of a corner triangle's long side, in the order met going clockwise round the rectangle. */
function legs(spot: Point, { at, size }: FlippedCorner): readonly [Point, Point] {
  const down = { x: spot.x, y: spot.y + (at.startsWith('top') ? size : -size) };
  const across = {
    x: spot.x + (at.endsWith('left') ? size : -size),
    y: spot.y,
  };
  return at === 'top-left' || at === 'bottom-right' ? [down, across] : [across, down];
}

/** Corners that touch leave a repeated point in what is left of the rectangle; a patch has each corner once. */
function withoutRepeats(outline: readonly Point[]): readonly Point[] {
  return outline.filter((point, i) => {
    const next = outline[(i + 1) % outline.length] as Point;
    return !(same(point.x, next.x) && same(point.y, next.y));
  });
}
