import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { DEMO, run } from './run.ts';

const SIX_LAMPS = join(import.meta.dirname, '../fixtures/patterns/six-lamps.pattern.json');

describe('cut --bundle', () => {
  // Common practice: the quilt of 41 × 57 comes from one bundle of forty 2½-inch strips, about half light and half dark.
  test('says that one bundle is enough, strip by strip, and what breaks first', async () => {
    const { code, said } = await run('cut', SIX_LAMPS, '--bundle', '--json');
    expect(code).toBe(0);
    const [size] = JSON.parse(said).sizes;
    expect(size.bundle).toMatchObject({ oneIsEnough: true, bundles: 1, short: [], clashes: 0 });
    expect(size.bundle.strips.length).toBeLessThanOrEqual(40);
    expect(size.bundle.stress.map(({ what }: { what: string }) => what)).toEqual(
      expect.arrayContaining(['fewer', 'shorter', 'pinked', 'duplicates', 'split', 'rejected']),
    );
    // Only what is wider than a strip is bought as yards.
    expect(size.needs.map(({ fabric }: { fabric: string }) => fabric)).toEqual(['night']);
  });

  test('the same pattern cut from another bundle, in words', async () => {
    const small = JSON.parse((await run('cut', SIX_LAMPS, '--bundle', '10 light 10 dark', '--json')).said);
    expect(small.sizes[0].bundle).toMatchObject({ oneIsEnough: false, bundles: 2, values: { light: 10, dark: 10 } });
    const { said } = await run('cut', SIX_LAMPS, '--bundle', '10 light 10 dark 2.5 x 41');
    expect(said).toMatch(/From a bundle of 20 strips 2½″ × 41″: it takes 2 bundles\./);
    expect(said).toMatch(/The fewest that would do: \d+ light, 0 medium, \d+ dark\./);
  });

  test('a pattern without a bundle is cut from forty strips as usual, as far as its pieces are no wider', async () => {
    const { sizes } = JSON.parse((await run('cut', DEMO, '--bundle', '--json')).said);
    expect(sizes[0].bundle).toMatchObject({ strip: 2.5, length: 42, values: { light: 20, dark: 20 } });
    expect(sizes[0].bundle.outside.length).toBeGreaterThan(0);
  });

  test('refuses words that say nothing of a bundle', async () => {
    const { code, complained } = await run('cut', SIX_LAMPS, '--bundle', 'forty strips');
    expect(code).toBe(2);
    expect(complained).toMatch(/“forty strips” says nothing of a bundle/);
  });
});

test('cut --seconds proves the plans that are not proven at once', async () => {
  const read = async (...more: string[]) => JSON.parse((await run('cut', DEMO, '--json', ...more)).said).sizes;
  const [live, proven] = [await read(), await read('--seconds', '60')];
  interface Size {
    readonly needs: readonly {
      readonly plan: { readonly length: { readonly value: number }; readonly proven: boolean };
    }[];
  }
  const plans = (sizes: readonly Size[]) => sizes.flatMap(({ needs }) => needs.map(({ plan }) => plan));
  expect(plans(live).some((plan) => !plan.proven)).toBe(true);
  plans(proven).forEach((plan, i) => {
    expect(plan.proven).toBe(true);
    expect(plan.length.value).toBeLessThanOrEqual(plans(live)[i]?.length.value ?? 0);
  });
}, 120_000);
