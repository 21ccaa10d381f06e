import type { Unit, UnitLeaf } from '../piecing/piecing.ts';
import { boardEdges } from './boardEdges.ts';
import { type Edged, turnEdged, unseamed } from './ends.ts';

/**
 * How a unit meets its neighbours, in grid units. Diagonal seams run into corners, where the unit's own seam allowance is;
 * four-patches, nine-patches, checkerboards and rails have seams that end inside their edges. A four-patch is spun: the seams
 * about its middle all lie one way round, which is what lets it nest on every side (common practice).
 */
export function unitEdges(units: readonly Unit[]): (leaf: UnitLeaf) => Edged {
  const known = new Map(units.map((unit) => [unit.key, edgesOf(unit)]));
  return (leaf) => {
    const edged = known.get(leaf.unit);
    if (edged === undefined) throw new RangeError(`The block has no unit “${leaf.unit}”`);
    return turnEdged(edged, leaf.turn);
  };
}

function edgesOf(unit: Unit): Edged {
  const { width, height } = unit;
  switch (unit.kind) {
    case 'four-patch':
      return {
        width,
        height,
        ends: {
          top: [{ at: width / 2, press: 'right' }],
          right: [{ at: height / 2, press: 'down' }],
          bottom: [{ at: width / 2, press: 'left' }],
          left: [{ at: height / 2, press: 'up' }],
        },
      };
    case 'nine-patch':
    case 'checkerboard':
    case 'rails':
      return boardEdges(unit);
    default:
      return unseamed(width, height);
  }
}
