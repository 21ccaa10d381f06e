import { type EdgeSeam, type EdgeSeams, edgeSeams } from '../piecing/edgeSeams.ts';
import type { Unit, UnitLeaf } from '../piecing/piecing.ts';
import { type Edged, type SeamEnd, turnEdged } from './ends.ts';
import type { Press } from './pressing.ts';

/**
 * How a unit meets its neighbours, in grid units: the places along its edges at which its seams end, and how they are pressed there.
 * What runs into a corner is left out, for there the unit's own seam allowance is.
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
  return { width, height, ends: pressedEnds(edgeSeams(unit)) };
}

function pressedEnds({ top, right, bottom, left }: EdgeSeams): Edged['ends'] {
  const ends = (seams: readonly EdgeSeam[], back: Press, forth: Press) =>
    seams.map(({ at, lies }): SeamEnd => ({ at, press: lies === 'open' ? 'open' : lies === 'back' ? back : forth }));
  return {
    top: ends(top, 'left', 'right'),
    right: ends(right, 'up', 'down'),
    bottom: ends(bottom, 'left', 'right'),
    left: ends(left, 'up', 'down'),
  };
}
