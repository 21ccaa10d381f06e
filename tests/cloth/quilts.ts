import { UNTURNED } from '../../src/shared/drawing/turn.ts';
import { given } from '../../src/shared/measure/traced.ts';
import type { Pattern } from '../../src/shared/pattern/schema.ts';
import type { Quilt } from '../../src/shared/quilt/quilt.ts';
import type { Recipe } from '../../src/shared/recipe/schema.ts';
import { demoPattern, starterRecipes } from '../helpers/starters.ts';

/** A pattern of one block in three sizes with one border, in the fabrics of the demo. */
export function patternOf(recipe: Recipe): Pattern {
  const demo = demoPattern();
  const fabrics = demo.fabrics.map(({ id }) => id);
  const roles = recipe.roles.map(({ id }, index) => [id, fabrics[index % fabrics.length] as string] as const);
  const size = { name: '', block: recipe.finished, borders: {} };
  return {
    ...demo,
    recipes: [...starterRecipes()],
    blocks: [
      {
        id: 'A',
        name: recipe.name,
        recipe: recipe.id,
        parameters: {},
        methods: {},
        fabrics: Object.fromEntries(roles),
      },
    ],
    setting: { kind: 'straight', motif: ['A A:180', 'A:m A:m180'], single: [] },
    borders: [{ id: 'edge', name: 'Edge', fabric: fabrics[0] as string, width: 3, first: 'sides' }],
    sizes: [
      { ...size, id: 'small', name: 'Small', across: 2, down: 3 },
      { ...size, id: 'middle', name: 'Middle', across: 5, down: 6 },
      { ...size, id: 'large', name: 'Large', across: 7, down: 9, block: recipe.finished * 1.5 },
    ],
  };
}

/** A quilt of which only the finished size matters, inches. */
export function quiltOf(width: number, height: number): Quilt {
  const size = { width: given(width, 'finished'), height: given(height, 'finished') };
  const box = { x: 0, y: 0, width, height };
  const block = { kind: 'block', block: 'A', turn: UNTURNED, column: 0, row: 0, box } as const;
  return {
    size: 'only',
    block: { width, height },
    blocks: [block],
    strips: [],
    patches: [],
    triangles: [],
    borders: [],
    measures: { A: { width, height } },
    reversed: {},
    counts: { A: 1 },
    root: block,
    centre: size,
    finished: size,
    unfinished: { width: given(width + 0.5, ''), height: given(height + 0.5, '') },
  };
}
