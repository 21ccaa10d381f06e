import { count, named, over, plus, rounded, type Traced, times } from '../measure/traced.ts';
import type { House } from '../pattern/schema.ts';
import { piecesOf, spareOf, type UnitCut, useOf } from './blockPieces.ts';
import type { PieceLine } from './cloth.ts';
import { usableWidth } from './join.ts';

/**
 * The lines of the chart for strip sets: whole strips across the cloth, sewn side by side, then crosscut. A set is sewn whole
 * even when its last sub-cuts are not needed, because the rest of sewn strips serves for nothing else. Sets of one name
 * in one block are the same set.
 */
export function stripSetLines(cuts: readonly UnitCut[], house: House): readonly PieceLine[] {
  const sets = new Map<string, UnitCut[]>();
  for (const of of cuts) {
    if (of.cut.stripSet === undefined) continue;
    const name = `${of.block} ${of.cut.stripSet}`;
    sets.set(name, [...(sets.get(name) ?? []), of]);
  }
  return [...sets.values()].flatMap((set) => linesOfSet(set, house));
}

function linesOfSet(set: readonly UnitCut[], house: House): readonly PieceLine[] {
  const [first] = set as readonly [UnitCut, ...UnitCut[]];
  // Every cut of one unit's set says the same number of sub-cuts: each sub-cut carries one piece of every strip.
  const oncePerUnit = [...new Map(set.map((of) => [of.sized, of])).values()];
  const [one, ...others] = oncePerUnit.map(piecesOf) as [Traced, ...Traced[]];
  const subCuts = named(others.length === 0 ? one : plus(one, ...others), 'sub-cuts');
  const perSet = subCutsPerSet(first.cut.height, house);
  const sets = rounded(over(subCuts, perSet), 1, 'up');
  const spare = oncePerUnit.reduce(
    (sum, of) => sum + spareOf(of, piecesOf(of).value),
    sets.value * perSet.value - subCuts.value,
  );
  return [...new Set(set.map((of) => of.letter))].map((letter) => {
    const layers = set.filter((of) => of.letter === letter);
    const strips = layers.filter((of) => of.sized === layers[0]?.sized).length;
    const [layer] = layers as [UnitCut, ...UnitCut[]];
    return {
      letter,
      fabric: layer.fabric,
      width: usableWidth(house),
      height: layer.cut.width,
      count: strips === 1 ? sets : times(count(strips, 'strips in a set'), named(sets, 'sets')),
      spare,
      use: layers.map((of) => useOf(of, piecesOf(of).value)),
      cutAs: 'strip-set',
      subCut: { length: layer.cut.height, perSet, count: subCuts, sets },
    };
  });
}

/** Whole sub-cuts from one set as long as the cloth is wide. */
function subCutsPerSet(length: Traced, house: House): Traced {
  const whole = rounded(over(usableWidth(house), length), 1, 'down');
  return named(whole.value >= 1 ? whole : count(1, ''), 'from a set');
}
