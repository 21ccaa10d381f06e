import fc from 'fast-check';
import { expect } from 'vitest';
import type { Kind, Packed } from '../../src/shared/cloth/strips/kinds.ts';
import type { StripPlan } from '../../src/shared/cloth/strips/planStrips.ts';

/** Usable width of the cloth in these tests, inches. */
export const CLOTH = 40;

/** A length on the eighths of a ruler. */
export function eighths(from: number, to: number): fc.Arbitrary<number> {
  return fc.integer({ min: from * 8, max: to * 8 }).map((n) => n / 8);
}

/** A length that lies on no ruler's marks, and whose sums are clearly one length or another. */
export function thousandths(from: number, to: number): fc.Arbitrary<number> {
  return fc.integer({ min: from * 1000, max: to * 1000 }).map((n) => n / 1000);
}

/** A length that lies on no ruler's marks. */
export function anyLength(from: number, to: number): fc.Arbitrary<number> {
  return fc.double({ min: from, max: to, noNaN: true });
}

export function kinds(length: (from: number, to: number) => fc.Arbitrary<number>, most: number): fc.Arbitrary<Kind> {
  return fc.record({
    width: length(1, CLOTH),
    height: length(1, 24),
    count: fc.integer({ min: 1, max: most }),
    turns: fc.boolean(),
  });
}

/** The plan cuts what was asked for and nothing else, within the cloth, and is never under its bound. */
export function expectSound(asked: readonly Kind[], plan: StripPlan): void {
  for (const strip of plan.strips) expectWithinCloth(strip);
  const cut = asked.map(() => 0);
  for (const { laid, times } of plan.strips) {
    for (const { lie, count } of laid) {
      const kind = asked[lie.kind] as Kind;
      const [width, height] = lie.turned ? [kind.height, kind.width] : [kind.width, kind.height];
      expect([lie.width, lie.height]).toEqual([width, height]);
      if (lie.turned) expect(kind.turns).toBe(true);
      cut[lie.kind] = (cut[lie.kind] as number) + count * times;
    }
  }
  expect(cut).toEqual(asked.map((kind) => kind.count));
  const length = plan.strips.reduce((sum, strip) => sum + strip.height * strip.times, 0);
  expect(plan.length).toBeCloseTo(length, 6);
  expect(plan.bound).toBeLessThanOrEqual(plan.length + 1e-5);
  expect(plan.proven).toBe(Math.abs(plan.bound - plan.length) < 1e-5);
}

/** Pieces stand side by side, so the only ways to go wrong are too much width and too little height. */
function expectWithinCloth(strip: Packed): void {
  expect(strip.times).toBeGreaterThan(0);
  expect(strip.laid.length).toBeGreaterThan(0);
  for (const { lie, count } of strip.laid) {
    expect(count).toBeGreaterThan(0);
    expect(lie.height).toBeLessThanOrEqual(strip.height);
  }
  expect(strip.laid.reduce((sum, { lie, count }) => sum + lie.width * count, 0)).toBeLessThanOrEqual(CLOTH + 1e-5);
}
