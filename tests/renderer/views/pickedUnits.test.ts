import { expect, test } from 'vitest';
import { unitsHolding } from '../../../src/renderer/block/pickedUnits.ts';
import { lower } from '../../../src/shared/piecing/lower.ts';
import { leavesOf } from '../../../src/shared/piecing/tree.ts';
import { insidePlaces, withInside } from '../../../src/shared/piecing/unitsInside.ts';
import { starterRecipes } from '../../helpers/starters.ts';

const recipes = starterRecipes();
const book = new Map(recipes.map((recipe) => [recipe.id, recipe]));
const piecings = recipes.flatMap((recipe) => {
  const lowered = lower(recipe, {}, book, '');
  return lowered.ok ? [{ name: recipe.name, piecing: lowered.value }] : [];
});

test('there and back: a unit is found from every patch of every place it stands in', () => {
  for (const { name, piecing } of piecings)
    for (const { key } of withInside(piecing.units)) {
      const whole = leavesOf(piecing.root).flatMap(({ unit, patches }) => (unit === key ? patches : []));
      for (const patch of [...whole, ...insidePlaces(piecing, key).flat()])
        expect(unitsHolding(piecing, [patch]).has(key), `${name}, patch ${patch}`).toBe(true);
    }
});

test('a patch lies in one unit, and in what stands inside it at most; none picked lie in none', () => {
  for (const { name, piecing } of piecings) {
    const wholes = new Set(leavesOf(piecing.root).map(({ unit }) => unit));
    piecing.drawing.patches.forEach((_, patch) => {
      const found = [...unitsHolding(piecing, [patch])];
      expect(found.filter((key) => wholes.has(key)).length, `${name}, patch ${patch}`).toBeGreaterThanOrEqual(1);
    });
    expect(unitsHolding(piecing, []).size).toBe(0);
  }
});
