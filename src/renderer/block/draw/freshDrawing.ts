import type { Contract } from '../../../shared/contract.ts';
import { freeId } from '../../../shared/pattern/edits/list.ts';
import { type Recipe, recipeSchema } from '../../../shared/recipe/schema.ts';

export interface FreshDrawing {
  readonly name: string;
  /** Grid units. */
  readonly across: number;
  readonly down: number;
  /** Finished width, inches. */
  readonly finished: number;
}

/** A block nobody has drawn on yet: one patch of background, and a second fabric to draw with. */
export function freshDrawing(id: string, { name, across, down, finished }: FreshDrawing): Recipe {
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
    body: { kind: 'drawing', width: across, height: down, role: 'background', splits: [] },
  });
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
