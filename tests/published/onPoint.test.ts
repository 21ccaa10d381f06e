import { describe, expect, test } from 'vitest';
import { explain, given } from '../../src/shared/measure/traced.ts';
import { houseSchema } from '../../src/shared/pattern/schema.ts';
import { cornerSquare, halfAdd, quarterAdd, sideSquare } from '../../src/shared/quilt/onPoint/triangleCuts.ts';
import { workOut } from '../../src/shared/workroom/workOut.ts';
import { testPattern } from '../helpers/fixtures.ts';

const house = houseSchema.parse({});

describe('setting triangles', () => {
  // Moonlight Quilters (guild), on-point settings, for 6 and 12; the rest is the same formula recomputed with √2:
  // block × √2 + 1¼ cut twice, block × √2 ÷ 2 + 7/8 cut once, up to 1/8.
  test.each([
    [6, 9.75, 5.125],
    [7, 11.25, 5.875],
    [8, 12.625, 6.625],
    [9, 14, 7.25],
    [10, 15.5, 8],
    [11, 16.875, 8.75],
    [12, 18.25, 9.375],
  ])('of a %d-inch block are cut from squares of %d and %d', (block, side, corner) => {
    const finished = given(block, 'finished');
    expect(sideSquare(finished, 0, house).value).toBe(side);
    expect(cornerSquare(finished, 0, house).value).toBe(corner);
  });

  // 6 mm and 7.5 mm seams are both in use; adds come from s(2+√2) and s(2+2√2), up to the metric ruler: 7.5 mm: 25.6 → 26 mm,
  // 36.2 → 37 mm. Computed.
  test('with a metric seam add what a metric ruler shows', () => {
    const mm = 1 / 25.4;
    const metric = { ...house, seam: 7.5 * mm, step: mm };
    expect(halfAdd(metric) / mm).toBeCloseTo(25.6, 1);
    expect(quarterAdd(metric) / mm).toBeCloseTo(36.2, 1);
    const block = given(200 * mm, 'finished');
    expect(sideSquare(block, 0, metric).value / mm).toBeCloseTo(Math.ceil(200 * Math.SQRT2 + 37), 6);
    expect(cornerSquare(block, 0, metric).value / mm).toBeCloseTo(Math.ceil((200 * Math.SQRT2) / 2 + 26), 6);
  });

  test('say how they come about', () => {
    expect(explain(sideSquare(given(12, 'finished'), 0, house))).toBe(
      '18¼″ = 16.971 from corner to corner + 1¼ for seams, up to the next ⅛',
    );
    expect(explain(cornerSquare(given(12, 'finished'), 0, house))).toBe(
      '9⅜″ = 8.485 half from corner to corner + ⅞ for seams, up to the next ⅛',
    );
  });

  // Plain geometry: twice the float at each end of the edge, for both kinds.
  test('are larger by twice the float where blocks float', () => {
    const finished = given(6, 'finished');
    expect(sideSquare(finished, 2, house).value).toBe(9.75 + 4);
    expect(cornerSquare(finished, 2, house).value).toBe(5.125 + 4);
  });
});

describe('a quilt on point', () => {
  const worked = workOut(testPattern('diamonds'));

  // Plain geometry: a × b blocks at the edges and (a − 1) × (b − 1) between, 2(a − 1) + 2(b − 1) side triangles, 4 corners.
  test.each([
    ['crib', 2, 3],
    ['double', 5, 6],
    ['runner', 4, 1],
    ['cushion', 1, 1],
  ])('%s has as many blocks and triangles as its diagonals hold', (id, across, down) => {
    const size = worked.sizes.find((one) => one.size.id === id);
    const { blocks, triangles } = size?.quilt ?? { blocks: [], triangles: [] };
    expect(blocks).toHaveLength(across * down + (across - 1) * (down - 1));
    expect(triangles.filter(({ use }) => use === 'side')).toHaveLength(2 * (across - 1) + 2 * (down - 1));
    expect(triangles.filter(({ use }) => use === 'corner')).toHaveLength(4);
  });

  // 5 × 10½ × √2 = 74.246, which ends on the next eighth.
  test('rounded up it ends on the ruler, and borders fit it without easing', () => {
    const double = worked.sizes.find(({ size }) => size.id === 'double');
    expect(double?.quilt.centre.width.value).toBe(74.25);
    expect(worked.findings.filter(({ level }) => level !== 'note')).toEqual([]);
  });

  test('exact, its border is cut to the nearest mark and the difference is told', () => {
    const exact = workOut(testPattern('lines'));
    const [first] = exact.findings;
    expect(first).toMatchObject({ level: 'look', mend: expect.stringContaining('rounded up') });
    expect(Math.abs(first?.by ?? 1)).toBeLessThanOrEqual(1 / 16);
  });
});
