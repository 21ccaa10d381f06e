import type { BlockPart, Unit, UnitLeaf } from './piecing.ts';
import { joinsOf, unitsOf } from './seamTree.ts';
import type { Shape } from './shape.ts';
import { childrenOf, isLeaf, leavesOf } from './tree.ts';
import { unitPolygons } from './unitShape.ts';

/** How many seams of each kind are sewn: straight from edge to edge, partial, set-in, curved. */
export interface SeamCensus {
  readonly full: number;
  readonly partial: number;
  readonly setIn: number;
  readonly curved: number;
}

/** No seams at all. */
export const NO_SEAMS: SeamCensus = { full: 0, partial: 0, setIn: 0, curved: 0 };

/** Every seam of a block, those inside its units too. A ring's partial seam is one seam, though it is sewn in two goes. */
export function seamCensus(root: BlockPart, units: readonly Unit[]): SeamCensus {
  const inside = new Map(units.map((unit) => [unit.key, shapeCensus(unit)]));
  const ofUnits = leavesOf<UnitLeaf>(root).map((leaf) => inside.get(leaf.unit) ?? NO_SEAMS);
  return [partCensus(root), ...ofUnits].reduce(together, NO_SEAMS);
}

/** Two counts in one. */
export function together(a: SeamCensus, b: SeamCensus): SeamCensus {
  return {
    full: a.full + b.full,
    partial: a.partial + b.partial,
    setIn: a.setIn + b.setIn,
    curved: a.curved + b.curved,
  };
}

/** The seams between the units of a part. */
function partCensus(part: BlockPart): SeamCensus {
  if (isLeaf<UnitLeaf>(part)) return NO_SEAMS;
  const children = childrenOf<UnitLeaf>(part);
  const partial = part.kind === 'ring' ? 1 : 0;
  const own = { ...NO_SEAMS, full: children.length - 1 - partial, partial };
  return children.map(partCensus).reduce(together, own);
}

/** The seams inside one unit: a unit of the trade of n patches is sewn with n − 1. */
export function shapeCensus(unit: Shape): SeamCensus {
  if (unit.kind === 'pieced') {
    const count = (sewn: string) => joinsOf(unit.seams).filter((join) => join.sewn === sewn).length;
    const own = { full: count('full'), partial: count('partial'), setIn: count('set-in'), curved: count('curved') };
    return unitsOf(unit.seams)
      .map(({ shape }) => shapeCensus(shape))
      .reduce(together, own);
  }
  const seams = unitPolygons({ ...unit, key: '' } as Unit).length - 1;
  return unit.kind === 'quarter-circle' ? { ...NO_SEAMS, curved: seams } : { ...NO_SEAMS, full: seams };
}

/** What a maker has to know how to sew, in words; straight seams alone are said to be so. */
export function seamSkills({ partial, setIn, curved }: SeamCensus): readonly string[] {
  const hard = [
    ...(partial > 0 ? ['Partial seams'] : []),
    ...(setIn > 0 ? ['Set-in seams'] : []),
    ...(curved > 0 ? ['Curved seams'] : []),
  ];
  return hard.length > 0 ? hard : ['Straight seams from edge to edge throughout'];
}
