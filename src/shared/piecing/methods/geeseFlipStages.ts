import type { TracedSize } from '../../measure/traced.ts';
import type { Scale, Stage } from '../method.ts';
import { type Flip, markedPieces, openedCorners, sewnCorner } from './flip.ts';
import { seamOf } from './sums.ts';

/** Marking, the left sky triangle, the right one. */
export function geeseFlipStages(flip: Flip, scale: Scale, unfinished: TracedSize): readonly Stage[] {
  return [mark(flip), sewLeft(flip, scale), openLeft(flip), sewRight(flip), openRight(flip, scale, unfinished)];
}

function mark(flip: Flip): Stage {
  const alt = 'A rectangle, and two small squares that lie wrong side up with a diagonal drawn on each.';
  return {
    words: ['On the wrong side of each small square draw a line from corner to corner.'],
    scene: markedPieces(flip, alt),
  };
}

function sewLeft(flip: Flip, scale: Scale): Stage {
  const words = [
    'Lay a small square on the left end of the rectangle, right sides together, edges matched, its line running from ' +
      'the bottom corner up towards the middle. Sew on the line. Cut the corner off, ',
    seamOf(scale),
    ' outside the seam.',
  ];
  const alt = 'A small square on the left end of the rectangle, sewn on its diagonal; a cut beside the seam.';
  return { words, scene: sewnCorner(flip, 0, alt) };
}

function openLeft(flip: Flip): Stage {
  return {
    words: ['Flip the triangle open and press the seam towards the corner.'],
    scene: openedCorners(flip, 1, 0, 'The rectangle with its left corner flipped open and pressed outwards.'),
  };
}

function sewRight(flip: Flip): Stage {
  const words =
    'Lay the other small square on the right end, its line running up towards the middle as well. It overlaps the ' +
    'first. Sew and cut as before.';
  const alt = 'A small square on the right end, sewn on its diagonal; a cut beside the seam.';
  return { words: [words], scene: sewnCorner(flip, 1, alt) };
}

function openRight(flip: Flip, scale: Scale, { width, height }: TracedSize): Stage {
  const words = [
    'Flip it open and press the seam towards the corner. The unit measures ',
    width,
    ' × ',
    height,
    ', and the point of the goose lies ',
    seamOf(scale),
    ' below the top edge.',
  ];
  const alt = 'One goose between two sky triangles; its point lies a seam below the top edge.';
  return { words, scene: openedCorners(flip, 2, 1, alt) };
}
