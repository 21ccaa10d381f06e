import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { Kind } from '../../src/shared/cloth/strips/kinds.ts';
import { planStrips } from '../../src/shared/cloth/strips/planStrips.ts';

const folder = new URL('../published/cutting/', import.meta.url);

interface Level {
  readonly name: string;
  readonly width: number;
  readonly items: readonly { readonly w: number; readonly h: number; readonly demand: number }[];
  readonly minimumHeight: { readonly fixed?: number; readonly turned?: number };
}

interface One {
  readonly name: string;
  readonly length: number;
  readonly items: readonly { readonly l: number; readonly demand: number }[];
  readonly minimumCount: number;
}

/** A published problem: what is to be cut and the least length, as `tests/published/cutting/README.md` tells. */
interface Published {
  readonly name: string;
  readonly width: number;
  readonly kinds: readonly Kind[];
  readonly least: number;
}

function read<T>(start: string): readonly T[] {
  const files = readdirSync(folder).filter((name) => name.startsWith(start));
  return files.flatMap((name) => JSON.parse(readFileSync(new URL(name, folder), 'utf8')) as T[]);
}

function levels(way: 'fixed' | 'turned'): readonly Published[] {
  return read<Level>('level-').flatMap(({ name, width, items, minimumHeight }) => {
    const least = minimumHeight[way];
    const kinds = items.map(({ w, h, demand }) => ({ width: w, height: h, count: demand, turns: way === 'turned' }));
    return least === undefined ? [] : [{ name, width, kinds, least }];
  });
}

/** Stock of one length is cloth whose strips are all one tall. */
function stocks(): readonly Published[] {
  return read<One>('one-').map(({ name, length, items, minimumCount }) => ({
    name,
    width: length,
    kinds: items.map(({ l, demand }) => ({ width: l, height: 1, count: demand, turns: false })),
    least: minimumCount,
  }));
}

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
