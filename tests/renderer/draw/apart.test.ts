import { describe, expect, test } from 'vitest';
import { stagesOf, takenApart } from '../../../src/renderer/block/draw/apart.ts';
import { lower } from '../../../src/shared/piecing/lower.ts';
import { starter, starterBook } from '../../helpers/starters.ts';
import { pieced, three } from './blocks.ts';

describe('a block taken apart', () => {
  const piecing = pieced(4, three);
  const all = stagesOf(piecing);

  test('sewn together nothing has moved', () => {
    expect(takenApart(piecing, 0).by.every(({ x, y }) => x === 0 && y === 0)).toBe(true);
    expect(takenApart(piecing, 0).box).toEqual({ x: 0, y: 0, width: 4, height: 4 });
  });

  test('what is sewn last comes apart first: the two upper squares still together', () => {
    const [left, lower2, right] = takenApart(piecing, 1).by;
    expect(left).toEqual(right);
    expect(lower2?.y).toBeGreaterThan(left?.y ?? 0);
  });

  test('in single patches no two have moved alike, and it only ever grows', () => {
    const open = takenApart(piecing, all.between + all.within);
    expect(new Set(open.by.map(({ x, y }) => `${x} ${y}`)).size).toBe(3);
    const widths = [0, 0.5, 1, 1.5, 2].map((stage) => takenApart(piecing, stage).box.height);
    expect(widths).toEqual([...widths].sort((a, b) => a - b));
  });

  test.each(['ohio-star', 'eight-point-star', 'log-cabin', 'drunkards-path', 'bright-hopes'])(
    '%s opens to the last patch',
    (id) => {
      const lowered = lower(starter(id), {}, starterBook(), '');
      if (!lowered.ok) throw new Error(id);
      const { between, within } = stagesOf(lowered.value);
      const whole = takenApart(lowered.value, 0).box;
      const open = takenApart(lowered.value, between + within);
      expect(open.by).toHaveLength(lowered.value.drawing.patches.length);
      expect(open.box.width * open.box.height).toBeGreaterThan(whole.width * whole.height);
      expect(open.by.every(({ x, y }) => Number.isFinite(x) && Number.isFinite(y))).toBe(true);
    },
  );
});
