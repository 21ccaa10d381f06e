import { describe, expect, test } from 'vitest';
import { backingNeed, battingNeed } from '../../src/shared/cloth/backing.ts';
import { bindingNeed } from '../../src/shared/cloth/binding.ts';
import { blockLines, unitCuts } from '../../src/shared/cloth/blockPieces.ts';
import type { PieceLine } from '../../src/shared/cloth/cloth.ts';
import { cuttingPlan } from '../../src/shared/cloth/cuttingPlan.ts';
import { widthsFor } from '../../src/shared/cloth/join.ts';
import { uprightIn } from '../../src/shared/cloth/upright.ts';
import { yardsFor } from '../../src/shared/cloth/yards.ts';
import { count, explain, given } from '../../src/shared/measure/traced.ts';
import type { House, Pattern } from '../../src/shared/pattern/schema.ts';
import { methodNamed } from '../../src/shared/piecing/methods/index.ts';
import type { Unit } from '../../src/shared/piecing/piecing.ts';
import type { SizedBlock } from '../../src/shared/quilt/sized.ts';
import { quiltOf } from '../cloth/quilts.ts';
import { demoPattern } from '../helpers/starters.ts';

function house(usableWidth: number, squaring = 0): House {
  return { ...demoPattern().house, seam: 0.25, step: 0.125, yardStep: 0.125, usableWidth, squaring };
}

function pattern(usableWidth: number, beyond: number): Pattern {
  const demo = demoPattern();
  return {
    ...demo,
    house: house(usableWidth),
    backing: { ...demo.backing, beyond },
    binding: { ...demo.binding, strip: 2.5 },
  };
}

/**
 * American Patchwork & Quilting, patterns. The binding strips are printed as 2½ × 42, but the counts follow from (perimeter + 10) ÷
 * 40; they come out the same at 42. The largest of the three prints a batting 3¼ beyond each side: 3 in whole inches.
 */
const QUILTS = [
  { width: 21.5, height: 21.5, beyond: 4, batting: [30, 30], backing: 7 / 8, binding: 3 },
  { width: 37.5, height: 43.5, beyond: 4, batting: [46, 52], backing: 2 + 5 / 8, binding: 5 },
  { width: 50.5, height: 59.5, beyond: 3, batting: [57, 66], backing: 3 + 1 / 4, binding: 6 },
] as const;

describe.each(QUILTS)('a quilt of $width × $height', ({ width, height, beyond, batting, backing, binding }) => {
  test.each([40, 42])('is bound with the published number of strips at %i inches', (usable) => {
    expect(bindingNeed(quiltOf(width, height), pattern(usable, beyond)).strips.value).toBe(binding);
  });

  test.each([40, 42])('takes the published backing at %i inches', (usable) => {
    expect(backingNeed(quiltOf(width, height), pattern(usable, beyond)).yards.value).toBe(backing);
  });

  test('takes the published batting', () => {
    const need = battingNeed(quiltOf(width, height), pattern(40, beyond));
    expect([need.width.value, need.height.value]).toEqual(batting);
  });
});

// Computed: strips joined on the diagonal lose their width in every join. Round 95 × 95, 10 strips of 40 reach 400 − 9 × 2½ =
// 377½, not 380; 11 reach 415. Published counts above have fewer joins than their 10 inches allow for.
test('a large quilt is bound with as many strips as its joins take up', () => {
  const need = bindingNeed(quiltOf(95, 95), pattern(40, 4));
  expect(need.strips.value).toBe(11);
  for (const side of [9, 34, 60, 72, 95, 110, 127]) {
    const { strips, length } = bindingNeed(quiltOf(side, side), pattern(40, 4));
    const joined = strips.value * 40 - (strips.value - 1) * 2.5;
    expect(joined).toBeGreaterThanOrEqual(4 * side + 2 * 2.5);
    expect(strips.value * 40).toBeGreaterThanOrEqual(length.value);
  }
});

// Computed: 46 × 52 takes two panels either way; 2 × 46 = 92 across is less than 2 × 52 = 104 down.
test('backing panels run the way that takes less cloth', () => {
  const need = backingNeed(quiltOf(37.5, 43.5), pattern(40, 4));
  expect(need).toMatchObject({ seams: 'across', panels: { value: 2 }, panelLength: { value: 46 } });
  expect(backingNeed(quiltOf(21.5, 21.5), pattern(40, 4))).toMatchObject({ seams: 'none', panels: { value: 1 } });
});

function squares(side: number, many: number): PieceLine {
  const size = given(side, '');
  return {
    letter: 'A',
    fabric: 'sea',
    width: size,
    height: size,
    count: count(many, ''),
    spare: 0,
    use: [],
    cutAs: 'piece',
  };
}

// A published table takes 48 squares of 3½ from four strips of 42, with no slack at all; at 40 it takes five (computed).
test.each([
  [42, 4],
  [40, 5],
])('48 squares of 3½ at %i inches take %i strips, and fewer cannot do', (usable, strips) => {
  const plan = cuttingPlan('sea', [squares(3.5, 48)], house(usable));
  expect(plan).toMatchObject({ stripCount: strips, proven: true, bound: strips * 3.5 });
});

// Common practice: ⅛ yd is 4½ inches, and so on by eighths to ⅞ yd, 31½.
test.each([1, 2, 3, 4, 5, 6, 7])('%i eighths of a yard', (eighths) => {
  expect(yardsFor(given(eighths * 4.5, 'of strips'), house(40)).value).toBe(eighths / 8);
  expect(yardsFor(given(eighths * 4.5 + 0.125, 'of strips'), house(40)).value).toBe((eighths + 1) / 8);
});

// Computed: n widths of 40, joined by ¼-inch seams, reach 40n − ½(n − 1): 40, 79½, 119, 158½.
test.each([
  [40, 1],
  [40.125, 2],
  [79.5, 2],
  [79.625, 3],
  [119, 3],
  [121, 4],
  [158.5, 4],
])('a length of %d is joined from %i widths of 40', (reach, widths) => {
  expect(widthsFor(given(reach, ''), house(40)).value).toBe(widths);
});

// Quilting magazine, August 2019 issue (scan): 1½ finished, eight from a pair of 4¾ squares; 15 pairs give 120.
test('120 half-square triangles eight at a time take 15 pairs of 4¾ squares', () => {
  const unit: Unit = { kind: 'hst', key: 'hst', width: 1, height: 1, roles: ['sky', 'sea'] };
  const method = methodNamed('hst-eight');
  if (method === undefined || method === null) throw new Error('no such method');
  const plan = method.plan(unit, { grid: 1.5, seam: 0.25, step: 0.125 });
  const runs = [{ mirrored: false, needed: 120, before: 0 }];
  const sized = {
    unit,
    method,
    others: [],
    plan,
    oversize: 0,
    perBlock: 120,
    perBlockOnSide: 0,
    needed: 120,
    reversed: 0,
    runs,
  };
  const size = { width: given(2, ''), height: given(2, '') };
  const block: SizedBlock = { id: 'A', grid: 1.5, count: 1, units: [sized], unfinished: size };
  const lines = blockLines(unitCuts([block], {}, {}), uprightIn({ fabrics: [] }, { blocks: [] }));
  const both = lines.flatMap((line) => line.use.map((use) => [line.width.value, use.count]));
  expect(both).toEqual([
    [4.75, 15],
    [4.75, 15],
  ]);
  expect(explain(lines[0]?.count ?? count(0, ''))).toContain('120 units ÷ 8 at a time');
});
