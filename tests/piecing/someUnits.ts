import fc from 'fast-check';
import { buildDrawing } from '../../src/shared/drawing/build.ts';
import { doubleArea } from '../../src/shared/drawing/drawing.ts';
import type { Point } from '../../src/shared/drawing/turn.ts';
import { seamsWithUnits } from '../../src/shared/piecing/find/made/choose.ts';
import { lower } from '../../src/shared/piecing/lower.ts';
import type { Scale } from '../../src/shared/piecing/method.ts';
import type { FlippedCorner, Unit } from '../../src/shared/piecing/piecing.ts';
import type { Corner } from '../../src/shared/recipe/schema.ts';
import { starter, starterBook } from '../helpers/starters.ts';

/** Units and scales to test the methods with. */

const INCH_PER_MM = 1 / 25.4;

export const QUARTER: Pick<Scale, 'seam' | 'step'> = { seam: 1 / 4, step: 1 / 8 };
export const THREE_EIGHTHS: Pick<Scale, 'seam' | 'step'> = { seam: 3 / 8, step: 1 / 8 };
export const SIX_MM: Pick<Scale, 'seam' | 'step'> = { seam: 6 * INCH_PER_MM, step: INCH_PER_MM };
export const SEVEN_AND_A_HALF_MM: Pick<Scale, 'seam' | 'step'> = { seam: 7.5 * INCH_PER_MM, step: INCH_PER_MM };

export const square = (size: number, role = 'a'): Unit => ({
  kind: 'plain',
  key: 'p',
  width: size,
  height: size,
  role,
});
export const hst = (size: number): Unit => ({ kind: 'hst', key: 'h', width: size, height: size, roles: ['a', 'b'] });
export const geese = (height: number): Unit => ({
  kind: 'geese',
  key: 'g',
  width: 2 * height,
  height,
  roles: ['a', 'b'],
});
export const fourPatch = (width: number, height = width): Unit => ({
  kind: 'four-patch',
  key: 'f',
  width,
  height,
  roles: ['a', 'b'],
});
export const flipped = (width: number, height: number, corners: readonly FlippedCorner[]): Unit => ({
  kind: 'corners',
  key: 'c',
  width,
  height,
  role: 'a',
  corners,
});
export const corner = (at: Corner, size: number, role = 'b'): FlippedCorner => ({ at, size, role });

export const qst = (size: number, roles: readonly [string, string, string, string] = ['a', 'b', 'a', 'b']): Unit => ({
  kind: 'qst',
  key: 'q',
  width: size,
  height: size,
  roles,
});
export const threePatch = (size: number): Unit => ({
  kind: 'three-patch',
  key: 't',
  width: size,
  height: size,
  roles: ['a', 'b', 'c'],
});
export const squareInSquare = (
  size: number,
  roles: readonly [string, string, string, string] = ['b', 'b', 'b', 'b'],
): Unit => ({ kind: 'square-in-square', key: 's', width: size, height: size, role: 'a', roles });
export const halfRectangle = (width: number, height: number, diagonal: 'rising' | 'falling' = 'rising'): Unit => ({
  kind: 'half-rectangle',
  key: 'r',
  width,
  height,
  diagonal,
  roles: ['a', 'b'],
});
export const ninePatch = (width: number, height = width): Unit => ({
  kind: 'nine-patch',
  key: 'n',
  width,
  height,
  roles: ['a', 'b', 'c'],
});
export const checkerboard = (columns: number, rows: number, size = 1): Unit => ({
  kind: 'checkerboard',
  key: 'b',
  width: columns * size,
  height: rows * size,
  columns,
  rows,
  roles: ['a', 'b'],
});
export const rails = (width: number, height: number, roles: readonly string[] = ['a', 'b', 'c']): Unit => ({
  kind: 'rails',
  key: 'i',
  width,
  height,
  roles,
});
export const quarterCircle = (size: number, radius: number): Unit => ({
  kind: 'quarter-circle',
  key: 'o',
  width: size,
  height: size,
  radius,
  roles: ['a', 'b'],
});

/** A unit of every kind, three or four inches large at an inch to the grid unit. */
export function oneOfEach(): readonly Unit[] {
  return [
    square(3),
    hst(3),
    geese(2),
    flipped(4, 2, [corner('top-left', 1), corner('bottom-right', 2, 'c')]),
    qst(3),
    qst(3, ['a', 'b', 'a', 'c']),
    qst(3, ['a', 'b', 'c', 'd']),
    threePatch(3),
    squareInSquare(4),
    squareInSquare(4, ['b', 'c', 'd', 'e']),
    halfRectangle(2, 4),
    halfRectangle(4, 2, 'falling'),
    fourPatch(4),
    ninePatch(4.5),
    checkerboard(4, 4),
    checkerboard(3, 5),
    checkerboard(4, 3),
    rails(4, 4),
    quarterCircle(4, 3),
  ];
}

const CORNERS: readonly Corner[] = ['top-left', 'top-right', 'bottom-right', 'bottom-left'];
const whole = (max: number) => fc.integer({ min: 1, max });

const flippedUnits = fc
  .record({
    at: fc.subarray([...CORNERS], { minLength: 1 }),
    width: whole(6),
    height: whole(6),
    sizes: fc.array(whole(3), { minLength: 4, maxLength: 4 }),
    roles: fc.array(fc.constantFrom('b', 'c'), { minLength: 4, maxLength: 4 }),
  })
  .map(({ at, width, height, sizes, roles }) => {
    const most = Math.min(width, height);
    const corners = at.map((place, i) => corner(place, Math.min(most, sizes[i] ?? 1) / 2, roles[i] ?? 'b'));
    return flipped(width, height, corners);
  });

const role = fc.constantFrom('a', 'b', 'c', 'd');
/** Four roles about a middle; a unit of the trade has no two alike beside each other. */
const aboutMiddle = fc
  .tuple(role, role, role, role)
  .filter((roles) => roles.every((one, i) => one !== roles[(i + 1) % 4]));

/** Quarter-square triangles, squares in a square, half-rectangles, boards and rails. */
const moreUnits: fc.Arbitrary<Unit> = fc.oneof(
  fc.tuple(whole(6), aboutMiddle).map(([size, roles]) => qst(size, roles)),
  whole(6).map(threePatch),
  fc
    .tuple(whole(6), fc.tuple(role, role, role, role))
    .map(([size, roles]) => ({ ...squareInSquare(size, roles), role: 'e' })),
  fc
    .tuple(whole(6), whole(6), fc.constantFrom('rising' as const, 'falling' as const))
    .filter(([width, height]) => width !== height && Math.max(width, height) <= 4 * Math.min(width, height))
    .map((of) => halfRectangle(...of)),
  fc.tuple(whole(3), whole(3)).map(([width, height]) => ninePatch(3 * width, 3 * height)),
  fc
    .tuple(fc.integer({ min: 2, max: 5 }), fc.integer({ min: 2, max: 5 }))
    .filter(([columns, rows]) => columns * rows > 4)
    .map((of) => checkerboard(...of)),
  fc
    .tuple(whole(6), fc.array(role, { minLength: 2, maxLength: 5 }))
    .map(([width, roles]) => rails(width, roles.length, roles)),
);

/** Cuts through a polygon: each is a share of the patches, and of the outline from which to which other share it runs. */
const slices = fc.array(fc.tuple(fc.nat(99), fc.nat(11), fc.nat(11)), { minLength: 1, maxLength: 7 });

/**
 * A square cut again and again from edge to edge, at corners and in the middle of edges, and the way that is found to sew it:
 * any straight seams can be drawn so.
 */
export const slicedUnits: fc.Arbitrary<Unit> = fc
  .tuple(slices, fc.array(role, { minLength: 8, maxLength: 8 }))
  .map(([cuts, roles]) => {
    let polygons: readonly (readonly Point[])[] = [rectangle(6, 6)];
    for (const [which, from, to] of cuts) {
      const index = which % polygons.length;
      const halves = sliced(polygons[index] as readonly Point[], from, to);
      if (halves !== null) polygons = polygons.flatMap((polygon, i) => (i === index ? halves : [polygon]));
    }
    const drawing = buildDrawing(
      6,
      6,
      polygons.map((corners, i) => ({ role: roles[i % roles.length] as string, corners })),
    );
    return { kind: 'pieced' as const, key: 'd', width: 6, height: 6, drawing, seams: seamsWithUnits(drawing) };
  })
  .filter(({ drawing }) => drawing.patches.length > 1);

function rectangle(width: number, height: number): readonly Point[] {
  return [
    { x: 0, y: 0 },
    { x: width, y: 0 },
    { x: width, y: height },
    { x: 0, y: height },
  ];
}

/** A polygon in two, from one corner or middle of an edge to another; null when that leaves a sliver. */
function sliced(corners: readonly Point[], from: number, to: number): readonly (readonly Point[])[] | null {
  const spots = corners.flatMap((a, i) => {
    const b = corners[(i + 1) % corners.length] as Point;
    return [a, { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 }];
  });
  const [i, j] = [from % spots.length, to % spots.length].sort((a, b) => a - b) as [number, number];
  const halves = [spots.slice(i, j + 1), [...spots.slice(j), ...spots.slice(0, i + 1)]];
  return halves.every((half) => half.length > 2 && doubleArea(half) > 2) ? halves : null;
}

/** Units with seams of their own: sliced squares, and those of the starter recipes with partial, set-in and curved seams. */
export const ownSeams: fc.Arbitrary<Unit> = fc.oneof(slicedUnits, fc.constantFrom(...starterUnits()));

function starterUnits(): readonly Unit[] {
  const book = starterBook();
  return [
    'attic-window',
    'bright-hopes',
    'cake-stand',
    'economy',
    'wild-goose-chase',
    'spool',
    'melon',
    'grandmothers-fan',
    'eight-point-star',
  ].flatMap((id) => {
    const lowered = lower(starter(id), {}, book, id);
    return lowered.ok ? lowered.value.units.filter(({ kind }) => kind === 'pieced') : [];
  });
}

/** Any unit, a few whole grid units large; corners by halves. */
export const units: fc.Arbitrary<Unit> = fc.oneof(
  { arbitrary: moreUnits, weight: 4 },
  { arbitrary: ownSeams, weight: 2 },
  whole(4).chain((size) => whole(size).map((radius) => quarterCircle(size, radius))),
  fc
    .record({ width: whole(9), height: whole(9) })
    .map((size): Unit => ({ kind: 'plain', key: 'p', role: 'a', ...size })),
  fc
    .record({ width: whole(20), height: whole(2) })
    .map((size): Unit => ({ kind: 'log', key: 'l', role: 'a', ...size })),
  whole(6).map(hst),
  whole(4).map(geese),
  fc.tuple(whole(4), whole(4)).map(([width, height]) => fourPatch(2 * width, 2 * height)),
  flippedUnits,
);

const houses = fc.constantFrom(QUARTER, THREE_EIGHTHS, SIX_MM, SEVEN_AND_A_HALF_MM, { seam: 15 / 64, step: 1 / 16 });

/** A grid unit of any length, with the seams and rulers in use. */
export const scales: fc.Arbitrary<Scale> = fc
  .record({ grid: fc.double({ min: 0.75, max: 4, noNaN: true }), house: houses })
  .map(({ grid, house }) => ({ grid, ...house }));

/** A grid unit that puts every whole and half of it on an eighth-inch ruler. */
export const ruledScales: fc.Arbitrary<Scale> = fc
  .record({ quarters: fc.integer({ min: 3, max: 16 }), house: fc.constantFrom(QUARTER, THREE_EIGHTHS) })
  .map(({ quarters, house }) => ({ grid: quarters / 4, ...house }));
