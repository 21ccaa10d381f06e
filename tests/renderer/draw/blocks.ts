import type { Drawing } from '../../../src/shared/drawing/drawing.ts';
import { lower } from '../../../src/shared/piecing/lower.ts';
import type { Piecing } from '../../../src/shared/piecing/piecing.ts';
import { readDrawnBody } from '../../../src/shared/recipe/drawn.ts';
import type { DrawingBody, RecipeInput } from '../../../src/shared/recipe/schema.ts';
import { recipeSchema } from '../../../src/shared/recipe/schema.ts';

export const at = (x: number, y: number) => ({ x, y });

/** A square drawn by its cuts, in two roles. */
export function drawn(width: number, splits: NonNullable<DrawingBody['splits']>): Drawing {
  const read = readDrawnBody(bodyOf(width, splits), 'body');
  if (!read.ok) throw new Error(read.findings.map(({ what }) => what).join(' '));
  return read.value;
}

function bodyOf(width: number, splits: NonNullable<DrawingBody['splits']>): DrawingBody {
  return { kind: 'drawing', width, height: width, role: 'sand', splits };
}

/** The same, with its sewing found. */
export function pieced(width: number, splits: NonNullable<DrawingBody['splits']>): Piecing {
  const recipe: RecipeInput = {
    format: 'piecewright-recipe',
    version: 1,
    id: 'ebb',
    name: 'Ebb',
    finished: 8,
    roles: [
      { id: 'sand', name: 'Sand', value: 'light' },
      { id: 'star', name: 'Star points', value: 'dark' },
    ],
    body: bodyOf(width, splits),
  };
  const lowered = lower(recipeSchema.parse(recipe), {}, new Map(), '');
  if (!lowered.ok) throw new Error(lowered.findings.map(({ what }) => what).join(' '));
  return lowered.value;
}

/** Halves, and the upper half halved again: three patches. */
export const three: NonNullable<DrawingBody['splits']> = [
  { inside: [1, 1], from: [0, 2], to: [4, 2], role: 'star' },
  { inside: [1, 1], from: [2, 0], to: [2, 2], role: 'sand' },
];

export const roleName = (role: string) => (role === 'star' ? 'Star points' : 'Sand');
