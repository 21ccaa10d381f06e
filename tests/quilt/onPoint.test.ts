import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { doubleArea } from '../../src/shared/drawing/drawing.ts';
import type { Pattern, Setting, Size } from '../../src/shared/pattern/schema.ts';
import { settingSchema } from '../../src/shared/pattern/settingSchema.ts';
import { pointsIn } from '../../src/shared/pressing/meet.ts';
import { outlineOf } from '../../src/shared/quilt/onPoint/pieces.ts';
import { workOut } from '../../src/shared/workroom/workOut.ts';
import { testPattern } from '../helpers/fixtures.ts';

const nets = testPattern('nets');
const eighths = (least: number, most: number) =>
  fc.integer({ min: least * 8, max: most * 8 }).map((marks) => marks / 8);

const strips = fc.array(fc.record({ fabric: fc.constantFrom('lamp', 'wrack'), width: eighths(0.5, 3) }), {
  minLength: 1,
  maxLength: 3,
});
const sashing = fc.record({ strips, cornerstones: fc.constant('stone') }, { requiredKeys: ['strips'] });
const triangles = fc.oneof(
  fc.record({ fabric: fc.constant('sand') }),
  fc.record({ fabric: fc.constant('sand'), fit: fc.constant('floating' as const), float: eighths(0.25, 4) }),
);
const reflect = fc.constantFrom('across' as const, 'down' as const, 'both' as const);
const setting: fc.Arbitrary<Setting> = fc
  .record(
    {
      kind: fc.constant('on-point'),
      motif: fc.constantFrom(['A'], ['A C:90', 'C A:180']),
      single: fc.constant([]),
      between: fc.constantFrom(['C'], ['A:270', 'C']),
      reflect,
      sashing,
      triangles,
    },
    { requiredKeys: ['kind', 'motif', 'single', 'triangles'] },
  )
  .map((one) => settingSchema.parse(one));

const size: fc.Arbitrary<Size> = fc.record({
  id: fc.constant('only'),
  name: fc.constant('Only'),
  across: fc.integer({ min: 1, max: 6 }),
  down: fc.integer({ min: 1, max: 6 }),
  block: fc.constantFrom(3, 6, 9, 12, 7.5),
  borders: fc.constant({}),
});

function pattern(own: Setting, only: Size): Pattern {
  return { ...nets, setting: own, sizes: [only] };
}

describe('any setting on point', () => {
  test('fits on the ruler’s marks, border and all, with every seam matched and nothing left over', () => {
    fc.assert(
      fc.property(setting, size, (own, only) => {
        const { sizes, findings } = workOut(pattern(own, only));
        expect(findings.filter(({ by }) => by !== undefined)).toEqual([]);
        const [one] = sizes;
        if (one === undefined) throw new Error(findings.map(({ what }) => what).join(' '));
        const { quilt, pressing, points, blocks } = one;
        const pieces = [...quilt.blocks, ...quilt.patches, ...quilt.triangles, ...quilt.strips];
        const area = pieces.reduce((sum, piece) => sum + doubleArea(outlineOf(piece)) / 2, 0);
        expect(area).toBeCloseTo(quilt.finished.width.value * quilt.finished.height.value, 5);
        const inBlocks = blocks.reduce((sum, { count }) => sum + count, 0);
        expect(inBlocks).toBe(quilt.blocks.length);
        expect(points).toBeGreaterThanOrEqual(pointsIn(pressing));
      }),
      { numRuns: 120 },
    );
  });

  test('covers the quilt: every piece lies inside it, and triangles reach its edges', () => {
    fc.assert(
      fc.property(setting, size, (own, only) => {
        const { sizes } = workOut({ ...pattern(own, only), borders: [] });
        const { quilt } = sizes[0] as (typeof sizes)[number];
        const { width, height } = quilt.finished;
        for (const piece of [...quilt.blocks, ...quilt.patches, ...quilt.triangles]) {
          for (const { x, y } of outlineOf(piece)) {
            expect(Math.min(x, y, width.value - x, height.value - y)).toBeGreaterThan(-1e-6);
          }
        }
        const corners = quilt.triangles.filter(({ use }) => use === 'corner').map(({ outline }) => outline);
        for (const [x, y] of [
          [0, 0],
          [width.value, 0],
          [width.value, height.value],
          [0, height.value],
        ] as const) {
          const reached = corners.filter((outline) =>
            outline.some((point) => Math.abs(point.x - x) < 1e-6 && Math.abs(point.y - y) < 1e-6),
          );
          expect(reached).toHaveLength(1);
        }
      }),
      { numRuns: 60 },
    );
  });

  test('growing keeps every smaller quilt in its corner', () => {
    fc.assert(
      fc.property(setting, size, fc.nat(3), fc.nat(3), (own, only, wider, higher) => {
        const { reflect: _about, ...plain } = own;
        const large = { ...only, across: only.across + wider, down: only.down + higher };
        const laid = (one: Size) =>
          workOut({ ...pattern(plain as Setting, one), borders: [] }).sizes[0]?.quilt.blocks ?? [];
        const at = new Map(laid(large).map((leaf) => [`${leaf.column} ${leaf.row}`, leaf]));
        for (const leaf of laid(only)) {
          const same = at.get(`${leaf.column} ${leaf.row}`);
          expect([same?.block, same?.turn]).toEqual([leaf.block, leaf.turn]);
        }
      }),
      { numRuns: 40 },
    );
  });
});

describe('what cannot stand on point', () => {
  test('blocks that are not square are refused, with the place', () => {
    const panes = testPattern('panes');
    const { findings, sizes } = workOut({
      ...panes,
      setting: { kind: 'on-point', motif: ['A'], single: [], triangles: { fabric: 'green' } },
    });
    expect(sizes).toEqual([]);
    expect(findings.map(({ what, where }) => [what, where.path])).toEqual([
      ['On point, blocks must be square; these are 11″ × 14″ in Wall.', 'setting.kind'],
    ]);
  });

  test('too many blocks are refused before anything is laid out', () => {
    const [first] = nets.sizes;
    const { findings } = workOut({ ...nets, sizes: [{ ...(first as Size), across: 200, down: 200 }] });
    expect(findings[0]?.what).toContain('79,601 blocks; the most is 2,500');
  });
});
