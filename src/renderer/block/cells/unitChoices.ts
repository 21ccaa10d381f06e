import { whyNot } from '../../../shared/recipe/cellFit.ts';
import { rolesIn } from '../../../shared/recipe/cellRoles.ts';
import type { Cell as Held, Recipe, UnitCell } from '../../../shared/recipe/schema.ts';

/** Every unit that suits a cell of this shape, lying or turned, in the colours of what stands there now. */
export function unitChoices(
  recipe: Recipe,
  holds: Held | null,
  width: number,
  height: number,
): readonly { readonly cell: UnitCell; readonly width: number; readonly height: number }[] {
  const [a, b, c] = threeRoles(recipe, holds);
  return everyKind(a, b, c, width, height).flatMap((cell) => {
    if (whyNot(cell, width, height) === null) return [{ cell, width, height }];
    return whyNot(cell, height, width) === null ? [{ cell, width: height, height: width }] : [];
  });
}

/** The roles of what stands there, then the recipe's others; a recipe of few roles has them more than once. */
function threeRoles(recipe: Recipe, holds: Held | null): readonly [string, string, string] {
  const here = holds === null ? [] : rolesIn(holds);
  const all = [...new Set([...here, ...recipe.roles.map(({ id }) => id)])];
  const [a = '', b = a, c = b] = all;
  return [a, b, c];
}

function everyKind(a: string, b: string, c: string, width: number, height: number): readonly UnitCell[] {
  const [long, short] = [Math.max(width, height), Math.min(width, height)];
  // As many squares the long way as keep them square, with three the short way.
  const across = Math.max(2, Math.min(12, Math.round((3 * long) / short)));
  return [
    { unit: 'plain', role: a },
    { unit: 'hst', roles: [a, b] },
    { unit: 'qst', roles: [a, b, a, b] },
    { unit: 'three-patch', roles: [a, b, c] },
    { unit: 'geese', roles: [b, a] },
    { unit: 'corners', role: a, corners: [{ at: 'top-left', role: b, size: short / 2 }] },
    { unit: 'square-in-square', role: b, roles: [a, a, a, a] },
    { unit: 'half-rectangle', diagonal: 'rising', roles: [a, b] },
    { unit: 'four-patch', roles: [b, a] },
    { unit: 'nine-patch', roles: [b, a, b] },
    { unit: 'checkerboard', roles: [b, a], columns: long === short ? 4 : across, rows: long === short ? 4 : 3 },
    { unit: 'rails', roles: [a, b, c] },
    { unit: 'quarter-circle', roles: [b, a], radius: (short * 3) / 4 },
  ];
}
