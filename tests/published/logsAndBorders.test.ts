import { describe, expect, test } from 'vitest';
import { given } from '../../src/shared/measure/traced.ts';
import { lower } from '../../src/shared/piecing/lower.ts';
import { logCut } from '../../src/shared/piecing/methods/logCut.ts';
import { plainCut } from '../../src/shared/piecing/methods/plainCut.ts';
import { leavesOf } from '../../src/shared/piecing/tree.ts';
import { buttBorder, type Growing } from '../../src/shared/quilt/borders.ts';
import { recipeSchema } from '../../src/shared/recipe/schema.ts';
import { demoPattern, starter, starterBook } from '../helpers/starters.ts';

const QUARTER = { seam: 1 / 4, step: 1 / 8 };

/** Cut lengths of the logs in sewing order, inches. */
function logLengths(id: string, parameters: Record<string, number>, inchesPerUnit: number, body?: object): number[] {
  const recipe = body === undefined ? starter(id) : recipeSchema.parse({ ...starter(id), id: 'core-with-logs', body });
  const result = lower(recipe, parameters, new Map([...starterBook(), [recipe.id, recipe]]), '');
  if (!result.ok) throw new Error(result.findings[0]?.what);
  const { root, units } = result.value;
  const known = new Map(units.map((unit) => [unit.key, unit]));
  return leavesOf(root).flatMap((leaf) => {
    const unit = known.get(leaf.unit);
    if (unit?.kind !== 'log') return [];
    const [cut] = logCut.plan(unit, { grid: inchesPerUnit, ...QUARTER }).cuts;
    return [Math.max(cut?.width.value ?? 0, cut?.height.value ?? 0)];
  });
}

describe('log cabins', () => {
  // Brunswick Quilters (guild), log cabin block: 10 finished block, centre 3 (finished 2½), strips 1¾ cut.
  test('a 10-inch block from 1¾ strips about a 3-inch centre cuts the published lengths', () => {
    const lengths = logLengths('log-cabin', { centre: 2, rounds: 3 }, 1.25);
    expect(lengths).toEqual([3, 4.25, 4.25, 5.5, 5.5, 6.75, 6.75, 8, 8, 9.25, 9.25, 10.5]);
    const result = lower(starter('log-cabin'), { centre: 2, rounds: 3 }, starterBook(), '');
    const centre = result.ok ? result.value.units.find((unit) => unit.kind === 'plain') : undefined;
    if (centre === undefined) throw new Error('no centre');
    expect(plainCut.plan(centre, { grid: 1.25, ...QUARTER }).unfinished.width.value).toBe(3);
    if (result.ok) expect(result.value.drawing.width * 1.25 + 0.5).toBe(10.5);
  });

  // A quilting handbook, p. 39 (scan): 6 finished block, ½ logs, 5 rounds → 20 logs.
  test('a 6-inch block of half-inch logs in five rounds has 20 logs', () => {
    const result = lower(starter('log-cabin'), { centre: 2, rounds: 5 }, starterBook(), '');
    if (!result.ok) throw new Error('does not lower');
    expect(leavesOf(result.value.root).filter((leaf) => leaf.unit.startsWith('log'))).toHaveLength(20);
    expect(result.value.drawing.width * 0.5).toBe(6);
  });

  // Common practice: strips 2½ cut around an 8-inch finished core, two rounds; six such blocks make the 41 × 57 quilt.
  test('two rounds of 2½ strips about an 8-inch core cut 8½ to 16½ and leave a 16½ block', () => {
    const core = { recipe: 'sawtooth-star', roles: { background: 'light', points: 'dark', middle: 'centre' } };
    const body = {
      kind: 'rounds',
      core,
      coreWidth: 4,
      coreHeight: 4,
      strip: 1,
      rounds: 2,
      order: ['top', 'right', 'bottom', 'left'],
      logs: ['light', 'light', 'dark', 'dark'],
    };
    expect(logLengths('log-cabin', {}, 2, body)).toEqual([8.5, 10.5, 10.5, 12.5, 12.5, 14.5, 14.5, 16.5]);
  });
});

describe('butted borders', () => {
  // Quilting magazine (scan): three rounds 1 finished on a 29½ × 19½ top, along the long edge first.
  test('three one-inch rounds on a 29½ × 19½ top are cut as printed', () => {
    const { house } = demoPattern();
    const size = { width: given(29, 'finished'), height: given(19, 'finished') };
    let top: Growing = { box: { x: 0, y: 0, width: 29, height: 19 }, size };
    const cut: number[] = [];
    for (const id of ['first', 'second', 'third']) {
      const border = { id, name: `Border ${id}`, fabric: 'sand', width: 1, first: 'ends' as const };
      const sewn = buttBorder(top, border, { sides: 1, ends: 1 }, house);
      cut.push(...sewn.logs.map(({ part }) => (part.kind === 'strip' ? part.cutLength.value : 0)));
      top = sewn.top;
    }
    expect(cut).toEqual([29.5, 29.5, 21.5, 21.5, 31.5, 31.5, 23.5, 23.5, 33.5, 33.5, 25.5, 25.5]);
    expect(top.size.width.value + 0.5).toBe(35.5);
    expect(top.size.height.value + 0.5).toBe(25.5);
  });
});
