import { describe, expect, test } from 'vitest';
import { cutKey } from '../../src/shared/cloth/letters.ts';
import { given } from '../../src/shared/measure/traced.ts';
import type { Method } from '../../src/shared/piecing/method.ts';
import { halfRectangle } from '../../src/shared/piecing/methods/halfRectangle.ts';
import { threePatchTriangles } from '../../src/shared/piecing/methods/threePatchTriangles.ts';
import type { Unit } from '../../src/shared/piecing/piecing.ts';
import { batchesOf, type Run, type SizedBlock } from '../../src/shared/quilt/sized.ts';
import { madeTogether } from '../../src/shared/workroom/madeTogether.ts';

const half = (diagonal: 'rising' | 'falling'): Unit => ({
  kind: 'half-rectangle',
  key: diagonal,
  width: 2,
  height: 1,
  diagonal,
  roles: ['a', 'b'],
});
const threePatch = (roles: readonly [string, string, string]): Unit => ({
  kind: 'three-patch',
  key: roles.join('/'),
  width: 3,
  height: 3,
  roles,
});

function block(id: string, method: Method, ...wanted: readonly (readonly [Unit, number, number?])[]): SizedBlock {
  const unfinished = { width: given(2, ''), height: given(2, '') };
  const units = wanted.map(([unit, straight, mirrored = 0]) => {
    const run = (needed: number, isMirrored: boolean): Run => ({ mirrored: isMirrored, needed, before: 0 });
    const runs = [run(straight, false), run(mirrored, true)].filter(({ needed }) => needed > 0);
    const plan = method.plan(unit, { grid: 2, seam: 1 / 4, step: 1 / 8 });
    return {
      unit,
      method,
      others: [],
      plan,
      oversize: 0,
      perBlock: 1,
      perBlockOnSide: 0,
      needed: straight + mirrored,
      reversed: mirrored,
      runs,
    };
  });
  return { id, grid: 2, count: 1, units, unfinished };
}

/** Batches of each unit, and of all. */
function batches(...blocks: readonly SizedBlock[]): readonly number[] {
  const letters: Record<string, string> = {};
  for (const { id, units } of blocks)
    for (const { unit, plan } of units)
      plan.cuts.forEach(({ role, width }, i) => {
        letters[cutKey(id, unit.key, i)] = `${role}${width.value}`;
      });
  return madeTogether(blocks, letters).flatMap(({ units }) => units.map(batchesOf));
}

// Common practice: a rectangle cut from corner to corner gives two triangles of one hand; its mirror image takes another one.
describe('half-rectangle triangles, two from a rectangle of each fabric', () => {
  test('of three one way and three the other, each hand takes two batches', () => {
    expect(batches(block('A', halfRectangle, [half('rising'), 3], [half('falling'), 3]))).toEqual([2, 2]);
  });

  test('so they do when the others are for reversed blocks: four rectangles of each fabric, not three', () => {
    expect(batches(block('A', halfRectangle, [half('rising'), 3, 3]))).toEqual([4]);
  });

  test('what one block leaves over is used in the next, and in a reversed one of the other hand', () => {
    const [first, second] = [
      block('A', halfRectangle, [half('rising'), 3]),
      block('B', halfRectangle, [half('rising'), 3]),
    ];
    expect(batches(first, second)).toEqual([2, 1]);
    expect(batches(first, block('B', halfRectangle, [half('falling'), 1, 1]))).toEqual([2, 1]);
  });
});

// A square cut once gives two large triangles, a square cut twice four small ones; all of them serve either hand.
describe('three-patch quarter-square triangles, four from two squares cut once and one of each cut twice', () => {
  test('two of each hand are one batch', () => {
    const [one, other] = [threePatch(['a', 'b', 'c']), threePatch(['a', 'c', 'b'])];
    expect(batches(block('A', threePatchTriangles, [one, 2], [other, 2]))).toEqual([1, 0]);
    expect(batches(block('A', threePatchTriangles, [one, 3]), block('B', threePatchTriangles, [other, 3]))).toEqual([
      1, 1,
    ]);
  });
});
