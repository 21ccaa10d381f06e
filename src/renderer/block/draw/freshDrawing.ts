import type { Contract } from '../../../shared/contract.ts';
import { freeId } from '../../../shared/pattern/edits/list.ts';
import { type Recipe, type RecipeInput, recipeSchema } from '../../../shared/recipe/schema.ts';

export interface FreshDrawing {
  readonly name: string;
  /** Grid units. */
  readonly across: number;
  readonly down: number;
  /** Finished width, inches. */
  readonly finished: number;
  /** Drawn by cuts, or put together from units, cell by cell. */
  readonly made: 'drawn' | 'units';
}

/** A block nobody has worked on yet: background only, and a second fabric to work with. */
export function freshDrawing(id: string, { name, across, down, finished, made }: FreshDrawing): Recipe {
  return recipeSchema.parse({
    format: 'piecewright-recipe',
    version: 1,
    id,
    name,
    finished,
    roles: [
      { id: 'background', name: 'Background', value: 'light' },
      { id: 'figure', name: 'Figure', value: 'dark' },
    ],
    body: made === 'drawn' ? blankDrawing(across, down) : blankGrid(across, down),
  });
}

function blankDrawing(across: number, down: number): RecipeInput['body'] {
  return { kind: 'drawing', width: across, height: down, role: 'background', splits: [] };
}

function blankGrid(across: number, down: number): RecipeInput['body'] {
  const ones = (many: number) => Array.from({ length: many }, () => 1);
  const line = ones(across)
    .map(() => 'P')
    .join(' ');
  const key = { P: { unit: 'plain' as const, role: 'background' } };
  return { kind: 'grid', columns: ones(across), rows: ones(down), key, layout: ones(down).map(() => line) };
}

/** An id for a recipe that neither the library nor a pattern has yet. */
export async function freeRecipeId(host: Contract, name: string, taken: readonly string[]): Promise<string> {
  for (let known = taken; ; ) {
    const id = freeId(name, known);
    const kept = await host.keptRecipes([id]);
    if (kept.length === 0) return id;
    known = [...known, id];
  }
}
