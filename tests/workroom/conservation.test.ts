import { describe, expect, test } from 'vitest';
import { outlinePoints } from '../../src/shared/drawing/curve.ts';
import { type Drawing, doubleArea } from '../../src/shared/drawing/drawing.ts';
import { type Point, turnPoint, turnSize } from '../../src/shared/drawing/turn.ts';
import { setRuler } from '../../src/shared/pattern/edits/index.ts';
import type { Pattern } from '../../src/shared/pattern/schema.ts';
import type { Unit } from '../../src/shared/piecing/piecing.ts';
import { leavesOf } from '../../src/shared/piecing/tree.ts';
import { unitsInside } from '../../src/shared/piecing/unitsInside.ts';
import { pointsIn } from '../../src/shared/pressing/meet.ts';
import { clip } from '../../src/shared/quilt/onPoint/clip.ts';
import { outlineOf } from '../../src/shared/quilt/onPoint/pieces.ts';
import type { BlockLeaf } from '../../src/shared/quilt/quilt.ts';
import { batchesOf } from '../../src/shared/quilt/sized.ts';
import { rulerChange } from '../../src/shared/workroom/rulerChange.ts';
import type { WorkedOut, WorkedSize } from '../../src/shared/workroom/workedOut.ts';
import { workOut } from '../../src/shared/workroom/workOut.ts';
import { testPattern, testPatternNames } from '../helpers/fixtures.ts';
import { demoPattern } from '../helpers/starters.ts';

function inCentimetres(): Pattern {
  const demo = demoPattern();
  return setRuler.apply(demo, rulerChange(demo, workOut(demo).blocks, 'centimetres'));
}

const worked: readonly (readonly [string, WorkedOut])[] = [
  ['the demo', workOut(demoPattern())],
  ['the demo on point', workOut(demoPattern('winter-nets'))],
  ['the demo in centimetres', workOut(inCentimetres())],
  ...testPatternNames().map((name) => [name, workOut(testPattern(name))] as const),
];

const everySize = worked.flatMap(([name, out]) =>
  out.sizes.map((size) => [`${name}, ${size.size.name}`, out, size] as const),
);

/** Adds to what a key has so far. */
function add(sums: Map<string, number>, key: string, by: number): void {
  sums.set(key, (sums.get(key) ?? 0) + by);
}

/** Patches of the whole quilt by fabric, counted in the drawings: nothing the pieces are worked out from. */
function drawnPatches({ blocks }: WorkedOut, { quilt }: WorkedSize): ReadonlyMap<string, number> {
  const drawn = new Map<string, number>();
  for (const leaf of quilt.blocks) {
    const block = blocks.find(({ id }) => id === leaf.block);
    for (const { role } of block?.piecing.drawing.patches ?? []) add(drawn, block?.fabricOf[role] ?? '', 1);
  }
  for (const { fabric } of [...quilt.strips, ...quilt.patches, ...quilt.triangles]) add(drawn, fabric, 1);
  return drawn;
}

/** What is left of a patch of a block that is cut off at the edge of the quilt. */
function kept(outline: readonly Point[], { part, turn }: BlockLeaf, drawing: Drawing): readonly Point[] {
  if (part === undefined) return outline;
  const { width, height } = turnSize(drawing.width, drawing.height, turn);
  const lying = outline.map((point) => turnPoint(point, turn, drawing.width, drawing.height));
  const [a, b, reach] = part.along === 'across' ? [1, 0, width] : [0, 1, height];
  const planes = [
    { a: -a, b: -b, c: -part.from * reach },
    { a, b, c: part.to * reach },
  ];
  // Mirroring runs an outline round the other way.
  return turn.mirrored ? [...clip(lying, planes)].reverse() : clip(lying, planes);
}

/** Finished square inches of every fabric on the top, from the outlines. */
function finishedArea({ blocks }: WorkedOut, { quilt }: WorkedSize): ReadonlyMap<string, number> {
  const area = new Map<string, number>();
  for (const leaf of quilt.blocks) {
    const block = blocks.find(({ id }) => id === leaf.block);
    if (block === undefined) throw new Error('a block that is not there');
    const { drawing } = block.piecing;
    const grid = (quilt.measures[leaf.block] ?? quilt.block).width / drawing.width;
    for (const patch of drawing.patches) {
      const own = (doubleArea(kept(outlinePoints(drawing, patch), leaf, drawing)) / 2) * grid * grid;
      add(area, block.fabricOf[patch.role] ?? '', own);
    }
  }
  for (const piece of [...quilt.strips, ...quilt.patches, ...quilt.triangles])
    add(area, piece.fabric, Math.abs(doubleArea(outlineOf(piece))) / 2);
  return area;
}

/** Units of each block in the whole quilt, counted in the seam trees. */
function unitsInTrees({ blocks }: WorkedOut, { quilt, blocks: sized }: WorkedSize): ReadonlyMap<string, number> {
  const units = new Map<string, number>();
  for (const leaf of quilt.blocks) {
    const block = blocks.find(({ id }) => id === leaf.block);
    if (block === undefined) continue;
    const all = new Map(block.piecing.units.map((unit) => [unit.key, unit]));
    for (const { unit } of leavesOf(block.piecing.root)) {
      add(units, `${block.id} ${unit}`, 1);
      const inside = unitsInside(all.get(unit) as Unit);
      // On paper a unit is sewn patch by patch, whatever stands in it.
      const takes = sized.find(({ id }) => id === block.id)?.units.find((one) => one.unit.key === unit)?.plan.takes;
      if (takes !== undefined) for (const one of inside) add(units, `${block.id} ${one.unit.key}`, one.count);
    }
  }
  return units;
}

test('there are patterns of every kind to look at', () => {
  expect(everySize.length).toBeGreaterThan(15);
});

describe.each(everySize)('%s', (_name, out, size) => {
  const { cloth, quilt } = size;

  test('patches drawn of each fabric are the patches its pieces become', () => {
    const cut = new Map<string, number>();
    for (const line of cloth.pieces) {
      // Binding is no patch of the top.
      for (const { patches } of line.use) if (patches > 0) add(cut, line.fabric, patches);
    }
    expect(cut).toEqual(drawnPatches(out, size));
  });

  test('the steps make exactly the units in the seam trees, and no more than a batch to spare', () => {
    const trees = unitsInTrees(out, size);
    const made = size.blocks.flatMap(({ id, units }) => units.map((unit) => ({ id, ...unit })));
    expect(made.filter(({ needed }) => needed > 0).length).toBe(trees.size);
    for (const { id, unit, needed, runs, plan } of made) {
      expect(needed).toBe(trees.get(`${id} ${unit.key}`) ?? 0);
      expect(runs.reduce((sum, run) => sum + run.needed, 0)).toBe(needed);
      // With what its likes left over, every run has enough, and less than a batch to spare.
      for (const run of runs) {
        const batches = batchesOf({ runs: [run], plan });
        const spare = batches * plan.yield + ((plan.yield - (run.before % plan.yield)) % plan.yield) - run.needed;
        expect(spare).toBeGreaterThanOrEqual(0);
        expect(spare).toBeLessThan(plan.yield);
      }
    }
  });

  test('pieces cut less the spares are the pieces the units use', () => {
    const trees = unitsInTrees(out, size);
    for (const line of cloth.pieces) {
      const inUnits = line.use.filter(({ block }) => block !== null);
      if (inUnits.length === 0) continue;
      const used = inUnits.reduce((sum, use) => {
        const sized = size.blocks.find(({ id }) => id === use.block)?.units.find(({ unit }) => unit.key === use.unit);
        const cut = sized?.plan.cuts.find(
          (one) =>
            use.words.endsWith(one.use) &&
            // Pieces that become one patch are cut for every unit, all others for whole batches. Strips of one fabric may stand in two sets of a unit, more of them in one than in the other.
            [batchesOf(sized) * one.count, (sized.needed * one.count) / sized.plan.yield].includes(use.count) &&
            out.blocks.some((block) => block.id === use.block && block.fabricOf[one.role] === line.fabric),
        );
        if (sized === undefined || cut === undefined) throw new Error(`Nothing in the blocks is “${use.words}”`);
        expect(sized.needed).toBe(trees.get(`${use.block} ${use.unit}`) ?? 0);
        const used = (units: number) => Math.ceil((units * cut.count) / sized.plan.yield);
        return sized.runs.reduce((all, { before, needed }) => all + used(before + needed) - used(before), sum);
      }, 0);
      if (line.subCut === undefined) expect(line.count.value - line.spare, line.letter).toBe(used);
      else {
        // Each sub-cut carries one piece of every layer of its set; two layers of one letter are two uses.
        const layers = line.count.value / line.subCut.sets.value;
        const taken = line.subCut.sets.value * line.subCut.perSet.value - line.spare;
        expect(taken * layers, line.letter).toBe(used);
      }
    }
  });

  test('no fabric shows more than is cut of it, and the top has no hole', () => {
    const shown = finishedArea(out, size);
    const cut = new Map<string, number>();
    for (const { fabric, width, height, count } of cloth.pieces)
      add(cut, fabric, width.value * height.value * count.value);
    for (const [fabric, area] of shown) expect(area).toBeLessThanOrEqual((cut.get(fabric) ?? 0) + 1e-6);
    const whole = [...shown.values()].reduce((sum, area) => sum + area, 0);
    expect(whole).toBeCloseTo(quilt.finished.width.value * quilt.finished.height.value, 6);
  });

  test('every point to match nests, stacks or lies open', () => {
    const inBlocks = out.blocks.map(({ id, pressing }) => pointsIn(pressing) * (quilt.counts[id] ?? 0));
    const pressed = inBlocks.reduce((sum, points) => sum + points, pointsIn(size.pressing));
    expect(size.pressing.stacked).toHaveLength(size.pressing.stacks);
    expect(size.points).toBe(pressed);
  });
});
