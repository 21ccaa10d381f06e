import { readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { lower } from '../../src/shared/piecing/lower.ts';
import type { Piecing } from '../../src/shared/piecing/piecing.ts';
import { isRulerFriendly } from '../../src/shared/piecing/rulerSizes.ts';
import type { Recipe } from '../../src/shared/recipe/schema.ts';
import { recipeFacets } from '../../src/shared/workroom/recipeFacets.ts';
import { starterBook, starterRecipes } from '../helpers/starters.ts';

const recipes = starterRecipes();
const book = starterBook();
const isUnit = ({ tags }: Recipe) => tags.includes('units');

/** Tags that say which grid a block is drawn on: one of these or none. */
const FAMILIES: Readonly<Record<string, string>> = {
  'four-patch family': 'four-patch',
  'nine-patch family': 'nine-patch',
  'five-patch family': 'five-patch',
  'seven-patch family': 'seven-patch',
  'eight-point family': 'off-grid',
};

/** Every other tag a starter may carry. */
const TAGS = new Set([
  ...['units', 'alternate blocks', 'baskets', 'chains', 'churn dash kin', 'curves', 'diamonds', 'letters', 'logs'],
  ...['pictures', 'pinwheels', 'stars', 'strips', 'flying geese', 'half-square triangles', 'quarter-square triangles'],
  ...['half-rectangle triangles', 'square in a square', 'stitch-and-flip', 'partial seams', 'set-in seams'],
]);

function pieced(recipe: Recipe): Piecing {
  const lowered = lower(recipe, {}, book, '');
  if (!lowered.ok) throw new Error(lowered.findings.map(({ what }) => what).join(' '));
  return lowered.value;
}

describe('the starter recipes', () => {
  test('are sixty blocks and more, besides the units they are made of', () => {
    expect(recipes.filter((recipe) => !isUnit(recipe)).length).toBeGreaterThanOrEqual(60);
  });

  test('have names and ids of their own, and files named after them', () => {
    for (const key of ['id', 'name', 'summary'] as const) {
      const all = recipes.map((recipe) => recipe[key]);
      expect(all.filter((one, i) => all.indexOf(one) !== i)).toEqual([]);
    }
    const files = readdirSync(new URL('../../resources/recipes/', import.meta.url)).sort();
    expect(files).toEqual(recipes.map(({ id }) => `${id}.recipe.json`).sort());
  });

  test('know units, stars, logs, geese, baskets, chains, pinwheels, curves, and every kind of seam', () => {
    const tags = new Set(recipes.flatMap((recipe) => recipe.tags));
    for (const tag of [...TAGS, ...Object.keys(FAMILIES)]) expect(tags, tag).toContain(tag);
    const skills = new Set(recipes.flatMap((recipe) => recipeFacets(recipe, book)?.skills ?? []));
    expect([...skills].sort()).toEqual(['bias-edges', 'curves', 'full-seams', 'partial-seams', 'set-in-seams']);
  });

  test('that are units are held by a block', () => {
    const held = new Set(recipes.flatMap(({ body }) => JSON.stringify(body).match(/(?<="recipe":")[^"]+/g) ?? []));
    const idle = recipes.filter((recipe) => isUnit(recipe) && !held.has(recipe.id)).map(({ id }) => id);
    expect(idle).toEqual([]);
  });
});

describe.each(recipes.map((recipe) => [recipe.name, recipe] as const))('%s', (_name, recipe) => {
  test('is drawn, sewn, and uses every one of its roles', () => {
    const { drawing } = pieced(recipe);
    const used = new Set(drawing.patches.map(({ role }) => role));
    expect([...used].sort()).toEqual(recipe.roles.map(({ id }) => id).sort());
  });

  test('is told in one sentence, by tags that are known, and by the grid it is drawn on', () => {
    expect(recipe.summary).toMatch(/^[A-Z0-9][^.!?]+\.$/);
    const families = recipe.tags.filter((tag) => FAMILIES[tag] !== undefined);
    const others = recipe.tags.filter((tag) => FAMILIES[tag] === undefined);
    expect(others.filter((tag) => !TAGS.has(tag))).toEqual([]);
    expect(families.length).toBeLessThanOrEqual(1);
    const facets = recipeFacets(recipe, book);
    for (const family of families) expect(facets?.family).toBe(FAMILIES[family]);
  });

  test('falls on the marks of the ruler at its usual size, if any size does', () => {
    const facets = recipeFacets(recipe, book);
    const anySize = facets?.family !== 'off-grid' && facets?.grid !== null && (facets?.sizes.inches.length ?? 0) > 0;
    if (anySize) expect(isRulerFriendly(pieced(recipe), recipe.finished, 1 / 8)).toBe(true);
  });

  test('keeps its parameters within bounds at both ends', () => {
    for (const { id, least, most } of recipe.parameters) {
      for (const value of [least, most])
        expect(lower(recipe, { [id]: value }, book, '').ok, `${id} ${value}`).toBe(true);
    }
  });
});
