import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { buildDrawing } from '../../../src/shared/drawing/build.ts';
import type { Drawing, Polygon } from '../../../src/shared/drawing/drawing.ts';
import { ALL_TURNS } from '../../../src/shared/drawing/turn.ts';
import { turnDrawing } from '../../../src/shared/drawing/whole.ts';
import { total, treeCost } from '../../../src/shared/piecing/find/cost.ts';
import { seamsWithUnits, unitsIn } from '../../../src/shared/piecing/find/made/choose.ts';
import { pieceDrawing } from '../../../src/shared/piecing/find/pieceDrawing.ts';
import { lower } from '../../../src/shared/piecing/lower.ts';
import { loosePatchesOf, patchesOf, unitsOf } from '../../../src/shared/piecing/seamTree.ts';
import { unitPolygons } from '../../../src/shared/piecing/unitShape.ts';
import { unitsInside } from '../../../src/shared/piecing/unitsInside.ts';
import { starter, starterBook } from '../../helpers/starters.ts';
import { slicedUnits } from '../someUnits.ts';
import { leastOfAllChoices } from './exhaustive.ts';

/** What stands in the units of a starter recipe that are none of the trade's: kind and how many, from the way it is drawn. */
function insideOf(id: string): readonly string[] {
  const lowered = lower(starter(id), {}, starterBook(), '');
  if (!lowered.ok) throw new Error(id);
  return lowered.value.units
    .filter(({ kind }) => kind === 'pieced')
    .flatMap((unit) => unitsInside(unit).map(({ unit: { kind }, count }) => `${count} ${kind}`));
}

describe('units of the trade inside a unit that is none', () => {
  // Counted in the blocks as they are drafted; that such triangles are made as half-square triangles, such geese as flying
  // geese, and the middle of an economy block as a square in a square is common practice.
  test.each([
    ['birds-in-the-air', ['3 hst']],
    ['cake-stand', ['1 hst', '6 hst']],
    ['economy', ['1 square-in-square']],
    ['flower-basket', ['1 hst']],
    ['fruit-basket', ['6 hst']],
    ['wild-goose-chase', ['8 geese']],
  ])('%s', (id, inside) => {
    expect([...insideOf(id)].sort()).toEqual([...inside].sort());
  });

  test('a square in a square on its point keeps its true size: its side is the half diagonal of the square it stands in', () => {
    const lowered = lower(starter('economy'), {}, starterBook(), '');
    const [unit] = lowered.ok ? lowered.value.units.filter(({ kind }) => kind === 'square-in-square') : [];
    expect(unit?.width).toBeCloseTo(4 / Math.SQRT2, 9);
  });

  test('squares on their point that no ruler has are no nine-patch: cut round a template they come out true', () => {
    const drawing = onPoint(6, (x, y) => ['a', 'b', 'c'][(x % 2) + (y % 2)] as string, 3);
    expect(unitsOf(seamsWithUnits(drawing))).toEqual([]);
  });

  test('are the same ones however the block is turned, and their mirror images when it is mirrored', () => {
    for (const id of ['birds-in-the-air', 'cake-stand', 'economy', 'fruit-basket']) {
      const lowered = lower(starter(id), {}, starterBook(), '');
      if (!lowered.ok) throw new Error(id);
      const keys = (drawing: Drawing) => pieceDrawing(drawing).units.map(({ key }) => key);
      const trade = (drawing: Drawing) => keys(drawing).filter((key) => !key.startsWith('pieced'));
      for (const turn of ALL_TURNS) {
        expect(trade(turnDrawing(lowered.value.drawing, turn)).sort()).toEqual(
          [...trade(lowered.value.drawing)].sort(),
        );
      }
    }
  });

  test('every patch is sewn once, loose or in one unit, and no unit sticks out of itself', () => {
    fc.assert(
      fc.property(slicedUnits, (unit) => {
        if (unit.kind !== 'pieced') return;
        const tree = unit.seams;
        const all = unit.drawing.patches.map((_, i) => i);
        expect([...patchesOf(tree)].sort((a, b) => a - b)).toEqual(all);
        const inUnits = unitsOf(tree).flatMap(({ patches }) => patches);
        expect([...loosePatchesOf(tree), ...inUnits].sort((a, b) => a - b)).toEqual(all);
        for (const { shape, patches } of unitsOf(tree)) {
          const roles = (of: readonly { readonly role: string }[]) => of.map(({ role }) => role).sort();
          const own = patches.map((patch) => unit.drawing.patches[patch] as Drawing['patches'][number]);
          expect(roles(unitPolygons({ ...shape, key: '' }))).toEqual(roles(own));
        }
      }),
    );
  });

  test('cost no more than the cheapest of all choices of units in a small drawing', () => {
    fc.assert(
      fc.property(slicedUnits, (unit) => {
        if (unit.kind !== 'pieced') return;
        fc.pre(unitsIn(unit.drawing).length <= 8);
        const found = total(treeCost(seamsWithUnits(unit.drawing)));
        expect(found / leastOfAllChoices(unit.drawing)).toBeLessThan(1.05);
      }),
    );
  });
});

/** Equal squares on their point in a square, with a triangle at each corner of it. */
function onPoint(side: number, role: (x: number, y: number) => string, squares: number): Drawing {
  const half = side / 2;
  const spot = (u: number, v: number) => ({ x: half + ((u - v) * half) / squares, y: ((u + v) * half) / squares });
  const cells = Array.from({ length: squares * squares }, (_, i): Polygon => {
    const [u, v] = [i % squares, Math.floor(i / squares)];
    return { role: role(u, v), corners: [spot(u, v), spot(u + 1, v), spot(u + 1, v + 1), spot(u, v + 1)] };
  });
  const corner = (x: number, y: number): Polygon => ({
    role: 'd',
    corners: [
      { x, y },
      { x: half, y },
      { x, y: half },
    ],
  });
  return buildDrawing(side, side, [...cells, corner(0, 0), corner(side, 0), corner(side, side), corner(0, side)]);
}
