import { describe, expect, test } from 'vitest';
import type { Recipe } from '../../src/shared/recipe/schema.ts';
import { facetTerms, filtersIn } from '../../src/shared/workroom/facetTerms.ts';
import { facetRules, type RecipeFacets, recipeFacets } from '../../src/shared/workroom/recipeFacets.ts';
import { starter, starterBook } from '../helpers/starters.ts';

const book = starterBook();

function facetsOf(id: string): RecipeFacets {
  const facets = recipeFacets(starter(id), book);
  if (facets === null) throw new Error(`${id} cannot be sewn`);
  return facets;
}

describe('the facets of a recipe', () => {
  // The families as the trade sorts these blocks (common practice).
  test.each([
    ['sawtooth-star', 'four-patch', 4],
    ['churn-dash', 'nine-patch', 6],
    ['sisters-choice', 'five-patch', 5],
    ['bears-paw', 'seven-patch', 7],
    ['log-cabin', 'rounds', 8],
    ['eight-point-star', 'off-grid', null],
  ])('%s is drawn on a grid of the %s family', (id, family, grid) => {
    expect(facetsOf(id)).toMatchObject({ family, grid });
  });

  test('say what of the trade’s skills it asks', () => {
    expect(facetsOf('churn-dash').skills).toEqual(['full-seams']);
    expect(facetsOf('bright-hopes').skills).toEqual(['partial-seams']);
    expect(facetsOf('drunkards-path').skills).toEqual(['curves']);
    expect(facetsOf('eight-point-star').skills).toEqual(['set-in-seams', 'bias-edges']);
  });

  test('say at which widths every unit is on an eighth of an inch', () => {
    // Sevenths and fifths of an inch are on no ruler; a seven-patch is whole at 7 and 14, a five-patch at 10 and 15.
    expect(facetsOf('bears-paw').sizes.inches).toEqual([7, 14]);
    expect(facetsOf('lady-of-the-lake').sizes.inches).toEqual([10, 15]);
    // Quarters of a four-patch grid are on the eighths at every half inch.
    expect(facetsOf('sawtooth-star').sizes.inches).toEqual([4, 6, 7, 8, 9, 10, 12, 14, 15, 16]);
    // Templates of an eight-point star are on no ruler at all: its corners are at √2.
    expect(facetsOf('eight-point-star').sizes.inches).toEqual([]);
  });

  test('say at which round centimetres every unit is on a millimetre', () => {
    const centimetres = (id: string) => facetsOf(id).sizes.centimetres.map((width) => Math.round(width * 2.54));
    // Of round widths, the sevenths of 14, 21, 28 and 35 cm are whole millimetres; the fifths of all of them are.
    expect(centimetres('bears-paw')).toEqual([14, 21, 28, 35]);
    expect(centimetres('lady-of-the-lake')).toEqual([10, 12, 14, 15, 16, 18, 20, 21, 24, 25, 28, 30, 35, 36, 40]);
    expect(centimetres('eight-point-star')).toEqual([]);
  });

  test('name the units it is made of and how each is made', () => {
    const { units, methods } = facetsOf('ohio-star');
    expect(units).toEqual(['plain', 'qst']);
    expect(methods).toHaveLength(2);
  });

  test('are none for a recipe that cannot be sewn', () => {
    const bad: Recipe = { ...starter('churn-dash'), id: 'bad', roles: [] };
    expect(recipeFacets(bad, book)).toBeNull();
  });
});

describe('filters', () => {
  test('offer every term but those of methods, each once', () => {
    const rulers = [filtersIn('inches'), filtersIn('centimetres')].map((filters) =>
      filters.flatMap(({ choices }) => choices.map(({ term }) => term)),
    );
    for (const own of rulers) expect(new Set(own).size).toBe(own.length);
    const offered = rulers.flat();
    const met = new Set([...book.values()].flatMap((recipe) => facetTerms(recipeFacets(recipe, book) ?? none)));
    const missing = [...met].filter((term) => !offered.includes(term) && !term.startsWith('method:'));
    expect(missing.sort()).toEqual(['unit:plain']);
  });

  test('are worked out anew when the rules change, and 0 is no rule', () => {
    expect(facetRules()).toBeGreaterThan(0);
    expect(facetRules()).toBe(facetRules());
  });
});

const none: RecipeFacets = {
  family: 'other',
  grid: null,
  patches: 0,
  units: [],
  methods: [],
  skills: [],
  sizes: { inches: [], centimetres: [] },
};
