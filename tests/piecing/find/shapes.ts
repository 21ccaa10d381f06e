import { buildDrawing } from '../../../src/shared/drawing/build.ts';
import type { Drawing, Polygon, PolygonCorner } from '../../../src/shared/drawing/drawing.ts';

/** Blocks drawn as plain polygons, for tests of how they are sewn. */

/** A polygon through places given as pairs; a pair of pairs is reached along an arc about the second. */
export function patch(role: string, ...corners: readonly (readonly number[])[]): Polygon {
  return {
    role,
    corners: corners.map(([x = 0, y = 0, cx, cy]): PolygonCorner => {
      return cx === undefined || cy === undefined ? { x, y } : { x, y, centre: { x: cx, y: cy } };
    }),
  };
}

export function box(role: string, x: number, y: number, width: number, height: number): Polygon {
  return patch(role, [x, y], [x + width, y], [x + width, y + height], [x, y + height]);
}

/** A square cut from corner to corner, the first role where `corner` says, counted clockwise from the top left. */
export function halves(roles: readonly [string, string], x: number, y: number, side: number, corner: 0 | 1 | 2 | 3) {
  const corners = [
    [x, y],
    [x + side, y],
    [x + side, y + side],
    [x, y + side],
  ];
  const at = (i: number) => corners[(corner + i) % 4] as number[];
  return [patch(roles[0], at(3), at(0), at(1)), patch(roles[1], at(1), at(2), at(3))];
}

/** Flying geese, the goose pointing to a side counted clockwise from the top; x, y is the top left corner. */
export function goose(roles: readonly [string, string], x: number, y: number, height: number, to: 0 | 1 | 2 | 3) {
  const [goose, sky] = roles;
  const [w, h] = to % 2 === 0 ? [2 * height, height] : [height, 2 * height];
  const corners = [
    [x, y],
    [x + w, y],
    [x + w, y + h],
    [x, y + h],
  ];
  const at = (i: number) => corners[(to + i) % 4] as number[];
  const [a, b] = [at(0), at(1)];
  const tip = [((a[0] ?? 0) + (b[0] ?? 0)) / 2, ((a[1] ?? 0) + (b[1] ?? 0)) / 2];
  return [patch(goose, tip, at(2), at(3)), patch(sky, at(0), tip, at(3)), patch(sky, tip, at(1), at(2))];
}

/** Strips about a square core, one grid unit wide, clockwise from the top; each round of roles again. */
export function logs(core: number, rounds: number, roles: readonly [string, string, string, string]): Drawing {
  const patches = [box('core', rounds, rounds, core, core)];
  let [x, y, w, h] = [rounds, rounds, core, core];
  for (let i = 0; i < 4 * rounds; i += 1) {
    const role = roles[i % 4] as string;
    if (i % 4 === 0) [patches[i + 1], y, h] = [box(role, x, y - 1, w, 1), y - 1, h + 1];
    else if (i % 4 === 1) [patches[i + 1], w] = [box(role, x + w, y, 1, h), w + 1];
    else if (i % 4 === 2) [patches[i + 1], h] = [box(role, x, y + h, w, 1), h + 1];
    else [patches[i + 1], x, w] = [box(role, x - 1, y, 1, h), x - 1, w + 1];
  }
  return buildDrawing(core + 2 * rounds, core + 2 * rounds, patches);
}

/** Bear's paw on a grid of seven: four paws of three by three, turned about a cross of strips. */
export function bearsPaw(): Drawing {
  const paw = (x: number, y: number, corner: 0 | 1 | 2 | 3) => {
    // Drawn for the top left paw and turned: its background square is in the outer corner.
    const turned = (column: number, row: number, size: number): [number, number] => {
      const [far, farRow] = [3 - column - size, 3 - row - size];
      const spots: [number, number][] = [
        [column, row],
        [farRow, column],
        [far, farRow],
        [row, far],
      ];
      const [dx, dy] = spots[corner] as [number, number];
      return [x + dx, y + dy];
    };
    const claw = (column: number, row: number, at: 0 | 1 | 2 | 3) =>
      halves(['claws', 'background'], ...turned(column, row, 1), 1, ((at + corner) % 4) as 0 | 1 | 2 | 3);
    return [
      box('background', ...turned(0, 0, 1), 1, 1),
      ...[1, 2].flatMap((i) => [...claw(i, 0, 3), ...claw(0, i, 1)]),
      box('paw', ...turned(1, 1, 2), 2, 2),
    ];
  };
  const cross = [
    box('background', 3, 0, 1, 3),
    box('background', 3, 4, 1, 3),
    box('background', 0, 3, 3, 1),
    box('background', 4, 3, 3, 1),
    box('claws', 3, 3, 1, 1),
  ];
  return buildDrawing(7, 7, [...paw(0, 0, 0), ...paw(4, 0, 1), ...paw(4, 4, 2), ...paw(0, 4, 3), ...cross]);
}

/** Churn dash on a grid of six: half-square triangles in the corners, halved rails between, a plain middle. */
export function churnDash(): Drawing {
  const corner = (x: number, y: number, at: 0 | 1 | 2 | 3) => halves(['background', 'dash'], x, y, 2, at);
  return buildDrawing(6, 6, [
    ...corner(0, 0, 0),
    ...corner(4, 0, 1),
    ...corner(4, 4, 2),
    ...corner(0, 4, 3),
    box('background', 2, 0, 2, 1),
    box('dash', 2, 1, 2, 1),
    box('dash', 2, 4, 2, 1),
    box('background', 2, 5, 2, 1),
    box('background', 0, 2, 1, 2),
    box('dash', 1, 2, 1, 2),
    box('dash', 4, 2, 1, 2),
    box('background', 5, 2, 1, 2),
    box('background', 2, 2, 2, 2),
  ]);
}

/** Sawtooth star on a grid of four. */
export function sawtoothStar(): Drawing {
  const corners = [0, 3].flatMap((x) => [0, 3].map((y) => box('background', x, y, 1, 1)));
  const sky = ['background', 'points'] as const;
  return buildDrawing(4, 4, [
    ...corners,
    ...goose(sky, 1, 0, 1, 2),
    ...goose(sky, 3, 1, 1, 3),
    ...goose(sky, 1, 3, 1, 0),
    ...goose(sky, 0, 1, 1, 1),
    box('middle', 1, 1, 2, 2),
  ]);
}

/** Eight diamonds about the middle of a block, squares and triangles between their points; its corners lie off any grid. */
export function eightPointStar(side: number): Drawing {
  const short = side / (2 + Math.SQRT2);
  const [long, half] = [side - short, side / 2];
  const tips = [
    [short, 0],
    [long, 0],
    [side, short],
    [side, long],
    [long, side],
    [short, side],
    [0, long],
    [0, short],
  ];
  const depth = half - short;
  const notches = [
    [half, depth],
    [long, short],
    [side - depth, half],
    [long, long],
    [half, side - depth],
    [short, long],
    [depth, half],
    [short, short],
  ];
  const at = (of: readonly number[][], i: number) => of[(i + 8) % 8] as number[];
  const diamonds = tips.map((tip, i) =>
    patch(`diamond-${i % 2}`, [half, half], at(notches, i - 1), tip, at(notches, i)),
  );
  const triangles = [0, 2, 4, 6].map((i) => patch('triangles', at(tips, i), at(tips, i + 1), at(notches, i)));
  const corners = [
    [side, 0],
    [side, side],
    [0, side],
    [0, 0],
  ];
  const squares = corners.map((corner, i) =>
    patch('squares', at(tips, 2 * i + 1), corner, at(tips, 2 * i + 2), at(notches, 2 * i + 1)),
  );
  return buildDrawing(side, side, [...diamonds, ...triangles, ...squares]);
}
