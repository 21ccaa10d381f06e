import { expect, test } from 'vitest';
import type { Size } from '../../src/shared/pattern/schema.ts';
import { findBundleSizes } from '../../src/shared/workroom/findBundleSizes.ts';
import { workOut } from '../../src/shared/workroom/workOut.ts';
import { testPattern } from '../helpers/fixtures.ts';

const lamps = testPattern('six-lamps');

function isEnough(across: number, down: number, block: number): boolean {
  const size: Size = { id: 'asked', name: 'Asked', across, down, block, borders: {} };
  return workOut({ ...lamps, sizes: [size] }).sizes[0]?.bundle?.oneIsEnough === true;
}

test('of every size that is found one bundle is enough, and for none larger in its blocks', () => {
  const { sizes, met, target } = findBundleSizes(lamps);
  expect(met).toBe(true);
  expect(sizes.length).toBeGreaterThan(1);
  for (const { across, down, block } of sizes) expect(isEnough(across, down, block)).toBe(true);
  const [best] = sizes;
  if (best === undefined) throw new Error('there is one');
  expect(best.finished).toEqual(target);
  expect(best.reasons[0]?.words).toMatch(/^One bundle is enough: \d+ of its 40 strips are cut\.$/);
  // The next shapes that are no more than half as long again as wide.
  const most = best.across * best.down;
  const next = [2, 3].flatMap((across) => [across, across + 1].map((down) => [across, down] as const));
  for (const [across, down] of next.filter(([a, d]) => a * d > most)) expect(isEnough(across, down, 16)).toBe(false);
});

test('a bundle that is enough for nothing, or none at all, is told', () => {
  const { bundle: _bundle, ...without } = lamps;
  expect(findBundleSizes(without).findings.map(({ what, where }) => [what, where.path])).toEqual([
    ['The pattern is not made from a bundle of strips.', 'bundle'],
  ]);
  const few = { ...lamps, bundle: { ...(lamps.bundle as NonNullable<typeof lamps.bundle>) } };
  few.bundle.values = { light: 1, medium: 0, dark: 1 };
  expect(findBundleSizes(few).findings[0]?.what).toBe('One bundle is not enough for any size of this design.');
});
