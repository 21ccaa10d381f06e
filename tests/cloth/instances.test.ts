import { describe, expect, test } from 'vitest';
import { planStrips } from '../../src/shared/cloth/strips/planStrips.ts';
import { levels, type Published, stocks } from './published.ts';

/** @returns by how much the plans are longer than need be, on average */
function expectBetween(published: readonly Published[]): number {
  const gaps = published.map(({ name, width, kinds, least }) => {
    const plan = planStrips(kinds, width);
    expect(plan.bound, `bound of ${name}`).toBeLessThanOrEqual(least + 1e-6);
    expect(plan.length, `plan of ${name}`).toBeGreaterThanOrEqual(least - 1e-6);
    return plan.length / least - 1;
  });
  return gaps.reduce((sum, gap) => sum + gap, 0) / gaps.length;
}

describe('published cutting problems', () => {
  test('strips without turning: the least height lies between bound and plan, and the plan is within 3 % on average', () => {
    expect(levels('fixed').length).toBeGreaterThan(100);
    expect(expectBetween(levels('fixed'))).toBeLessThan(0.03);
  });

  test('strips with quarter turns: the same', () => {
    expect(levels('turned').length).toBeGreaterThan(100);
    expect(expectBetween(levels('turned'))).toBeLessThan(0.03);
  });

  test('stock of one length: the fewest stocks lie between bound and plan', () => {
    expect(stocks().length).toBeGreaterThan(50);
    expectBetween(stocks());
  });
});
