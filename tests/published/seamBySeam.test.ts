import { describe, expect, it } from 'vitest';
import { buildDrawing } from '../../src/shared/drawing/build.ts';
import { explain, plain } from '../../src/shared/measure/traced.ts';
import { seamsFor } from '../../src/shared/piecing/find/seams/seams.ts';
import { lower } from '../../src/shared/piecing/lower.ts';
import type { Method, MethodPlan } from '../../src/shared/piecing/method.ts';
import { methodNamed, methodsFor } from '../../src/shared/piecing/methods/index.ts';
import type { Unit } from '../../src/shared/piecing/piecing.ts';
import { starter, starterBook } from '../helpers/starters.ts';
import { QUARTER } from '../piecing/someUnits.ts';

/** The pieced unit of a starter recipe. */
function pieced(id: string): Unit {
  const lowered = lower(starter(id), {}, starterBook(), id);
  if (!lowered.ok) throw new Error(`${id} has no piecing`);
  return lowered.value.units.find(({ kind }) => kind === 'pieced') as Unit;
}

const method = methodNamed('seam-by-seam') as Method;

function planned(unit: Unit, grid: number): MethodPlan {
  expect(method.makes(unit)).toBe(true);
  return method.plan(unit, { grid, ...QUARTER });
}

const cuts = ({ cuts: all }: MethodPlan) =>
  all.map(({ count, role, width, height, use }) => `${count} ${role} ${width.value} × ${height.value} ${use}`);

/**
 * For setting triangles at any edge: short sides there, squares of the finished short side and 7/8, cut once; the long side
 * there, squares of the finished long side and 1 1/4, cut twice (common practice).
 */
describe('right triangles at the edge of a unit that is none of the trade’s', () => {
  it('of an economy block of 12 inches are cut two from a 6⅞ square', () => {
    // By hand: the corners' short sides are half the block, 6; four of them come from two squares of 6 + ⅞.
    const plan = planned(pieced('economy'), 3);
    expect(cuts(plan)).toEqual(['2 outer 6.875 × 6.875 square cut once']);
    expect(plan.yield).toBe(1);
    expect(plan.takes?.map(({ unit, count }) => [unit.kind, count])).toEqual([['square-in-square', 1]]);
    expect(plan.trimmed).toBe(true);
    expect(plain(plan.unfinished)).toEqual({ width: 12.5, height: 12.5 });
    expect(plan.templates).toEqual([]);
  });

  it('of a flower basket of 8 inches are cut from 4⅞ squares, its feet from 2⅞ squares, its sides with the ruler', () => {
    // By hand, at 2 inches to the grid unit: the corner's short sides are 4, the feet's 2, and the sides 2 × 4. One corner is
    // half of a square, so two units come out even.
    const plan = planned(pieced('flower-basket'), 2);
    expect(plan.yield).toBe(2);
    expect(cuts(plan).sort()).toEqual([
      '1 background 4.875 × 4.875 square cut once',
      '2 basket 2.875 × 2.875 square cut once',
      '4 background 2.5 × 4.5 rectangle one',
    ]);
    expect(plan.takes?.map(({ unit, count }) => [unit.kind, count])).toEqual([['hst', 1]]);
  });

  it('with the long side at the edge are cut four from a square of the long side and 1¼', () => {
    // By hand: a long side of 4 on the top edge, and two triangles with short sides of 2 at the corners below.
    const drawing = buildDrawing(4, 2, [
      { role: 'goose', corners: [at(0, 0), at(4, 0), at(2, 2)] },
      { role: 'left', corners: [at(0, 0), at(2, 2), at(0, 2)] },
      { role: 'right', corners: [at(4, 0), at(4, 2), at(2, 2)] },
    ]);
    const plan = planned({ kind: 'pieced', key: 'p', width: 4, height: 2, drawing, seams: seamsFor(drawing) }, 1);
    expect(plan.yield).toBe(4);
    expect(cuts(plan).sort()).toEqual([
      '1 goose 5.25 × 5.25 square cut twice',
      '2 left 2.875 × 2.875 square cut once',
      '2 right 2.875 × 2.875 square cut once',
    ]);
  });

  it('have room where a unit inside lost to the ruler', () => {
    // By hand: at 8 inches the middle is 4√2 + ½ = 6.157, on the ruler 6⅛, so 0.032 short; 4 + 0.854 + 0.032 = 4.885.
    const plan = planned(pieced('economy'), 2);
    expect(cuts(plan)).toEqual(['2 outer 5 × 5 square cut once']);
    expect(plan.cuts.map(({ width }) => explain(width))).toEqual([
      '5″ = 4 finished + 0.854 for two seams and the diagonal + 0.032 that the ruler took, up to the next ⅛',
    ]);
  });

  it('make this way the first choice, and templates the next', () => {
    for (const id of ['economy', 'flower-basket', 'fruit-basket', 'cake-stand', 'kaleidoscope'])
      expect(methodsFor(pieced(id)).map((one) => one.id)).toEqual(['seam-by-seam', 'template', 'foundation']);
    // Nothing in it is half a square.
    expect(methodsFor(pieced('spool')).map((one) => one.id)).toEqual(['template']);
  });
});

function at(x: number, y: number) {
  return { x, y };
}
