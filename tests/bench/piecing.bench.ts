import fc from 'fast-check';
import { buildDrawing } from '../../src/shared/drawing/build.ts';
import type { Drawing } from '../../src/shared/drawing/drawing.ts';
import { total, treeCost } from '../../src/shared/piecing/find/cost.ts';
import { seamsWithUnits, unitsIn } from '../../src/shared/piecing/find/made/choose.ts';
import { pieceDrawing } from '../../src/shared/piecing/find/pieceDrawing.ts';
import { planCost } from '../../src/shared/piecing/find/planCost.ts';
import { readDrawnBody } from '../../src/shared/recipe/drawn.ts';
import { starter } from '../helpers/starters.ts';
import { drawings } from '../piecing/find/drawings.ts';
import { cheapestOfAll, leastOfAllChoices } from '../piecing/find/exhaustive.ts';
import { box, halves } from '../piecing/find/shapes.ts';
import { slicedUnits } from '../piecing/someUnits.ts';
import { median, type Row } from './row.ts';

const ROLES = ['a', 'b', 'c', 'd'];

/** Whole numbers by chance that are the same in every run (the minimal standard generator, Park and Miller 1988). */
function chance(seed: number): (below: number) => number {
  let state = seed;
  return (below) => {
    state = (state * 48271) % 2147483647;
    return state % below;
  };
}

/**
 * The kind of drawing with the most ways to sew it: equal squares in rows and columns, some cut from corner to corner, in
 * fabrics by chance, so that seams run from edge to edge everywhere and hardly two parts are alike.
 */
function gridded(patches: number): Drawing {
  const pick = chance(patches);
  const side = Math.ceil(Math.sqrt(patches * 0.6));
  const role = () => ROLES[pick(ROLES.length)] as string;
  const cut = patches - side * side;
  const polygons = Array.from({ length: side * side }, (_, i) => {
    const [x, y] = [i % side, Math.floor(i / side)];
    // Spread evenly over the block.
    const isCut = Math.floor(((i + 1) * cut) / (side * side)) > Math.floor((i * cut) / (side * side));
    if (!isCut) return [box(role(), x, y, 1, 1)];
    return halves([role(), role()], x, y, 1, pick(4) as 0 | 1 | 2 | 3);
  });
  return buildDrawing(side, side, polygons.flat());
}

/** A star of diamonds of diamonds, its squares and triangles set in. */
function loneStar(): Drawing {
  const { body } = starter('lone-star');
  const read = body.kind === 'drawing' ? readDrawnBody(body, 'body') : null;
  if (read?.ok !== true) throw new Error('The lone star is no drawing');
  return read.value;
}

/** How much dearer than the cheapest of all plans the plans found are, over small drawings by chance, in per cent. */
let dear: readonly number[] | null = null;
function dearness(): readonly number[] {
  dear ??= dearnessOf(fc.sample(drawings, { numRuns: 300, seed: 7 }).filter(({ patches }) => patches.length <= 9));
  return dear;
}

function dearnessOf(small: readonly Drawing[]): readonly number[] {
  return small.flatMap((drawing) => {
    const { root, units } = pieceDrawing(drawing);
    const best = units.some(({ kind }) => kind === 'pieced') ? null : cheapestOfAll(drawing);
    return best === null ? [] : [100 * (planCost(root, units) / best - 1)];
  });
}

/** The same of units of the trade inside pieced ones: every set of them that do not overlap is sewn out. */
function insideDearness(): readonly number[] {
  return fc.sample(slicedUnits, { numRuns: 300, seed: 11 }).flatMap((unit) => {
    const many = unit.kind === 'pieced' ? unitsIn(unit.drawing).length : 0;
    if (unit.kind !== 'pieced' || many === 0 || many > 8) return [];
    return [100 * (total(treeCost(seamsWithUnits(unit.drawing))) / leastOfAllChoices(unit.drawing) - 1)];
  });
}

/** The budget stands at 100 patches; the others show how the time grows. */
const BUDGETS = [
  [10, 5],
  [25, 15],
  [50, 25],
  [100, 50],
  [200, 100],
  [400, 400],
] as const;

export const rows: readonly Row[] = [
  ...BUDGETS.map(([patches, budget]): Row => {
    const measure = () => {
      const drawing = gridded(patches);
      return median(() => pieceDrawing(drawing), { warm: 3, timed: 9 });
    };
    return { what: `piecing found for a free drawing of ${patches} patches`, budget, measure };
  }),
  {
    what: 'piecing found for a star of 80 patches with set-in seams',
    budget: 50,
    measure: () => {
      const star = loneStar();
      return median(() => pieceDrawing(star), { warm: 5, timed: 15 });
    },
  },
  {
    what: 'cost of the piecing found over the cheapest of all plans, small drawings, mean',
    budget: 1,
    unit: '%',
    measure: () => {
      const all = dearness();
      return all.reduce((sum, one) => sum + one, 0) / all.length;
    },
  },
  {
    what: 'cost of the piecing found over the cheapest of all plans, small drawings, worst',
    budget: 10,
    unit: '%',
    measure: () => Math.max(...dearness()),
  },
  {
    what: 'cost of the units chosen inside pieced ones over the cheapest of all choices, small drawings, worst',
    budget: 5,
    unit: '%',
    measure: () => Math.max(...insideDearness()),
  },
];
