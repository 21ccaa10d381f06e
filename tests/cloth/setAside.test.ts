import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { allot } from '../../src/shared/cloth/bundle/allot.ts';
import { numbersOf, valueOfStrip, withoutStrips } from '../../src/shared/cloth/bundle/setAside.ts';
import { supplyOf } from '../../src/shared/cloth/bundle/stress.ts';
import { wantsIn } from '../../src/shared/workroom/bundles.ts';
import { recastsFor, sharedOut } from '../../src/shared/workroom/recasts.ts';
import { workOut } from '../../src/shared/workroom/workOut.ts';
import { testPattern } from '../helpers/fixtures.ts';

const worked = workOut(testPattern('six-lamps'));
const [size] = worked.sizes;
const { bundle } = worked.pattern;
if (size === undefined || bundle === undefined) throw new Error('six-lamps has no size or no bundle');
const wants = wantsIn(worked, size);
if (wants === null) throw new Error('no wants');

describe('strips of a bundle that are set aside', () => {
  it('counts light strips first, then dark ones', () => {
    expect(valueOfStrip(bundle, 20)).toBe('light');
    expect(valueOfStrip(bundle, 21)).toBe('dark');
    expect(valueOfStrip(bundle, 41)).toBeNull();
    expect(numbersOf(bundle, 'dark')).toEqual(Array.from({ length: 20 }, (_, i) => 21 + i));
  });

  it('never cuts from a strip that is set aside, and cuts the same as from a bundle without them', () => {
    fc.assert(
      fc.property(fc.uniqueArray(fc.integer({ min: 1, max: 40 }), { maxLength: 8 }), (aside) => {
        const without = withoutStrips(wants, bundle, new Set(aside));
        const gone = (value: string) => aside.filter((number) => valueOfStrip(bundle, number) === value).length;
        const values = { ...bundle.values, light: 20 - gone('light'), dark: 20 - gone('dark') };
        const smaller = allot(wants, { ...supplyOf(bundle), values });
        expect(without.enough).toBe(smaller.enough);
        expect(without.strips.filter(({ number }) => aside.includes(number))).toEqual([]);
        for (const { number, value } of without.strips) expect(valueOfStrip(bundle, number)).toBe(value);
        expect(new Set(without.strips.map(({ number }) => number)).size).toBe(without.strips.length);
        if (smaller.enough) expect(without.strips).toHaveLength(smaller.strips.length);
      }),
      { numRuns: 30 },
    );
  });

  it('is the whole bundle when nothing is', () => {
    expect(withoutStrips(wants, bundle, new Set())).toEqual(allot(wants, supplyOf(bundle)));
  });
});

describe('other bundles', () => {
  it('shares strips out among the values so that each has what it wants at the least', () => {
    // By hand: 3 and 6 are wanted of 12; a third of the 3 over goes to the first, two thirds to the second.
    expect(sharedOut({ light: 3, medium: 0, dark: 6 }, 12)).toEqual({ light: 4, medium: 0, dark: 8 });
    fc.assert(
      fc.property(fc.nat(20), fc.nat(20), fc.nat(20), fc.nat(30), (light, medium, dark, more) => {
        if (light + medium + dark === 0) return;
        const values = sharedOut({ light, medium, dark }, light + medium + dark + more);
        expect(values.light + values.medium + values.dark).toBe(light + medium + dark + more);
        expect(values.light >= light && values.medium >= medium && values.dark >= dark).toBe(true);
      }),
    );
  });

  it('offers only what is enough for the size, and the fewest first', () => {
    const offers = recastsFor(worked, size);
    expect(offers[0]?.kind).toBe('fewest');
    for (const { enoughFor } of offers) expect(enoughFor).toContain(size.size.id);
  });
});
