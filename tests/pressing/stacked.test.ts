import { describe, expect, test } from 'vitest';
import { workOut } from '../../src/shared/workroom/workOut.ts';
import { demoPattern } from '../helpers/starters.ts';

const worked = workOut(demoPattern());

describe('where seams do not nest', () => {
  test('every one of them has its spot on the quilt, on the edge of a block', () => {
    for (const { quilt, pressing } of worked.sizes) {
      expect(pressing.stacked).toHaveLength(pressing.stacks);
      const xs = new Set(quilt.blocks.map(({ box }) => box.x));
      const ys = new Set(quilt.blocks.map(({ box }) => box.y));
      for (const { x, y } of pressing.stacked) expect(xs.has(x) || ys.has(y)).toBe(true);
    }
  });

  test('every one of them has its spot inside the block', () => {
    for (const { piecing, pressing } of worked.blocks) {
      expect(pressing.stacked).toHaveLength(pressing.stacks);
      const { width, height } = piecing.drawing;
      for (const { x, y } of pressing.stacked) {
        expect(x).toBeGreaterThanOrEqual(0);
        expect(x).toBeLessThanOrEqual(width);
        expect(y).toBeGreaterThanOrEqual(0);
        expect(y).toBeLessThanOrEqual(height);
      }
    }
  });
});
