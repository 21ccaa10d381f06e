import { describe, expect, test } from 'vitest';
import { freshPattern } from '../../src/shared/pattern/fresh.ts';
import type { Recipe } from '../../src/shared/recipe/schema.ts';
import { recipeUpdate } from '../../src/shared/workroom/recipeUpdate.ts';
import { workOut } from '../../src/shared/workroom/workOut.ts';
import { starter } from '../helpers/starters.ts';

const shooFly = starter('shoo-fly');
const about = { id: 'skerry', title: 'Skerry', designer: 'Saltmarsh & Thread', date: '2026-03-01' };
const worked = workOut(freshPattern(shooFly, [], about));

/** The middle becomes a four-patch of the triangles' fabric. */
function withFourPatch(): Recipe {
  if (shooFly.body.kind !== 'grid') throw new Error('a shoo-fly is a grid');
  const key = { ...shooFly.body.key, M: { unit: 'four-patch' as const, roles: ['fly', 'middle'] as [string, string] } };
  return { ...shooFly, body: { ...shooFly.body, key } };
}

describe('what another revision of a recipe would change', () => {
  const update = recipeUpdate(worked, { recipe: withFourPatch(), revisions: { 'shoo-fly': 2 } });

  test('is told of the units of the block', () => {
    expect(update.recipe).toEqual(['Plain square in block A: 4, was 5.', 'Four-patch in block A: 1, was none.']);
  });

  test('is told for every size, with what is cut before and after', () => {
    expect(update.sizes.map(({ size }) => size)).toEqual(['Cot', 'Lap', 'Double']);
    // 6 × 8 blocks of 6″: 48 middles, each a square of 2″ finished, so 2½″ cut, are no longer cut.
    expect(update.sizes[0]?.changes).toContain('Middle, 2½″ × 2½″: cut none, was 48.');
  });

  test('leaves the pattern as it is until it is taken', () => {
    expect(update.pattern).not.toBe(worked.pattern);
    expect(worked.pattern.recipes).toEqual([shooFly]);
  });

  test('is nothing when the recipe is the same', () => {
    const same = recipeUpdate(worked, { recipe: { ...shooFly } });
    expect(same).toEqual({ pattern: worked.pattern, recipe: [], sizes: [], newFindings: [], mended: [] });
  });

  test('tells of findings that come, and of sizes that can no longer be made', () => {
    if (shooFly.body.kind !== 'grid') throw new Error('a shoo-fly is a grid');
    const broken = { ...shooFly, body: { ...shooFly.body, layout: ['H P H:90', 'P M P', 'H:270 P'] } };
    const bad = recipeUpdate(worked, { recipe: broken });
    expect(bad.sizes[0]).toEqual({ size: 'Cot', changes: ['It can no longer be made.'] });
    expect(bad.newFindings.map(({ what }) => what)).toEqual([
      'Row 3 of the layout leaves a gap: 2 entries for 3 columns.',
    ]);
    const mended = recipeUpdate(workOut(bad.pattern), { recipe: shooFly });
    expect(mended.mended).toEqual(bad.newFindings);
    expect(mended.sizes[0]?.changes).toEqual(['It can be made again.']);
  });

  test('tells of roles and parameters that come and go', () => {
    const role = { id: 'lamp', name: 'Lamp', value: 'medium' as const };
    const renamed = { ...shooFly, name: 'Shoo', roles: [...shooFly.roles.slice(0, 2), role] };
    expect(recipeUpdate(worked, { recipe: renamed }).recipe.slice(0, 3)).toEqual([
      'It is called Shoo, was Shoo-fly.',
      'Fabric role Lamp is new.',
      'Fabric role Middle is gone.',
    ]);
  });
});
