import { describe, expect, test } from 'vitest';
import { borderWays } from '../../src/shared/cloth/borderWays.ts';
import { doubleArea } from '../../src/shared/drawing/drawing.ts';
import { explain } from '../../src/shared/measure/traced.ts';
import { stripOutline } from '../../src/shared/quilt/mitre.ts';
import type { WorkedSize } from '../../src/shared/workroom/workedOut.ts';
import { workOut } from '../../src/shared/workroom/workOut.ts';
import { testPattern } from '../helpers/fixtures.ts';

const pattern = testPattern('quay-wall');
const worked = workOut(pattern);
const [table, double] = worked.sizes as [WorkedSize, WorkedSize];

/** Lengths of the strips of a border in the order they are sewn. */
function lengths({ quilt }: WorkedSize, border: string): readonly number[] {
  return quilt.strips.filter((strip) => strip.border === border).map(({ cutLength }) => cutLength.value);
}

describe('borders with cornerstones', () => {
  test('have all four strips as long as the sides they are sewn to, and four squares', () => {
    // 3 × 9 finished blocks: 27 and a seam on each side.
    expect(lengths(table, 'line')).toEqual([27.5, 27.5, 27.5, 27.5]);
    const corners = table.quilt.patches.filter(({ border }) => border === 'line');
    expect(corners.map(({ fabric, cut }) => [fabric, cut.width.value])).toEqual(Array(4).fill(['wrack', 1.5]));
  });

  test('ends first, the squares are sewn to the sides', () => {
    expect(lengths(double, 'kerb')).toEqual([63.5, 63.5, 81.5, 81.5]);
    const corners = double.quilt.patches.filter(({ border }) => border === 'kerb');
    expect(corners.map(({ box }) => [box.x, box.y])).toEqual([
      [8, 8],
      [8, 8 + 2.5 + 81],
      [8 + 2.5 + 63, 8],
      [8 + 2.5 + 63, 8 + 2.5 + 81],
    ]);
  });

  test('squares take the border’s fabric unless they have their own', () => {
    expect(double.quilt.patches[0]?.fabric).toBe('sand');
  });
});

describe('mitred borders', () => {
  const strips = table.quilt.strips.filter(({ border }) => border === 'wall');

  // Plain geometry: the diagonal of a square of the border's width.
  test('meet in seams as long as the diagonal of the border’s width', () => {
    for (const { mitre } of strips) expect(mitre?.value).toBeCloseTo(6 * Math.SQRT2, 9);
  });

  test('lie edge to edge: neighbours share both ends of the seam, and the four cover the border', () => {
    const outlines = strips.map(stripOutline);
    const area = outlines.reduce((sum, outline) => sum + Math.abs(doubleArea(outline)) / 2, 0);
    const { width, height } = table.quilt.finished;
    expect(area).toBeCloseTo(width.value * height.value - (width.value - 12) * (height.value - 12), 9);
    const [left, right, top, bottom] = outlines.map((outline) => outline.map(({ x, y }) => `${x} ${y}`));
    for (const side of [left, right])
      for (const end of [top, bottom]) expect(side?.filter((point) => end?.includes(point))).toHaveLength(2);
  });

  test('say why they are cut so long', () => {
    expect(explain(strips[0]?.cutLength as never)).toBe('50½″ = 34½ across the top + 2 × 6 wall finished + 4 to spare');
  });
});

describe('the cloth that ways of cutting a border take', () => {
  const wall = pattern.borders.find(({ id }) => id === 'wall');
  const kerb = pattern.borders.find(({ id }) => id === 'kerb');
  if (wall === undefined || kerb === undefined) throw new Error('no such borders');

  test('lengthwise: as long as the longest strip, without a join', () => {
    const ways = borderWays(double.quilt, wall, pattern);
    const along = ways.find(({ way }) => way === 'lengthwise');
    // Four strips 8½ wide lie side by side in 40 inches: 86½ + 16 + 4 along the sides.
    expect([along?.joins, along?.cloth.value, along?.chosen]).toEqual([0, 106.5, true]);
  });

  test('across: strips joined end to end; a diagonal join loses the strip’s width and not two seams', () => {
    const [straight, diagonal] = borderWays(double.quilt, kerb, pattern);
    // Sides: 2 × 81½ = 163; each strip of 40 after the first reaches 39½ further, so 5, the last of them 5 long. Ends: 127 from
    // 4, the last 8½ long. Both last ones come from one strip: 8 strips in all.
    expect([straight?.cloth.value, straight?.joins]).toEqual([3 * 8, 7]);
    // On the diagonal 37 further: the last ones are 15 and 16 long, and still come from one strip.
    expect([diagonal?.cloth.value, diagonal?.joins]).toEqual([3 * 8, 7]);
    const joined = double.cloth.pieces.filter(({ use }) => use.some(({ unit }) => unit === 'kerb'));
    expect(joined.map(({ lostInJoin }) => lostInJoin?.value)).toEqual([3, 3, undefined]);
  });
});

test('all of it fits', () => {
  expect(worked.findings).toEqual([]);
});
