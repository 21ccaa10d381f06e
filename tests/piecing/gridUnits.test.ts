import { describe, expect, test } from 'vitest';
import { putCells, setGridSpan } from '../../src/shared/pattern/edits/index.ts';
import type { Pattern } from '../../src/shared/pattern/schema.ts';
import { lower } from '../../src/shared/piecing/lower.ts';
import type { Piecing } from '../../src/shared/piecing/piecing.ts';
import { unitPolygons } from '../../src/shared/piecing/unitShape.ts';
import { type Recipe, recipeSchema, type UnitCell } from '../../src/shared/recipe/schema.ts';
import { demoPattern } from '../helpers/starters.ts';

const ROLES = ['sea', 'sand', 'rope', 'sail'].map((id) => ({ id, name: id, value: 'light' }));

/** One cell of this shape that holds the unit. */
function oneCell(holds: UnitCell, width: number, height: number): Recipe {
  return recipeSchema.parse({
    format: 'piecewright-recipe',
    version: 1,
    id: 'one-cell',
    name: 'One cell',
    finished: width,
    roles: ROLES,
    body: { kind: 'grid', columns: [width], rows: [height], key: { U: holds }, layout: ['U'] },
  });
}

function lowered(recipe: Recipe): Piecing {
  const found = lower(recipe, {}, new Map(), '');
  if (!found.ok) throw new Error(found.findings.map(({ what }) => what).join(' '));
  return found.value;
}

/** Straight-edged patches: how much of each role there is, in square grid units (the shoelace formula). */
function areas({ units }: Piecing): Record<string, number> {
  const found: Record<string, number> = {};
  for (const { role, corners } of units.flatMap(unitPolygons)) {
    const twice = corners.reduce((sum, { x, y }, i) => {
      const next = corners[(i + 1) % corners.length] as { x: number; y: number };
      return sum + x * next.y - next.x * y;
    }, 0);
    found[role] = (found[role] ?? 0) + Math.abs(twice) / 2;
  }
  return found;
}

describe('every unit the trade knows can stand in a cell of a grid', () => {
  // Areas by hand, of a cell of 4 by 4 (or as given): quarters of a square are 4 each, and so on.
  test.each<[string, UnitCell, number, number, Record<string, number>]>([
    [
      'four quarters',
      { unit: 'qst', roles: ['sea', 'sand', 'rope', 'sail'] },
      4,
      4,
      { sea: 4, sand: 4, rope: 4, sail: 4 },
    ],
    [
      'a half and two quarters',
      { unit: 'three-patch', roles: ['sea', 'sand', 'rope'] },
      4,
      4,
      { sea: 8, sand: 4, rope: 4 },
    ],
    [
      'a square on its point, half of the square about it',
      { unit: 'square-in-square', role: 'sea', roles: ['sand', 'rope', 'sand', 'rope'] },
      4,
      4,
      { sea: 8, sand: 4, rope: 4 },
    ],
    [
      'two halves of a rectangle',
      { unit: 'half-rectangle', diagonal: 'falling', roles: ['sea', 'sand'] },
      2,
      4,
      { sea: 4, sand: 4 },
    ],
    [
      'nine squares: four, four and one',
      { unit: 'nine-patch', roles: ['sea', 'sand', 'rope'] },
      3,
      3,
      { sea: 4, sand: 4, rope: 1 },
    ],
    [
      'eight squares in turn',
      { unit: 'checkerboard', columns: 4, rows: 2, roles: ['sea', 'sand'] },
      4,
      2,
      { sea: 4, sand: 4 },
    ],
    ['three strips', { unit: 'rails', roles: ['sea', 'sand', 'sea'] }, 6, 3, { sea: 12, sand: 6 }],
  ])('%s', (_, holds, width, height, expected) => {
    const piecing = lowered(oneCell(holds, width, height));
    expect(piecing.units.map(({ kind }) => kind)).toEqual([holds.unit]);
    expect(areas(piecing)).toEqual(expected);
  });

  test('a quarter circle', () => {
    const piecing = lowered(oneCell({ unit: 'quarter-circle', radius: 3, roles: ['sea', 'sand'] }, 4, 4));
    expect(piecing.units.map(({ kind }) => kind)).toEqual(['quarter-circle']);
    expect(piecing.drawing.patches).toHaveLength(2);
  });

  test.each<[UnitCell, number, number, RegExp]>([
    [
      { unit: 'qst', roles: ['sea', 'sand', 'sea', 'sand'] },
      2,
      3,
      /quarter-square triangle needs a square cell; this one is 2 by 3/,
    ],
    [{ unit: 'half-rectangle', diagonal: 'rising', roles: ['sea', 'sand'] }, 2, 2, /half-square triangle/],
    [{ unit: 'checkerboard', columns: 2, rows: 2, roles: ['sea', 'sand'] }, 2, 2, /four-patch/],
    [{ unit: 'checkerboard', columns: 4, rows: 3, roles: ['sea', 'sand'] }, 4, 4, /4 by 3 need a cell of that shape/],
    [{ unit: 'quarter-circle', radius: 5, roles: ['sea', 'sand'] }, 4, 4, /larger than its cell/],
  ])('%s in %d by %d is refused at its place', (holds, width, height, words) => {
    const found = lower(oneCell(holds, width, height), {}, new Map(), 'recipes[0]');
    expect(found.ok).toBe(false);
    if (found.ok) return;
    expect(found.findings[0]?.what).toMatch(words);
    expect(found.findings[0]?.where.path).toContain('recipes[0].body.key.U');
  });
});

describe('cells are filled by hand', () => {
  const slate: Pattern = { ...demoPattern(), recipes: [twoByTwo()] };

  function twoByTwo(): Recipe {
    const plain = oneCell({ unit: 'plain', role: 'sea' }, 1, 1);
    const body = {
      kind: 'grid' as const,
      columns: [1, 2],
      rows: [1, 2],
      key: { P: { unit: 'plain' as const, role: 'sea' } },
      layout: ['P P', 'P P'],
    };
    return { ...plain, body };
  }
  const bodyOf = (pattern: Pattern) => pattern.recipes[0]?.body as Extract<Recipe['body'], { kind: 'grid' }>;

  test('geese lie down in a wide cell and stand up in a high one; cells that suit them not stay as they are', () => {
    const all = [0, 1].flatMap((row) => [0, 1].map((column) => ({ column, row })));
    const after = putCells.apply(slate, {
      recipe: 'one-cell',
      cells: all,
      holds: { unit: 'geese', roles: ['sand', 'sea'] },
    });
    // The cells: 1 × 1, 2 × 1; 1 × 2, 2 × 2.
    expect(bodyOf(after).layout).toEqual(['P G', 'G:90 P']);
  });

  test('what stands nowhere any more leaves the key', () => {
    const one = putCells.apply(slate, {
      recipe: 'one-cell',
      cells: [{ column: 0, row: 0 }],
      holds: { unit: 'hst', roles: ['sea', 'sand'] },
    });
    expect(Object.keys(bodyOf(one).key).sort()).toEqual(['H', 'P']);
    const two = putCells.apply(one, {
      recipe: 'one-cell',
      cells: [{ column: 0, row: 0 }],
      holds: { unit: 'plain', role: 'sea' },
    });
    expect(bodyOf(two)).toEqual(bodyOf(slate));
  });

  test('a recipe never comes to hold itself', () => {
    const after = putCells.apply(slate, {
      recipe: 'one-cell',
      cells: [{ column: 0, row: 0 }],
      holds: { recipe: 'one-cell' },
    });
    expect(after).toBe(slate);
  });

  test('a unit that suits its cell no more, when a column becomes wider, is plain cloth then', () => {
    const one = putCells.apply(slate, {
      recipe: 'one-cell',
      cells: [{ column: 0, row: 0 }],
      holds: { unit: 'hst', roles: ['sand', 'sea'] },
    });
    const wide = setGridSpan.apply(one, { recipe: 'one-cell', along: 'columns', at: 0, span: 3 });
    expect(bodyOf(wide).layout).toEqual(['P2 P', 'P P']);
    expect(bodyOf(wide).key.P2).toEqual({ unit: 'plain', role: 'sand' });
  });
});
