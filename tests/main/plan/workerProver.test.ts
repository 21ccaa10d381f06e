import { afterAll, describe, expect, test } from 'vitest';
import { workerProver } from '../../../src/main/plan/workerProver.ts';
import { planStrips } from '../../../src/shared/cloth/strips/planStrips.ts';
import { levels } from '../../cloth/published.ts';

const prover = workerProver();
afterAll(() => prover.close());

function problem(name: string) {
  const found = levels('turned').find((one) => one.name === name);
  if (found === undefined) throw new Error(`no problem ${name}`);
  return found;
}

const never = new AbortController().signal;

describe('a proof on a thread of its own', () => {
  // SCP17, Hifi 1998: 38 with quarter turns.
  test('comes back at the optimum, and tells how near it is', async () => {
    const { kinds, width, least } = problem('SCP17');
    const told: number[] = [];
    const plan = await prover.prove({ kinds, width, seconds: 60 }, ({ bound }) => told.push(bound), never);
    expect([plan.length, plan.bound, plan.proven]).toEqual([least, least, true]);
    expect(told.at(-1)).toBe(least);
  });

  test('can be stopped, and what waits behind it is proven all the same', async () => {
    const [hard, easy] = [problem('Hchl7s'), problem('SCP3')];
    const stop = new AbortController();
    const long = prover.prove({ ...hard, seconds: 600 }, () => stop.abort(), stop.signal);
    const after = prover.prove({ ...easy, seconds: 60 }, () => undefined, never);
    await expect(long).rejects.toMatchObject({ kind: 'stopped' });
    expect((await after).length).toBe(easy.least);
  });

  test('without time is the live plan', async () => {
    const { kinds, width } = problem('SCP17');
    const plan = await prover.prove({ kinds, width, seconds: 0 }, () => undefined, never);
    expect(plan.length).toBe(planStrips(kinds, width).length);
  });

  test('that was stopped before it began is refused', async () => {
    const { kinds, width } = problem('SCP17');
    const stop = new AbortController();
    stop.abort();
    const asked = prover.prove({ kinds, width, seconds: 9 }, () => undefined, stop.signal);
    await expect(asked).rejects.toMatchObject({ kind: 'stopped' });
  });
});

describe('the time of a proof', () => {
  test('is kept, and what was found by then is a sound plan', async () => {
    // Hchl7s, Hifi 1998, turned: not proven in a few seconds.
    const { kinds, width, least } = problem('Hchl7s');
    await prover.prove({ ...problem('SCP3'), seconds: 60 }, () => undefined, never);
    const start = performance.now();
    const plan = await prover.prove({ kinds, width, seconds: 1 }, () => undefined, never);
    expect(performance.now() - start).toBeLessThan(4000);
    expect(plan.length).toBeGreaterThanOrEqual(least);
    expect(plan.bound).toBeLessThanOrEqual(least);
    expect(plan.length).toBeLessThanOrEqual(planStrips(kinds, width).length);
  });
});
