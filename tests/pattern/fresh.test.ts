import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { freshPattern } from '../../src/shared/pattern/fresh.ts';
import { withHeld } from '../../src/shared/pattern/recipes.ts';
import { type Recipe, recipeSchema } from '../../src/shared/recipe/schema.ts';
import { workOut } from '../../src/shared/workroom/workOut.ts';

const folder = new URL('../../resources/recipes/', import.meta.url);
const starters: readonly Recipe[] = readdirSync(folder).map((name) =>
  recipeSchema.parse(JSON.parse(readFileSync(new URL(name, folder), 'utf8'))),
);

describe('a fresh pattern', () => {
  it.each(starters.map((recipe) => [recipe.name, recipe] as const))(
    'of %s fits in three sizes from the start',
    (_, recipe) => {
      const [, ...held] = withHeld(recipe, starters);
      const fresh = { id: 'fresh', title: 'Fresh', designer: 'Saltmarsh & Thread', date: '2026-01-01' };
      const worked = workOut(freshPattern(recipe, held, fresh));
      expect(worked.sizes.map(({ size }) => size.name)).toEqual(['Cot', 'Lap', 'Double']);
      expect(worked.findings.filter(({ level }) => level === 'stops')).toEqual([]);
    },
  );

  it('grows from size to size', () => {
    const [recipe] = starters as [Recipe];
    const { sizes } = freshPattern(recipe, [], { id: 'a', title: 'A', designer: 'B', date: '2026-01-01' });
    const areas = sizes.map(({ across, down }) => across * down);
    expect(areas).toEqual(areas.toSorted((a, b) => a - b));
  });
});
