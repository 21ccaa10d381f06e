import { keyed } from './distinct.ts';
import type { Piecing, Unit, UnitKey } from './piecing.ts';
import { unitsOf } from './seamTree.ts';
import type { TradeUnit } from './tradeUnit.ts';
import { leavesOf } from './tree.ts';

/** A unit of the trade that stands in a pieced one. */
export interface UnitInside {
  readonly unit: TradeUnit;
  /** How many of it the pieced unit has. */
  readonly count: number;
}

/** The distinct units of the trade inside a unit, in sewing order; none but in a pieced one. */
export function unitsInside(unit: Unit): readonly UnitInside[] {
  if (unit.kind !== 'pieced') return [];
  const found = new Map<UnitKey, UnitInside>();
  for (const { shape } of unitsOf(unit.seams)) {
    const inside = keyed(shape);
    found.set(inside.key, { unit: inside, count: (found.get(inside.key)?.count ?? 0) + 1 });
  }
  return [...found.values()];
}

/** Where a unit of the trade stands inside the pieced units of a block: the drawing's patches of each place. */
export function insidePlaces(
  { root, units }: Pick<Piecing, 'root' | 'units'>,
  key: UnitKey,
): readonly (readonly number[])[] {
  const known = new Map(units.map((unit) => [unit.key, unit]));
  return leavesOf(root).flatMap((leaf) => {
    const unit = known.get(leaf.unit);
    if (unit?.kind !== 'pieced') return [];
    return unitsOf(unit.seams)
      .filter(({ shape }) => keyed(shape).key === key)
      .map(({ patches }) => patches.map((patch) => leaf.patches[patch] as number));
  });
}

/** Units with those that stand in them, each before the one it stands in, every one once. */
export function withInside(units: Iterable<Unit>): readonly Unit[] {
  const all = new Map<UnitKey, Unit>();
  const add = (unit: Unit) => {
    if (!all.has(unit.key)) all.set(unit.key, unit);
  };
  for (const unit of units) {
    for (const { unit: inside } of unitsInside(unit)) add(inside);
    add(unit);
  }
  return [...all.values()];
}
