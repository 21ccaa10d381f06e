import { count, named, over, plus, rounded, type Traced, times } from '../measure/traced.ts';
import type { House } from '../pattern/schema.ts';
import { piecesOf, spareOf, useOf } from './blockPieces.ts';
import type { PieceLine, SubCut } from './cloth.ts';
import { usableWidth } from './join.ts';
import { setSignature } from './setSignature.ts';
import type { UnitCut } from './unitCut.ts';

/**
 * The lines of the chart for strip sets: whole strips across the cloth, sewn side by side, then crosscut. A set is sewn whole
 * even when its last sub-cuts are not needed, because the rest of sewn strips serves for nothing else. Sets of the same
 * fabrics, widths and crosscut are one set, whichever units and blocks take from it.
 */
export function stripSetLines(cuts: readonly UnitCut[], house: House): readonly PieceLine[] {
  const inUnits = grouped(cuts, ({ block, sized, cut }) => `${block} | ${sized.unit.key} | ${cut.stripSet}`);
  const sets = grouped(inUnits, (layers) => setSignature(layers.map(({ fabric, cut }) => ({ fabric, cut }))));
  return sets.flatMap((set) => linesOfSet(set.flat(), house));
}

/** What has a strip set, grouped by a key, groups in the order they are first met. */
function grouped<T extends UnitCut | readonly UnitCut[]>(
  items: readonly T[],
  key: (item: T) => string,
): readonly T[][] {
  const groups = new Map<string, T[]>();
  for (const item of items) {
    if ('cut' in item && item.cut.stripSet === undefined) continue;
    groups.set(key(item), [...(groups.get(key(item)) ?? []), item]);
  }
  return [...groups.values()];
}

function linesOfSet(set: readonly UnitCut[], house: House): readonly PieceLine[] {
  const [first] = set as readonly [UnitCut, ...UnitCut[]];
  // Every cut of one unit's set says the same number of sub-cuts: each sub-cut carries one piece of every strip.
  const oncePerUnit = [...new Map(set.map((of) => [of.sized, of])).values()];
  const [one, ...others] = oncePerUnit.map(piecesOf) as [Traced, ...Traced[]];
  const wanted = named(others.length === 0 ? one : plus(one, ...others), 'sub-cuts');
  const perSet = subCutsPerSet(first.cut.height, house);
  const subCut = { length: first.cut.height, perSet, count: wanted, sets: rounded(over(wanted, perSet), 1, 'up') };
  const left = subCut.sets.value * perSet.value - wanted.value;
  const spare = oncePerUnit.reduce((sum, of) => sum + spareOf(of, piecesOf(of).value), left);
  const byLetter = new Map<string, UnitCut[]>();
  for (const of of set) byLetter.set(of.letter, [...(byLetter.get(of.letter) ?? []), of]);
  return [...byLetter.values()].map((layers) => lineOf(layers, subCut, spare, house));
}

/** The line for the strips of one letter: two layers of a set may be cut alike. */
function lineOf(layers: readonly UnitCut[], subCut: SubCut, spare: number, house: House): PieceLine {
  const [layer] = layers as readonly [UnitCut, ...UnitCut[]];
  const inASet = layers.filter((of) => of.sized === layer.sized).length;
  return {
    letter: layer.letter,
    fabric: layer.fabric,
    width: usableWidth(house),
    height: layer.cut.width,
    count: inASet === 1 ? subCut.sets : times(count(inASet, 'strips in a set'), named(subCut.sets, 'sets')),
    spare,
    use: layers.map((of) => useOf(of, piecesOf(of).value)),
    cutAs: 'strip-set',
    subCut,
  };
}

/** Whole sub-cuts from one set as long as the cloth is wide. */
function subCutsPerSet(length: Traced, house: House): Traced {
  const whole = rounded(over(usableWidth(house), length), 1, 'down');
  return named(whole.value >= 1 ? whole : count(1, ''), 'from a set');
}
