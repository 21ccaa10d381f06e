import { describe, expect, test } from 'vitest';
import { drawingPolygons } from '../../src/shared/drawing/polygons.ts';
import { lower } from '../../src/shared/piecing/lower.ts';
import type { Piecing } from '../../src/shared/piecing/piecing.ts';
import { leavesOf } from '../../src/shared/piecing/tree.ts';
import { drawnBody } from '../../src/shared/recipe/drawn.ts';
import { type Recipe, recipeSchema } from '../../src/shared/recipe/schema.ts';
import { patchWords, reassemble } from './find/reassemble.ts';
import { churnDash, eightPointStar, sawtoothStar } from './find/shapes.ts';

function recipe(id: string, roles: readonly string[], body: unknown): Recipe {
  return recipeSchema.parse({
    format: 'piecewright-recipe',
    version: 1,
    id,
    name: id,
    finished: 12,
    roles: roles.map((role) => ({ id: role, name: role, value: 'light' })),
    body,
  });
}

const STAR = recipe('drawn-star', ['background', 'points', 'middle'], drawnBody(sawtoothStar()));
const DASH = recipe('drawn-dash', ['background', 'dash'], drawnBody(churnDash()));
const EIGHT = recipe('drawn-eight', ['diamond-0', 'diamond-1', 'triangles', 'squares'], drawnBody(eightPointStar(12)));

function lowered(of: Recipe): Piecing {
  const result = lower(of, {}, new Map([STAR, DASH, EIGHT, of].map((one) => [one.id, one])), '');
  if (!result.ok) throw new Error(result.findings.map(({ what }) => what).join(' '));
  return result.value;
}

function comesBack({ root, units, drawing }: Piecing): void {
  expect(patchWords(reassemble(root, units).polygons)).toEqual(patchWords(drawingPolygons(drawing)));
}

describe('a body that is drawn freely', () => {
  test.each([STAR, DASH, EIGHT])('$name is sewn into what is drawn', (of) => {
    comesBack(lowered(of));
  });

  test('stands in a cell of a grid, turned and scaled, in the grid’s own fabrics', () => {
    const body = {
      kind: 'grid',
      columns: [4, 4],
      rows: [4],
      key: {
        S: { recipe: 'drawn-star', roles: { background: 'sea', points: 'sand', middle: 'sea' } },
        D: { recipe: 'drawn-dash', roles: { background: 'sea', dash: 'sand' } },
      },
      layout: ['S:90 D:m'],
    };
    const piecing = lowered(recipe('holder', ['sea', 'sand'], body));
    comesBack(piecing);
    expect(new Set(piecing.drawing.patches.map(({ role }) => role))).toEqual(new Set(['sea', 'sand']));
    expect(piecing.units.map(({ kind }) => kind)).toContain('rails');
    expect(leavesOf(piecing.root).filter(({ unit }) => unit.startsWith('geese'))).toHaveLength(4);
  });

  test('stands in the middle of rounds, off the grid as it is', () => {
    const body = {
      kind: 'rounds',
      core: { recipe: 'drawn-eight' },
      coreWidth: 12,
      coreHeight: 12,
      strip: 2,
      rounds: 1,
      order: ['top', 'right', 'bottom', 'left'],
      logs: ['squares', 'squares', 'triangles', 'triangles'],
    };
    const piecing = lowered(
      recipe(
        'framed',
        EIGHT.roles.map(({ id }) => id),
        body,
      ),
    );
    comesBack(piecing);
    expect(piecing.drawing.width).toBe(16);
    expect(piecing.root.kind).toBe('rounds');
    expect(piecing.findings).toEqual([
      expect.objectContaining({ level: 'look', what: expect.stringMatching(/8 seams have to be set in/) }),
    ]);
    expect(piecing.findings?.[0]?.where.box).toEqual({ x: 2, y: 2, width: 12, height: 12 });
  });

  test('names a fabric it has not, with its place', () => {
    const body = {
      kind: 'drawing',
      width: 2,
      height: 1,
      patches: [
        {
          role: 'sea',
          corners: [
            [0, 0],
            [2, 0],
            [2, 1],
            [0, 1],
          ],
        },
      ],
    };
    const result = lower(recipe('plain', ['sand'], body), {}, new Map(), 'recipes[2]');
    expect(result.ok ? [] : result.findings.map(({ where, what }) => `${where.path} ${what}`)).toEqual([
      expect.stringMatching(/^recipes\[2\]\.body\.patches\[0\]\.role .*no fabric role “sea”/),
    ]);
  });
});
