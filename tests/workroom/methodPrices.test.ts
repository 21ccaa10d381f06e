import { describe, expect, test } from 'vitest';
import type { Pattern } from '../../src/shared/pattern/schema.ts';
import type { Method } from '../../src/shared/piecing/method.ts';
import { methodNamed, methodsFor } from '../../src/shared/piecing/methods/index.ts';
import type { Unit } from '../../src/shared/piecing/piecing.ts';
import { runsOf } from '../../src/shared/quilt/sized.ts';
import { methodPrices, unitsNeeded } from '../../src/shared/workroom/methodPrices.ts';
import { oversizeOf } from '../../src/shared/workroom/oversize.ts';
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
        // Pieces that become one patch by themselves are cut for every unit.
        const first = price.cuts.find(({ cut }) => cut.patches > 1 || cut.stripSet !== undefined);
        if (first === undefined) continue;
        const batches = first.count.value / first.cut.count;
        expect(batches * price.plan.yield).toBe(unit.needed + price.spare);
        expect(price.spare).toBeLessThan(price.plan.yield);
      }
    }
  });

  // By hand, as the trade cuts them: a rectangle cut from corner to corner gives two triangles of one hand. Three units one way
  // and three the other take two rectangles of each fabric for each hand, eight in all, and one unit of each hand is left over.
  test('each hand has batches of its own, whichever way is chosen now', () => {
    const unit: Unit = {
      kind: 'half-rectangle',
      key: 'r',
      width: 2,
      height: 1,
      diagonal: 'rising',
      roles: ['a', 'b'],
    };
    const scale = { grid: 2, seam: 1 / 4, step: 1 / 8 };
    for (const id of ['half-rectangle', 'template']) {
      const method = methodNamed(id) as Method;
      const others = methodsFor(unit).filter((one) => one.id !== id);
      const plan = method.plan(unit, scale);
      const counts = { perBlock: 1, perBlockOnSide: 0, needed: 6, reversed: 3, runs: runsOf(plan, 6, 3) };
      const prices = methodPrices({ unit, method, others, plan, oversize: 0, ...counts }, scale, 40);
      const cut = prices.find((price) => price.method.id === 'half-rectangle');
      expect([cut?.pieces.value, cut?.spare]).toEqual([8, 2]);
      // Round templates every unit is cut by itself: two patches each.
      const round = prices.find((price) => price.method.id === 'template');
      expect([round?.pieces.value, round?.spare]).toEqual([12, 0]);
    }
  });

  test('the way chosen comes first, and is the only one marked', () => {
    for (const { block, unit } of all) {
      const prices = methodPrices(unit, { grid: block.grid, seam: house.seam, step: house.step }, house.usableWidth);
      expect(prices.map(({ chosen }) => chosen)).toEqual(prices.map((_, i) => i === 0));
    }
  });

  test('every trim is counted, once for each unit that is trimmed, at half a minute', () => {
    for (const { block, unit } of all) {
      for (const { plan, trimming, spare } of methodPrices(
        unit,
        { grid: block.grid, seam: house.seam, step: house.step },
        house.usableWidth,
      )) {
        if (plan.trims !== undefined) continue;
        expect(trimming.value).toBe(plan.trimmed ? (unit.needed + spare) / 2 : 0);
      }
    }
  });

  test('no way wastes less than nothing, and cutting larger wastes more', () => {
    for (const { block, unit } of all) {
      const scale = { grid: block.grid, seam: house.seam, step: house.step };
      const larger = { ...unit, oversize: unit.oversize + 1 };
      const [prices, others] = [unit, larger].map((one) => methodPrices(one, scale, house.usableWidth));
      prices?.forEach(({ method, waste, plan, chosen }, i) => {
        expect(waste.value, method.id).toBeGreaterThanOrEqual(-0.5);
        // The chosen way stays as it was planned; the others are planned anew.
        if (plan.trimmed && !chosen) expect(others?.[i]?.waste.value).toBeGreaterThan(waste.value);
      });
    }
  });

  test('printed sizes stand beside the exact ones', () => {
    for (const { block, unit } of all) {
      for (const { cuts, plan } of methodPrices(
        unit,
        { grid: block.grid, seam: house.seam, step: house.step },
        house.usableWidth,
      )) {
        for (const { cut, exact } of cuts) {
          // What is trimmed is cut at the next mark up; twice that for eight at a time.
          if (plan.trimmed) expect(cut.width.value - exact.width).toBeGreaterThanOrEqual(-1e-9);
          expect(Math.abs(cut.width.value - exact.width)).toBeLessThanOrEqual(3 * house.step);
        }
      }
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

describe('how much is added to be trimmed', () => {
  const unit: Unit = { kind: 'hst', key: 'hst 2x2 a/b', width: 2, height: 2, roles: ['a', 'b'] };

  test('is what the block says of the unit, else of its kind, else what the house says, else nothing', () => {
    const plain = { ...house, oversize: undefined };
    const own = { ...house, oversize: { hst: 0.125 } };
    expect(oversizeOf(unit, undefined, plain)).toBe(0);
    expect(oversizeOf(unit, undefined, own)).toBe(0.125);
    expect(oversizeOf(unit, { oversize: { hst: 0.25 } }, own)).toBe(0.25);
    expect(oversizeOf(unit, { oversize: { hst: 0.25, [unit.key]: 0 } }, own)).toBe(0);
  });

  // North Hampshire Quilters (guild), block instructions: 3 finished from 4⅛ squares, trimmed to 3½: ¼ more than 3⅞.
  test('makes the squares of half-square triangles that much larger', () => {
    const demo = demoPattern();
    const cut = (oversize: Pattern['house']['oversize']) => {
      const sizes = workOut({ ...demo, house: { ...demo.house, oversize } }).sizes.flatMap(({ blocks }) => blocks);
      const units = sizes.flatMap(({ units: made, grid }) => made.map((one) => ({ ...one, grid })));
      return units
        .filter(({ unit: { kind }, grid }) => kind === 'hst' && grid > 0)
        .map(({ plan }) => plan.cuts[0]?.width.value);
    };
    const [usual, larger] = [cut(undefined), cut({ hst: 0.25 })];
    expect(usual.length).toBeGreaterThan(0);
    usual.forEach((width, i) => {
      expect(larger[i]).toBe((width ?? 0) + 0.25);
    });
  });
});
