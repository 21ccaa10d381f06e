import fc from 'fast-check';
import { buildDrawing } from '../../../src/shared/drawing/build.ts';
import { checkDrawing } from '../../../src/shared/drawing/check.ts';
import type { Drawing, Polygon } from '../../../src/shared/drawing/drawing.ts';
import { maybeMergePatches } from '../../../src/shared/drawing/merge.ts';
import type { Box } from '../../../src/shared/drawing/turn.ts';
import { neighboursOf } from '../../../src/shared/drawing/whole.ts';
import { floorplans } from '../../published/floorplans.ts';
import { box, goose, halves, patch } from './shapes.ts';

/** Drawings by chance, to try the search on. */

const ROLES = ['a', 'b', 'c'] as const;
const roles = fc.constantFrom(...ROLES);
const quarter = fc.constantFrom(0, 1, 2, 3) as fc.Arbitrary<0 | 1 | 2 | 3>;

/** A rectangle cut straight across again and again: numbers are taken from a list, one after another. */
function sliced(whole: Box, numbers: readonly number[]): readonly Box[] {
  const left = [...numbers];
  const cut = (one: Box, depth: number): readonly Box[] => {
    const number = left.shift();
    const across = one.width > 1 && (one.height <= 1 || (number ?? 0) % 2 === 0);
    const length = across ? one.width : one.height;
    if (number === undefined || number % 5 === 4 || length <= 1 || depth > 6) return [one];
    const at = 1 + (number % (length - 1));
    const [first, rest] = across
      ? [
          { ...one, width: at },
          { ...one, x: one.x + at, width: one.width - at },
        ]
      : [
          { ...one, height: at },
          { ...one, y: one.y + at, height: one.height - at },
        ];
    return [...cut(first, depth + 1), ...cut(rest, depth + 1)];
  };
  return cut(whole, 0);
}

const boxes = fc
  .record({
    width: fc.integer({ min: 2, max: 12 }),
    height: fc.integer({ min: 2, max: 12 }),
    numbers: fc.array(fc.nat(1000), { minLength: 4, maxLength: 60 }),
  })
  .map(({ width, height, numbers }) => ({ width, height, boxes: sliced({ x: 0, y: 0, width, height }, numbers) }));

/** Rectangles of three fabrics that straight seams from edge to edge can sew. */
export const slicingDrawings: fc.Arbitrary<Drawing> = fc
  .tuple(boxes, fc.array(roles, { minLength: 200, maxLength: 200 }))
  .map(([plan, named]) =>
    buildDrawing(
      plan.width,
      plan.height,
      plan.boxes.map(({ x, y, width, height }, i) => box(named[i] as string, x, y, width, height)),
    ),
  );

/** The same with some rectangles cut slantwise, into units of the trade and others. */
export const slantedDrawings: fc.Arbitrary<Drawing> = fc
  .tuple(boxes, fc.array(fc.tuple(roles, roles, fc.nat(6), quarter), { minLength: 200, maxLength: 200 }))
  .map(([plan, chosen]) =>
    buildDrawing(
      plan.width,
      plan.height,
      plan.boxes.flatMap((one, i) => filled(one, ...(chosen[i] as (typeof chosen)[number]))),
    ),
  );

function filled(one: Box, first: string, second: string, kind: number, turn: 0 | 1 | 2 | 3): readonly Polygon[] {
  const { x, y, width: w, height: h } = one;
  const [right, bottom] = [x + w, y + h];
  if (kind === 0 && w === h) return halves([first, second], x, y, w, turn);
  if (kind === 1 && w === 2 * h) return goose([first, second], x, y, h, turn < 2 ? 0 : 2);
  if (kind === 1 && h === 2 * w) return goose([first, second], x, y, w, turn < 2 ? 1 : 3);
  if (kind === 2 && turn < 2) {
    return [patch(first, [x, y], [right, y], [x, bottom]), patch(second, [right, y], [right, bottom], [x, bottom])];
  }
  if (kind === 2) {
    return [patch(first, [x, y], [right, y], [right, bottom]), patch(second, [x, y], [right, bottom], [x, bottom])];
  }
  if (kind === 3) {
    // A point off the middle of the upper edge, drawn to both lower corners.
    const tip = [x + w / 4, y];
    return [
      patch(first, tip, [right, bottom], [x, bottom]),
      patch(second, [x, y], tip, [x, bottom]),
      patch(second, tip, [right, y], [right, bottom]),
    ];
  }
  return [box(first, x, y, w, h)];
}

const all = [1, 2, 3, 4, 5, 6].flatMap((rooms) => floorplans(rooms));

/** Any floorplan of up to six rooms, in three fabrics. */
export const roomDrawings: fc.Arbitrary<Drawing> = fc
  .tuple(fc.constantFrom(...all), fc.array(roles, { minLength: 6, maxLength: 6 }))
  .map(([{ width, height, rooms }, named]) =>
    buildDrawing(
      width,
      height,
      rooms.map((room, i) => ({ ...room, role: named[i] as string })),
    ),
  );

/** Squares and half squares of a small grid merged by chance into patches of any shape. */
export const mergedDrawings: fc.Arbitrary<Drawing> = fc
  .record({
    side: fc.integer({ min: 2, max: 4 }),
    cells: fc.array(fc.tuple(fc.boolean(), quarter), { minLength: 16, maxLength: 16 }),
    merges: fc.array(fc.tuple(fc.nat(1000), fc.nat(1000)), { maxLength: 24 }),
    named: fc.array(roles, { minLength: 32, maxLength: 32 }),
  })
  .map(({ side, cells, merges, named }) => {
    const polygons = Array.from({ length: side * side }, (_, i) => {
      const [x, y] = [i % side, Math.floor(i / side)];
      const [cut, turn] = cells[i] as (typeof cells)[number];
      return cut ? halves(['a', 'b'], x, y, 1, turn) : [box('a', x, y, 1, 1)];
    });
    const merged = merges.reduce(mergedOnce, buildDrawing(side, side, polygons.flat()));
    return { ...merged, patches: merged.patches.map((one, i) => ({ ...one, role: named[i] as string })) };
  })
  .filter((drawing) => checkDrawing(drawing, 'body').length === 0);

function mergedOnce(drawing: Drawing, [first, second]: readonly [number, number]): Drawing {
  const patch = first % drawing.patches.length;
  const beside = neighboursOf(drawing)[patch] ?? [];
  const other = beside[second % beside.length];
  if (other === undefined) return drawing;
  const merged = maybeMergePatches(drawing, patch, other);
  return merged.ok ? merged.value : drawing;
}

/** Everything that stands on upright and level lines, its units apart. */
export const drawings = fc.oneof(slicingDrawings, slantedDrawings, roomDrawings);
