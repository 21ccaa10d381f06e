import { describe, expect, test } from 'vitest';
import { methodPrices, unitsNeeded } from '../../src/shared/workroom/methodPrices.ts';
import { workOut } from '../../src/shared/workroom/workOut.ts';
import { demoPattern } from '../helpers/starters.ts';

const worked = workOut(demoPattern());
const { house } = worked.pattern;
const all = worked.sizes.flatMap((size) =>
  size.blocks.flatMap((block) => block.units.map((unit) => ({ block, unit }))),
);

describe('what each way of making a unit costs', () => {
  test('whole batches make what is needed and the spares, no more', () => {
    for (const { block, unit } of all) {
      expect(unitsNeeded(unit, block.count).value).toBe(unit.needed);
      for (const price of methodPrices(
        unit,
        { grid: block.grid, seam: house.seam, step: house.step },
        house.usableWidth,
      )) {
        const [first] = price.cuts;
        if (first === undefined) continue;
        const batches = first.count.value / first.cut.count;
        expect(batches * price.plan.yield).toBe(unit.needed + price.spare);
        expect(price.spare).toBeLessThan(price.plan.yield);
      }
    }
  });

  test('the way chosen comes first, and is the only one marked', () => {
    for (const { block, unit } of all) {
      const prices = methodPrices(unit, { grid: block.grid, seam: house.seam, step: house.step }, house.usableWidth);
      expect(prices.map(({ chosen }) => chosen)).toEqual(prices.map((_, i) => i === 0));
    }
  });

  // A square of 40 inches by 1 inch is one inch of cloth 40 inches wide: computed.
  test('the cloth is the area of the pieces over the usable width', () => {
    for (const { block, unit } of all) {
      const [price] = methodPrices(unit, { grid: block.grid, seam: house.seam, step: house.step }, 40);
      const area = price?.cuts.reduce(
        (sum, { cut, count }) => sum + cut.width.value * cut.height.value * count.value,
        0,
      );
      expect(Math.abs((price?.cloth.value ?? 0) - (area ?? 0) / 40)).toBeLessThanOrEqual(1 / 16);
    }
  });
});
