import type { Polygon } from '../drawing/drawing.ts';
import { drawingPolygons } from '../drawing/polygons.ts';
import type { Point } from '../drawing/turn.ts';
import { same } from '../measure/inches.ts';
import type { FlippedCorner, Unit } from './piecing.ts';
import { CORNERS } from './turnShape.ts';

/**
 * The patches of a finished unit lying as the trade draws it, in grid units from its top left corner; every outline runs
 * clockwise on screen. An HST: top left triangle, bottom right triangle. Flying geese: the goose pointing up, sky left,
 * sky right. Flipped corners: what is left of the rectangle, then its corner triangles clockwise from the top left. A
 * four-patch: its squares clockwise from the top left. Plain squares and logs: one rectangle. Corner triangles that
 * would overlap one another are not cut to each other: refusing them is the recipe's check. A square in a square: the
 * middle, then the corners. Nine-patches and checkerboards: row by row. The rest in the order of their roles; a unit of its
 * own drawing in the drawing's order. An edge that is an arc has its centre at the corner it leads to.
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
    case 'qst':
      return quarterSquare(unit.width, unit.height, unit.roles);
    case 'three-patch':
      return threePatch(unit.width, unit.height, unit.roles);
    case 'square-in-square':
      return flipped(unit.width, unit.height, unit.role, onPoint(unit.roles, unit.width / 2));
    case 'half-rectangle':
      return halfRectangle(unit);
    case 'nine-patch':
      return board(unit, 3, 3, (column, row) => unit.roles[(column === 1 ? 1 : 0) + (row === 1 ? 1 : 0)] as string);
    case 'checkerboard':
      return board(unit, unit.columns, unit.rows, (column, row) => unit.roles[(column + row) % 2] as string);
    case 'rails':
      return board(unit, 1, unit.roles.length, (_, row) => unit.roles[row] as string);
    case 'quarter-circle':
      return quarterCircle(unit);
    case 'pieced':
      return drawingPolygons(unit.drawing);
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

type Of<K extends Unit['kind']> = Extract<Unit, { kind: K }>;

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

function halfRectangle({ width: w, height: h, diagonal, roles }: Of<'half-rectangle'>): readonly Polygon[] {
  if (diagonal === 'rising') return halfSquare(w, h, roles);
  return [
    { role: roles[0], corners: points([0, 0], [w, 0], [w, h]) },
    { role: roles[1], corners: points([0, 0], [w, h], [0, h]) },
  ];
}

function quarterSquare(w: number, h: number, [top, right, bottom, left]: Of<'qst'>['roles']): readonly Polygon[] {
  const middle = [w / 2, h / 2] as const;
  return [
    { role: top, corners: points([0, 0], [w, 0], middle) },
    { role: right, corners: points([w, 0], [w, h], middle) },
    { role: bottom, corners: points([w, h], [0, h], middle) },
    { role: left, corners: points([0, h], [0, 0], middle) },
  ];
}

function threePatch(w: number, h: number, [half, top, left]: Of<'three-patch'>['roles']): readonly Polygon[] {
  const middle = [w / 2, h / 2] as const;
  return [
    { role: half, corners: points([w, 0], [w, h], [0, h]) },
    { role: top, corners: points([0, 0], [w, 0], middle) },
    { role: left, corners: points([0, h], [0, 0], middle) },
  ];
}

function onPoint(roles: Of<'square-in-square'>['roles'], size: number): readonly FlippedCorner[] {
  return CORNERS.map((at, i) => ({ at, size, role: roles[i] as string }));
}

function quarterCircle({ width: w, height: h, radius, roles }: Of<'quarter-circle'>): readonly Polygon[] {
  const centre = { x: 0, y: 0 };
  const rest = [
    { x: radius, y: 0, centre },
    ...(radius < w ? points([w, 0]) : []),
    ...points([w, h]),
    ...(radius < h ? points([0, h]) : []),
    ...points([0, radius]),
  ];
  return [
    { role: roles[0], corners: [...points([0, 0], [radius, 0]), { x: 0, y: radius, centre }] },
    { role: roles[1], corners: rest },
  ];
}

/** Equal rectangles in columns and rows, row by row. */
function board(
  { width, height }: Unit,
  columns: number,
  rows: number,
  role: (column: number, row: number) => string,
): readonly Polygon[] {
  const [w, h] = [width / columns, height / rows];
  return Array.from({ length: columns * rows }, (_, i) => {
    const [column, row] = [i % columns, Math.floor(i / columns)];
    return { role: role(column, row), corners: rectangle(column * w, row * h, w, h) };
  });
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
