import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addFoundSize } from '../../src/shared/pattern/edits/index.ts';
import type { Pattern } from '../../src/shared/pattern/schema.ts';
import { bedTarget, plainTarget } from '../../src/shared/quilt/find/target.ts';
import { findSizes } from '../../src/shared/workroom/findSizes.ts';
import { workOut } from '../../src/shared/workroom/workOut.ts';
import { testPattern } from '../helpers/fixtures.ts';
import { demoPattern } from '../helpers/starters.ts';

const patterns: readonly Pattern[] = ['ebb', 'causeway', 'quay-wall', 'diamonds', 'nets', 'harbour-wall'].map(
  testPattern,
);
const side = fc.integer({ min: 30, max: 110 });

describe('sizes for a target', () => {
  test('are ranked by their points, and each point has its reason', () => {
    fc.assert(
      fc.property(fc.constantFrom(...patterns), side, side, (pattern, width, height) => {
        const { sizes } = findSizes(pattern, plainTarget(width, height), 5);
        const points = sizes.map((size) => size.points);
        expect(points).toEqual([...points].sort((a, b) => a - b));
        for (const size of sizes) {
          expect(size.points).toBeCloseTo(
            size.reasons.reduce((sum, reason) => sum + reason.points, 0),
            9,
          );
        }
      }),
      { numRuns: 12 },
    );
  });

  test('taken into the pattern, one finishes as it was promised', () => {
    fc.assert(
      fc.property(fc.constantFrom(...patterns), side, side, (pattern, width, height) => {
        const [best] = findSizes(pattern, plainTarget(width, height), 1).sizes;
        if (best === undefined) throw new Error(`nothing for ${pattern.title}`);
        const after = addFoundSize.apply(pattern, { name: 'Found', ...best });
        const made = workOut(after).sizes.find(({ size }) => size.name === 'Found');
        const { width: wide, height: high } = made?.quilt.finished ?? best.finished;
        expect(wide.value).toBeCloseTo(width + best.off.width, 9);
        expect(high.value).toBeCloseTo(height + best.off.height, 9);
      }),
      { numRuns: 12 },
    );
  });

  test('the pattern’s own best size is found again for its own measure', () => {
    const demo = demoPattern();
    const lap = workOut({ ...demo, sizes: demo.sizes.map((size) => ({ ...size, borders: {} })) }).sizes[1];
    if (lap === undefined) throw new Error('no such size');
    const { width, height } = lap.quilt.finished;
    const { sizes, met } = findSizes(demo, plainTarget(width.value, height.value));
    expect(met).toBe(true);
    expect(sizes[0]).toMatchObject({ across: lap.size.across, down: lap.size.down, block: lap.size.block });
  });

  test('an odd count speaks against a size where the motif is reflected, an even one for it', () => {
    const { sizes } = findSizes(testPattern('causeway'), plainTarget(62.75, 77), 20);
    for (const { across, down, reasons } of sizes) {
      const odd = reasons.find(({ words }) => words.startsWith('An odd number'));
      expect(odd?.speaks).toBe(across % 2 === 0 && down % 2 === 0 ? undefined : 'against');
      if (across % 2 === 1 && down % 2 === 1) expect(odd?.words).toContain('across and down');
    }
  });

  test('a target that is smaller than one block says so, with the nearest', () => {
    const { met, findings, sizes } = findSizes(testPattern('harbour-wall'), plainTarget(5, 5));
    expect(met).toBe(false);
    expect(sizes.length).toBeGreaterThan(0);
    expect(findings[0]?.what).toMatch(/No size of this design comes near 5″ × 5″: the nearest is/);
    expect(findings[0]?.mend).toContain('single block with its borders is larger than that already');
  });
});

describe('on a metric ruler', () => {
  const mm = 1 / 25.4;
  const ebb = testPattern('ebb');
  const metric: Pattern = {
    ...ebb,
    house: { ...ebb.house, seam: 7.5 * mm, step: 5 * mm },
    sizes: ebb.sizes.slice(0, 1).map((size) => ({ ...size, block: 180 * mm })),
    borders: ebb.borders.map((border) => ({ ...border, width: 60 * mm })),
  };

  test('blocks and borders are found in whole centimetres and said in them', () => {
    const { sizes } = findSizes(metric, plainTarget(1500 * mm, 2000 * mm));
    for (const { block, borders, reasons } of sizes) {
      for (const length of [block, ...Object.values(borders)]) {
        expect(length / mm / 10).toBeCloseTo(Math.round(length / mm / 10), 6);
      }
      expect(reasons.map(({ words }) => words).join(' ')).toContain(' cm');
      expect(reasons.map(({ words }) => words).join(' ')).not.toMatch(/″| yd/);
    }
  });
});

test('a bed’s quilt hangs over three sides and is tucked about the pillows', () => {
  const { width, height } = bedTarget({ width: 60, length: 80, drop: 12, tuck: 8 }).size;
  expect([width.value, height.value]).toEqual([84, 100]);
});
