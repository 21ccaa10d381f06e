import { likenessIn } from '../likeness.ts';
import type { BlockPart, Unit, UnitLeaf } from '../piecing.ts';
import { childrenOf, isLeaf } from '../tree.ts';
import { unitPolygons } from '../unitShape.ts';
import { unitsInside } from '../unitsInside.ts';
import { partCost, total, unitCost } from './cost.ts';

/**
 * What a whole plan costs, in seams: the effort of every unit and seam, and one lesson for every distinct unit and every
 * distinct part. The search adds up the same prices part by part, and so may count a lesson twice that two distant parts
 * share; this counts it once.
 */
export function planCost(root: BlockPart, units: readonly Unit[]): number {
  const likeness = likenessIn(units);
  const prices = new Map(units.map((unit) => [unit.key, unitCost(unit, unitPolygons(unit).length)]));
  const inside = new Map(units.map((unit) => [unit.key, unitsInside(unit).map((one) => one.unit.key)]));
  const learnt = new Set<string>();
  const cost = (part: BlockPart): number => {
    const own = isLeaf<UnitLeaf>(part) ? prices.get(part.unit) : partCost(part.kind, childrenOf<UnitLeaf>(part).length);
    if (own === undefined) throw new RangeError('A plan has a unit that is not among its units');
    const name = isLeaf<UnitLeaf>(part) ? part.unit : `${part.kind} ${likeness(part).key}`;
    const known = learnt.has(name) ? own.lessons : knownInside(part);
    learnt.add(name);
    return total(own) - known + childrenOf<UnitLeaf>(part).reduce((all, inner) => all + cost(inner), 0);
  };
  /** Lessons of units of the trade in a pieced one that were learnt elsewhere. */
  const knownInside = (part: BlockPart): number => {
    const keys = isLeaf<UnitLeaf>(part) ? (inside.get(part.unit) ?? []) : [];
    const lessons = keys.filter((key) => learnt.has(key)).map((key) => prices.get(key)?.lessons ?? 0);
    for (const key of keys) learnt.add(key);
    return lessons.reduce((all, one) => all + one, 0);
  };
  return cost(root);
}
