import { type Pattern, patternSchema } from '../../../src/shared/pattern/schema.ts';
import { type Recipe, recipeSchema } from '../../../src/shared/recipe/schema.ts';

/** A small recipe of our own: a square turned by four half-square triangles. */
export function sampleRecipe(changes: Partial<Recipe> = {}): Recipe {
  return {
    ...recipeSchema.parse({
      format: 'piecewright-recipe',
      version: 1,
      id: 'mooring',
      name: 'Mooring',
      summary: 'Four half-square triangles about a quiet middle.',
      tags: ['half-square triangles', 'harbour'],
      finished: 8,
      roles: [
        { id: 'sea', name: 'Sea', value: 'dark' },
        { id: 'sand', name: 'Sand', value: 'light' },
      ],
      body: {
        kind: 'grid',
        columns: [1, 1],
        rows: [1, 1],
        key: { H: { unit: 'hst', roles: ['sea', 'sand'] } },
        layout: ['H H:90', 'H:270 H:180'],
      },
    }),
    ...changes,
  };
}

/** A small pattern in two sizes that carries its one recipe. */
export function samplePattern(changes: Partial<Pattern> = {}): Pattern {
  const { recipes: _none, ...rest } = patternSchema.parse({
    format: 'piecewright-pattern',
    version: 1,
    id: 'slack-water',
    title: 'Slack Water',
    edition: { number: 1, date: '2026-03-01' },
    words: { designer: 'Saltmarsh & Thread' },
    recipes: [],
    blocks: [{ id: 'A', name: 'Mooring', recipe: 'mooring', fabrics: { sea: 'deep', sand: 'shore' } }],
    fabrics: [
      { id: 'deep', name: 'Deep water', value: 'dark', colour: '#24405c' },
      { id: 'shore', name: 'Shore', value: 'light', colour: '#e8dcc3' },
    ],
    setting: { kind: 'straight', motif: ['A A:90', 'A:270 A:180'] },
    borders: [{ id: 'outer', name: 'Outer border', fabric: 'deep', width: 4 }],
    binding: { fabric: 'deep' },
    backing: { fabric: 'shore' },
    sizes: [
      { id: 'cot', name: 'Cot', across: 4, down: 5, block: 8 },
      { id: 'lap', name: 'Lap', across: 6, down: 8, block: 8 },
    ],
  });
  return { ...rest, recipes: [sampleRecipe()], ...changes };
}
