import { describe, expect, test } from 'vitest';
import type { Cloth, PieceLine } from '../../src/shared/cloth/cloth.ts';
import { batchesOf } from '../../src/shared/quilt/sized.ts';
import type { WorkedOut, WorkedSize } from '../../src/shared/workroom/workedOut.ts';
import { workOut } from '../../src/shared/workroom/workOut.ts';
import { demoPattern, starterRecipes } from '../helpers/starters.ts';
import { patternOf } from './quilts.ts';

const worked: readonly (readonly [string, WorkedOut])[] = [
  ['the demo', workOut(demoPattern())],
  ...starterRecipes().map((recipe) => [recipe.name, workOut(patternOf(recipe))] as const),
];

function everySize(): readonly (readonly [string, WorkedOut, WorkedSize])[] {
  return worked.flatMap(([name, out]) => out.sizes.map((size) => [`${name}, ${size.size.name}`, out, size] as const));
}

/** Area of the strips and pieces of one letter in the plans of every fabric, square inches. */
function laidArea(cloth: Cloth, letter: string): number {
  const strips = cloth.needs.flatMap(({ plan }) => plan.strips);
  return strips.reduce((total, { pieces, times }) => {
    const own = pieces.filter((piece) => piece.letter === letter);
    return total + own.reduce((sum, { width, height, count }) => sum + width * height * count, 0) * times;
  }, 0);
}

function cutArea({ width, height, count }: PieceLine): number {
  return width.value * height.value * count.value;
}

test('every starter recipe and the demo are worked out in three sizes', () => {
  for (const [name, out] of worked) expect(out.sizes, name).toHaveLength(3);
});

describe.each(everySize())('%s', (_, out, { quilt, blocks, cloth, size }) => {
  const { house } = out.pattern;

  test('patches in the drawing are the patches the pieces become', () => {
    for (const { id, piecing } of out.blocks) {
      const uses = cloth.pieces.flatMap(({ use }) => use).filter(({ block }) => block === id);
      const drawn = piecing.drawing.patches.length * (quilt.counts[id] ?? 0);
      expect(uses.reduce((sum, { patches }) => sum + patches, 0)).toBe(drawn);
    }
    const strips = cloth.pieces
      .flatMap(({ use }) => use)
      .filter(({ block, unit }) => block === null && unit !== 'binding');
    expect(strips.reduce((sum, { patches }) => sum + patches, 0)).toBe(quilt.strips.length);
  });

  test('pieces cut are the pieces of whole batches or of every unit, and spares are fewer than one batch gives', () => {
    for (const block of blocks) {
      for (const sized of block.units) {
        const { unit, plan } = sized;
        const uses = cloth.pieces
          .flatMap(({ use }) => use)
          .filter((use) => use.block === block.id && use.unit === unit.key);
        const cut = uses.reduce((sum, { count }) => sum + count, 0);
        // What becomes one patch by itself is cut for every unit; what is cut apart comes in whole batches.
        const pieces = plan.cuts.map(({ count, patches, stripSet }) =>
          patches === 1 && stripSet === undefined ? (count * sized.needed) / plan.yield : count * batchesOf(sized),
        );
        expect(cut).toBe(pieces.reduce((sum, count) => sum + count, 0));
      }
    }
    for (const line of cloth.pieces.filter(({ cutAs }) => cutAs === 'piece')) {
      expect(line.spare).toBeGreaterThanOrEqual(0);
      expect(line.count.value).toBe(line.use.reduce((sum, { count }) => sum + count, 0));
    }
  });

  test('the plans lay down every piece of the cut list', () => {
    for (const line of cloth.pieces) {
      if (line.joined !== undefined) continue;
      expect(laidArea(cloth, line.letter), line.letter).toBeCloseTo(cutArea(line), 4);
    }
  });

  test('joined strips reach as far as all their pieces, less what joins take up', () => {
    for (const line of cloth.pieces.filter(({ joined }) => joined !== undefined)) {
      const joins = (line.joined?.value ?? 0) - 1;
      const reach = laidArea(cloth, line.letter) / line.height.value - joins * 2 * house.seam;
      const wanted = line.width.value * line.count.value;
      expect(reach).toBeGreaterThanOrEqual(wanted - 1e-5);
      expect(reach).toBeLessThan(wanted + house.step);
    }
  });

  test('strip sets give the sub-cuts, with less than a set to spare', () => {
    for (const { subCut, spare, count } of cloth.pieces) {
      if (subCut === undefined) continue;
      expect(subCut.sets.value * subCut.perSet.value).toBeGreaterThanOrEqual(subCut.count.value);
      expect((subCut.sets.value - 1) * subCut.perSet.value).toBeLessThan(subCut.count.value);
      expect(count.value % subCut.sets.value).toBe(0);
      expect(spare).toBeGreaterThanOrEqual(0);
    }
  });

  test('no strip is wider than the cloth and every piece stands within its strip', () => {
    for (const { plan } of cloth.needs) {
      for (const strip of plan.strips) {
        const wide = strip.pieces.reduce((sum, piece) => sum + piece.width * piece.count, 0);
        expect(wide).toBeLessThanOrEqual(house.usableWidth + 1e-5);
        for (const piece of strip.pieces) expect(piece.height).toBeLessThanOrEqual(strip.height + 1e-5);
      }
      expect(plan.bound).toBeLessThanOrEqual(plan.length.value + 1e-5);
      expect(plan.used).toBeLessThanOrEqual(1 + 1e-9);
    }
  });

  test('yards cover the strips and the squaring up, by less than one step more', () => {
    for (const { plan, yards } of cloth.needs) {
      const inches = plan.length.value + house.squaring;
      expect(yards.value * 36).toBeGreaterThanOrEqual(inches - 1e-5);
      expect((yards.value - house.yardStep) * 36).toBeLessThan(inches);
    }
  });

  test('every line of the cut list is in the needs of its fabric', () => {
    const fabrics = new Set(cloth.pieces.map(({ fabric }) => fabric));
    expect(new Set(cloth.needs.map(({ fabric }) => fabric))).toEqual(fabrics);
    const needsBinding = cloth.needs.find(({ fabric }) => fabric === cloth.binding.fabric);
    expect(needsBinding?.uses).toContain('binding');
    expect(size.id).toBe(quilt.size);
  });
});

describe('letters', () => {
  test('are the same in every size, and one letter is one piece of one fabric', () => {
    for (const [name, { sizes }] of worked) {
      const meaning = new Map<string, string>();
      for (const { cloth } of sizes) {
        const seen = cloth.pieces.map(({ letter }) => letter);
        expect(new Set(seen).size, name).toBe(seen.length);
        for (const { letter, fabric, cutAs, use } of cloth.pieces) {
          const means = `${fabric} ${cutAs} ${use.map(({ block, unit }) => `${block} ${unit}`).join(', ')}`;
          expect(meaning.get(letter) ?? means, `${name}, ${letter}`).toBe(means);
          meaning.set(letter, means);
        }
      }
    }
  });
});
