import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { buildDrawing } from '../../../src/shared/drawing/build.ts';
import { turnPoint } from '../../../src/shared/drawing/turn.ts';
import { pieceDrawing } from '../../../src/shared/piecing/find/pieceDrawing.ts';
import { planCost } from '../../../src/shared/piecing/find/planCost.ts';
import { likenessIn } from '../../../src/shared/piecing/likeness.ts';
import type { BlockPart } from '../../../src/shared/piecing/piecing.ts';
import { drawings } from './drawings.ts';
import { cheapestOfAll } from './exhaustive.ts';
import { box, halves } from './shapes.ts';

describe('the plan that is found', () => {
  test('costs no less than the cheapest of all plans of a small drawing, and at most a tenth more', () => {
    fc.assert(
      fc.property(drawings, (drawing) => {
        fc.pre(drawing.patches.length <= 7);
        const { root, units } = pieceDrawing(drawing);
        const best = units.some(({ kind }) => kind === 'pieced') ? null : cheapestOfAll(drawing);
        fc.pre(best !== null);
        const ratio = planCost(root, units) / (best as number);
        expect(ratio).toBeGreaterThan(1 - 1e-9);
        expect(ratio).toBeLessThan(1.1);
      }),
      { numRuns: 60 },
    );
  });

  test('sews a unit of the trade rather than its patches one by one', () => {
    const squares = [0, 1].flatMap((x) => [0, 1].map((y) => box((x + y) % 2 === 0 ? 'a' : 'b', x, y, 1, 1)));
    const strip = [box('c', 2, 0, 1, 2)];
    const { units } = pieceDrawing(buildDrawing(3, 2, [...squares, ...strip]));
    expect(units.map(({ kind }) => kind).sort()).toEqual(['four-patch', 'plain']);
  });

  test('makes equal parts alike: a block of four quarters, each turned, is four of one part', () => {
    const quarter = [
      ...halves(['a', 'b'], 0, 0, 1, 0),
      ...halves(['a', 'c'], 1, 0, 1, 1),
      ...halves(['b', 'a'], 1, 1, 1, 0),
      box('c', 0, 1, 1, 1),
    ];
    const placed = (x: number, y: number, quarters: 0 | 1 | 2 | 3) =>
      quarter.map(({ role, corners }) => ({
        role,
        corners: corners.map((corner) => {
          const turned = turnPoint(corner, { quarters, mirrored: false }, 2, 2);
          return { x: turned.x + x, y: turned.y + y };
        }),
      }));
    const four = buildDrawing(4, 4, [...placed(0, 0, 0), ...placed(2, 0, 1), ...placed(2, 2, 2), ...placed(0, 2, 3)]);
    const { root, units } = pieceDrawing(four);
    const quarters = (part: BlockPart): readonly BlockPart[] =>
      part.box.width === 2 && part.box.height === 2 ? [part] : part.kind === 'row' ? part.parts.flatMap(quarters) : [];
    expect(quarters(root)).toHaveLength(4);
    const likeness = likenessIn(units);
    expect(new Set(quarters(root).map((part) => likeness(part).key))).toHaveProperty('size', 1);
  });
});
