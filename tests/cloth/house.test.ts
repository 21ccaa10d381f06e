import { describe, expect, test } from 'vitest';
import { yardsFor } from '../../src/shared/cloth/yards.ts';
import { explain, given } from '../../src/shared/measure/traced.ts';
import type { WorkedSize } from '../../src/shared/workroom/workedOut.ts';
import { workOut } from '../../src/shared/workroom/workOut.ts';
import { demoPattern } from '../helpers/starters.ts';

const demo = demoPattern();

describe('cloth that shrinks', () => {
  test('is bought so long that enough is left, rounded up last', () => {
    const house = { ...demo.house, squaring: 2, yardStep: 0.125, shrinkage: 5 };
    // By hand: 100 + 2 = 102 inches; 102 ÷ 0.95 = 107.37; ÷ 36 = 2.98 yards; up to 3. Without the wash 2.83, up to 2⅞.
    const yards = yardsFor(given(100, 'of strips'), house);
    expect(yards.value).toBe(3);
    expect(explain(yards)).toContain('left by the wash');
    expect(yardsFor(given(100, 'of strips'), { ...house, shrinkage: 0 }).value).toBe(2.875);
  });

  test('never takes less than cloth that does not', () => {
    const worked = workOut({ ...demo, house: { ...demo.house, shrinkage: 3 } });
    workOut(demo).sizes.forEach(({ cloth }, i) => {
      const washed = (worked.sizes[i] as WorkedSize).cloth;
      cloth.needs.forEach((need, j) => {
        expect(washed.needs[j]?.yards.value).toBeGreaterThanOrEqual(need.yards.value);
      });
      expect(washed.backing.yards.value).toBeGreaterThanOrEqual(cloth.backing.yards.value);
    });
  });
});

describe('spare pieces', () => {
  test('are cut of every piece of the blocks and said to be spare', () => {
    const worked = workOut({ ...demo, house: { ...demo.house, spares: 2 } });
    workOut(demo).sizes.forEach(({ cloth }, i) => {
      const lines = (worked.sizes[i] as WorkedSize).cloth.pieces;
      cloth.pieces.forEach((line, j) => {
        const own = lines[j];
        const more = line.cutAs === 'piece' && line.use.some(({ block }) => block !== null) ? 2 : 0;
        expect(own?.count.value).toBe(line.count.value + more);
        expect(own?.spare).toBe(line.spare + more);
      });
    });
  });
});
