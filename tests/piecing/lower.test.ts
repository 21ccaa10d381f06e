import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { outlinePoints } from '../../src/shared/drawing/curve.ts';
import { doubleArea, patchPoints } from '../../src/shared/drawing/drawing.ts';
import { ALL_TURNS } from '../../src/shared/drawing/turn.ts';
import { lower } from '../../src/shared/piecing/lower.ts';
import type { Piecing, Unit } from '../../src/shared/piecing/piecing.ts';
import { leavesOf } from '../../src/shared/piecing/tree.ts';
import { unitsInside } from '../../src/shared/piecing/unitsInside.ts';
import { type Recipe, recipeSchema } from '../../src/shared/recipe/schema.ts';
import { writeToken } from '../../src/shared/recipe/token.ts';
import { starter, starterBook, starterRecipes } from '../helpers/starters.ts';

function lowered(recipe: Recipe, parameters: Record<string, number> = {}): Piecing {
  const result = lower(recipe, parameters, new Map([...starterBook(), [recipe.id, recipe]]), '');
  if (!result.ok) throw new Error(result.findings.map((finding) => finding.what).join(' '));
  return result.value;
}

function complaints(body: unknown, extra: object = {}): readonly string[] {
  const roles = [
    { id: 'light', name: 'Light', value: 'light' },
    { id: 'dark', name: 'Dark', value: 'dark' },
  ];
  const base = {
    format: 'piecewright-recipe',
    version: 1,
    id: 'test',
    name: 'Test',
    finished: 6,
    roles,
    body,
    ...extra,
  };
  const recipe = recipeSchema.parse(base);
  const result = lower(recipe, {}, new Map([...starterBook(), [recipe.id, recipe]]), 'recipes[0]');
  return result.ok ? [] : result.findings.map(({ where, what, mend = '' }) => `${where.path}: ${what} ${mend}`.trim());
}

const grid = (key: object, layout: string[], columns: (number | string)[] = [1, 1], rows = [1, 1]) => ({
  kind: 'grid',
  columns,
  rows,
  key,
  layout,
});

/** Keys of the units of the trade in a pieced one. */
function insideOf(units: readonly Unit[], key: string): readonly string[] {
  const unit = units.find((one) => one.key === key);
  return unit === undefined ? [] : unitsInside(unit).map((inside) => inside.unit.key);
}

describe('every starter recipe', () => {
  test.each(starterRecipes().map((recipe) => [recipe.name, recipe] as const))(
    '%s is drawn and pieced without a gap',
    (_, recipe) => {
      const { drawing, root, units } = lowered(recipe);
      const area = drawing.patches.reduce((sum, patch) => sum + doubleArea(outlinePoints(drawing, patch)), 0);
      expect(area).toBeCloseTo(2 * drawing.width * drawing.height, 6);
      const sewn = leavesOf(root).flatMap((leaf) => leaf.patches);
      expect([...sewn].sort((a, b) => a - b)).toEqual(drawing.patches.map((_patch, index) => index));
      expect(new Set(leavesOf(root).flatMap(({ unit }) => [unit, ...insideOf(units, unit)]))).toEqual(
        new Set(units.map((unit) => unit.key)),
      );
    },
  );
});

describe('the same unit turned is the same unit', () => {
  test('a pinwheel is four of one half-square triangle', () => {
    expect(lowered(starter('pinwheel')).units).toHaveLength(1);
  });

  test('a sawtooth star has one flying geese unit, four times', () => {
    const star = lowered(starter('sawtooth-star'));
    expect(leavesOf(star.root).filter((leaf) => leaf.unit.startsWith('geese'))).toHaveLength(4);
    expect(star.units.filter((unit) => unit.kind === 'geese')).toHaveLength(1);
  });

  test('a rectangle with one flipped corner and its mirror image are kept apart', () => {
    const key = { C: { unit: 'corners', role: 'light', corners: [{ at: 'top-left', role: 'dark', size: 1 }] } };
    const recipe = (layout: string[]) =>
      recipeSchema.parse({
        ...starter('pinwheel'),
        id: 'handed',
        roles: [
          { id: 'light', name: 'Light', value: 'light' },
          { id: 'dark', name: 'Dark', value: 'dark' },
        ],
        body: grid(key, layout, [2, 2], [1, 1]),
      });
    expect(lowered(recipe(['C C:180', 'C:180 C'])).units).toHaveLength(1);
    expect(lowered(recipe(['C C:m', 'C C:m'])).units).toHaveLength(2);
  });

  test('however a recipe is turned inside another, its patches land where the turned drawing has them', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...ALL_TURNS),
        fc.constantFrom('bears-paw', 'friendship-star', 'log-cabin', 'paw'),
        (turn, id) => {
          const inner = lowered(starter(id));
          const roles = starter(id).roles;
          const body = grid({ X: { recipe: id } }, [writeToken({ name: 'X', turn })], [1], [1]);
          const { drawing, root } = lowered(
            recipeSchema.parse({ ...starter(id), id: 'holder', roles, parameters: [], body }),
          );
          expect(drawing.patches.length).toBe(inner.drawing.patches.length);
          for (const leaf of leavesOf(root)) {
            const points = leaf.patches.flatMap((patch) => patchPoints(drawing, drawing.patches[patch] as never));
            const xs = points.map((p) => p.x);
            expect(Math.min(...xs)).toBe(leaf.box.x);
            expect(Math.max(...xs)).toBe(leaf.box.x + leaf.box.width);
          }
        },
      ),
    );
  });
});

describe('a grid that cannot be', () => {
  const plain = { P: { unit: 'plain', role: 'light' } };

  test('names the row that leaves a gap', () => {
    expect(complaints(grid(plain, ['P P', 'P']))[0]).toBe(
      'recipes[0].body.layout[1]: Row 2 of the layout leaves a gap: 1 entries for 2 columns.',
    );
  });

  test('names a role the recipe has not', () => {
    expect(complaints(grid({ P: { unit: 'plain', role: 'gold' } }, ['P P', 'P P']))[0]).toMatch(
      /key\.P\.role: .*no fabric role “gold”/,
    );
  });

  test('names an entry that is not in the key and one that is misspelt', () => {
    expect(complaints(grid(plain, ['P Q', 'P P']))[0]).toMatch(/layout\[0\]: The key has no “Q”/);
    expect(complaints(grid(plain, ['P P:45', 'P P']))[0]).toMatch(/layout\[0\]: “P:45” is not an entry/);
  });

  test('says that an oblong half-square triangle is not square', () => {
    const key = { H: { unit: 'hst', roles: ['light', 'dark'] } };
    expect(complaints(grid(key, ['H H'], [2, 2], [1]))[0]).toMatch(/needs a square cell; this one is 2 by 1/);
  });

  test('says which corners overlap', () => {
    const corners = [
      { at: 'top-left', role: 'dark', size: 2 },
      { at: 'top-right', role: 'dark', size: 2 },
    ];
    expect(complaints(grid({ C: { unit: 'corners', role: 'light', corners } }, ['C'], [3], [3]))[0]).toMatch(
      /corners top left and top right overlap in a cell of 3 by 3/,
    );
  });

  test('names a parameter the recipe has not', () => {
    expect(complaints(grid(plain, ['P P'], ['wide', 1], [1]))[0]).toMatch(/columns\[0\]: “wide” is not a parameter/);
  });

  test('a recipe that holds itself is told, also through another', () => {
    expect(complaints(grid({ R: { recipe: 'test' } }, ['R'], [1], [1]))[0]).toMatch(/holds itself/);
  });

  test('a recipe that is not here is named', () => {
    expect(complaints(grid({ R: { recipe: 'nowhere' } }, ['R'], [1], [1]))[0]).toMatch(/no recipe “nowhere” here/);
  });

  test('a nested recipe of another shape does not fill its cell', () => {
    expect(
      complaints(grid({ R: { recipe: 'rail', roles: { outer: 'light', inner: 'dark' } } }, ['R'], [2], [1]))[0],
    ).toMatch(/does not fill a cell of 2 by 1/);
  });

  // By hand: the diamond is twice as wide as high, so a cell 2 wide is filled 1 high, and a cell 2 high is filled 4 wide.
  test('a nested recipe of another shape says which, where and what would do, once for all places', () => {
    const key = {
      D: { recipe: 'diamond-in-a-rectangle', roles: { diamond: 'light', corners: 'dark' } },
      P: { unit: 'plain', role: 'light' },
    };
    expect(complaints(grid(key, ['P D', 'D D'], [2, 2], [2, 2]))).toEqual([
      'recipes[0].body.key.D: “Diamond in a rectangle” is 4 by 2 on its grid and does not fill a cell of 2 by 2. It stands in row 1, column 2.' +
        ' It fills 4 by 2 or 2 by 1: change the grid, or put something else there.',
    ]);
    expect(complaints(grid(key, ['D P', 'D:90 P'], [1, 1], [2, 1]))).toEqual([
      'recipes[0].body.key.D: “Diamond in a rectangle” is 4 by 2 on its grid and does not fill a cell of 1 by 2. It stands in row 1, column 1.' +
        ' Turned a quarter it fills it.',
      'recipes[0].body.key.D: “Diamond in a rectangle” is 4 by 2 on its grid and does not fill a cell of 1 by 1. It stands in row 2, column 1, turned a quarter.' +
        ' It fills 2 by 1 or 1 by 0.5: change the grid, or put something else there.',
    ]);
  });
});
