import type { Traced } from '../../measure/traced.ts';
import type { Scale, Stage } from '../method.ts';
import { type Flip, markedPieces, openedCorners, sewnCorner } from './flip.ts';
import { seamOf } from './sums.ts';

/** Marking, the first corner, the others one at a time; three stages for one corner, five for more. */
export function cornersFlipStages(flip: Flip, scale: Scale, measure: readonly (string | Traced)[]): readonly Stage[] {
  const one = flip.corners.length === 1;
  const first = [mark(flip, one), sew(flip, scale)];
  return one ? [...first, finish(flip, measure)] : [...first, open(flip), next(flip), finish(flip, measure)];
}

function mark(flip: Flip, one: boolean): Stage {
  const which = one ? 'the corner square' : 'each corner square';
  return {
    words: [`On the wrong side of ${which} draw a line from corner to corner.`],
    scene: markedPieces(
      flip,
      'The piece to be sewn on, and its corner squares wrong side up with a diagonal drawn on each.',
    ),
  };
}

function sew(flip: Flip, scale: Scale): Stage {
  const words = [
    'Lay a corner square on its corner, right sides together, edges matched, its line running across the corner. Sew on ' +
      'the line. Cut the corner off, ',
    seamOf(scale),
    ' outside the seam.',
  ];
  return {
    words,
    scene: sewnCorner(flip, 0, 'A corner square on its corner, sewn on its diagonal; a cut beside the seam.'),
  };
}

function open(flip: Flip): Stage {
  return {
    words: ['Flip the triangle open and press the seam towards the corner.'],
    scene: openedCorners(
      flip,
      1,
      0,
      'The first corner flipped open; an arrow shows its seam pressed towards the corner.',
    ),
  };
}

function next(flip: Flip): Stage {
  const rest =
    flip.corners.length === 2
      ? 'Add the other corner in the same way.'
      : 'Add the other corners in the same way, one at a time.';
  return {
    words: [rest],
    scene: sewnCorner(flip, 1, 'The next corner square laid on, sewn on its diagonal; a cut beside the seam.'),
  };
}

function finish(flip: Flip, measure: readonly (string | Traced)[]): Stage {
  const many = flip.corners.length;
  const opening = many === 1 ? 'Flip the triangle open and press' : 'Flip each open and press';
  const alt = 'The finished unit, its corner triangles pressed towards the corners.';
  return {
    words: [`${opening} the seam towards the corner. The unit measures `, ...measure, '.'],
    scene: openedCorners(flip, many, many === 1 ? 0 : 1, alt),
  };
}
