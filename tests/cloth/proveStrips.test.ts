import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { highsSolver } from '../../src/main/plan/highs.ts';
import { planStrips } from '../../src/shared/cloth/strips/planStrips.ts';
import type { Cover, CoverSolver } from '../../src/shared/cloth/strips/proof/cover.ts';
import { proveStrips } from '../../src/shared/cloth/strips/proof/proveStrips.ts';
import { leastLength } from './leastLength.ts';
import { levels, type Published, stocks } from './published.ts';
import { CLOTH, eighths, expectSound, kinds, thousandths } from './sound.ts';

const solve = await highsSolver();
/** As long as it takes: what a proof finds must not hang on how busy the machine is. */
const unhurried = { solve, secondsLeft: () => 600 };

/** Problems whose live plan is not proven, of so few kinds that their proof is short work. */
function short(published: readonly Published[], most: number): readonly Published[] {
  return published.filter((one) => one.kinds.length <= most && !planStrips(one.kinds, one.width).proven);
}

describe('a proven plan', () => {
  test('is sound, and as short as any plan there is', () => {
    const single = (length: typeof eighths) => fc.array(kinds(length, 1), { minLength: 1, maxLength: 7 });
    fc.assert(
      fc.property(fc.oneof(single(eighths), single(thousandths)), (asked) => {
        const plan = proveStrips(asked, CLOTH, unhurried);
        expectSound(asked, plan);
        expect(plan.proven).toBe(true);
        expect(plan.length).toBeCloseTo(leastLength(asked, CLOTH), 4);
      }),
      { numRuns: 80 },
    );
  }, 60_000);

  test('is sound for many pieces, and no longer than the live plan', () => {
    fc.assert(
      fc.property(fc.array(kinds(eighths, 60), { maxLength: 6 }), (asked) => {
        const plan = proveStrips(asked, CLOTH, { solve, secondsLeft: () => 5 });
        expectSound(asked, plan);
        expect(plan.length).toBeLessThanOrEqual(planStrips(asked, CLOTH).length + 1e-6);
      }),
      { numRuns: 40 },
    );
  }, 60_000);

  test('is what the live plan is when there is no time, and says how near it is as it goes', () => {
    const [problem] = short(levels('turned'), 30) as [Published];
    const hurried = proveStrips(problem.kinds, problem.width, { solve, secondsLeft: () => 0 });
    expect(hurried.length).toBe(planStrips(problem.kinds, problem.width).length);
    const told: { length: number; bound: number }[] = [];
    const plan = proveStrips(problem.kinds, problem.width, { ...unhurried, tell: (now) => told.push(now) });
    expect(told.at(-1)).toMatchObject({ length: plan.length, bound: plan.bound });
    expect(told.every((now, i) => i === 0 || now.length - now.bound <= (told[i - 1]?.length ?? 0))).toBe(true);
  });

  test('keeps a sound bound when the solver knows nothing', () => {
    const idle: CoverSolver = () => ({ times: null, bound: 0 });
    for (const { kinds: asked, width, least } of short(levels('fixed'), 20)) {
      const plan = proveStrips(asked, width, { solve: idle, secondsLeft: () => 600 });
      expect(plan.bound).toBeLessThanOrEqual(least + 1e-6);
      expect(plan.length).toBeGreaterThanOrEqual(least - 1e-6);
    }
  });
});

describe('published cutting problems', () => {
  // Each least length is the published one (`tests/published/cutting/README.md`). The bench proves them all.
  test.each([
    ['without turning', short(levels('fixed'), 10)],
    ['with quarter turns', short(levels('turned'), 10)],
    ['of one length', short(stocks(), 46)],
  ])(
    '%s are proven at the least length',
    (_, problems) => {
      expect(problems.length).toBeGreaterThan(5);
      for (const { name, kinds: asked, width, least } of problems) {
        const plan = proveStrips(asked, width, unhurried);
        expect([plan.length, plan.bound, plan.proven], name).toEqual([least, least, true]);
      }
    },
    120_000,
  );
});

describe('the solver', () => {
  const strip = (cost: number, ...each: number[]) => ({
    cost,
    each: Float64Array.from(each),
    counts: Int32Array.from(each),
  });

  // Computed: two of the first and one of the second strip cut 5 and 4 pieces.
  test('takes the cheapest cover', () => {
    const cover: Cover = {
      columns: [strip(3, 2, 1), strip(2, 1, 2), strip(9, 9, 9)],
      demand: [5, 4],
      most: 99,
      step: 1,
    };
    const { times, bound } = solve(cover, 10);
    expect(times).toEqual([2, 1, 0]);
    expect(bound).toBeGreaterThan(7);
  });

  test('says when nothing covers', () => {
    const cover: Cover = { columns: [strip(3, 2, 0)], demand: [5, 4], most: 99, step: 1 };
    expect(solve(cover, 10)).toEqual({ times: null, bound: Number.POSITIVE_INFINITY });
  });
});
