import type { TracedSize } from '../../measure/traced.ts';
import type { Method, Scale, Stage } from '../method.ts';
import { type Flip, markedPieces, openedCorners, sewnCorner } from './flip.ts';
import { isTwiceAsWide } from './geese.ts';
import { ofKind } from './ofKind.ts';
import { seamOf, unfinishedSize } from './sums.ts';

/** Flying geese from one rectangle and two squares sewn to its ends by stitch-and-flip. */
export const geeseFlip: Method = {
  id: 'geese-flip',
  name: 'Flying geese, stitch and flip',
  source: 'Rectangle and squares: finished and a seam on each side; common practice',
  makes: isTwiceAsWide,
  plan(unit, scale) {
    const geese = ofKind(unit, 'geese');
    const [goose, sky] = geese.roles;
    const unfinished = unfinishedSize(geese.width, geese.height, scale);
    const { width, height } = unfinished;
    const corner = { role: sky, side: height.value };
    const flip: Flip = {
      role: goose,
      width: width.value,
      height: height.value,
      corners: [
        { ...corner, at: 'top-left' },
        { ...corner, at: 'top-right' },
      ],
      seam: scale.seam,
    };
    return {
      cuts: [
        { role: goose, width, height, count: 1, patches: 1, use: 'rectangle' },
        { role: sky, width: height, height, count: 2, patches: 1, use: 'small square' },
      ],
      yield: 1,
      unfinished,
      trimmed: false,
      stages: stagesOf(flip, scale, unfinished),
    };
  },
};

function stagesOf(flip: Flip, scale: Scale, { width, height }: TracedSize): readonly Stage[] {
  const seam = seamOf(scale);
  return [
    {
      words: ['On the wrong side of each small square draw a line from corner to corner.'],
      scene: markedPieces(flip, 'A rectangle, and two small squares that lie wrong side up with a diagonal drawn on each.'),
    },
    {
      words: [
        'Lay a small square on the left end of the rectangle, right sides together, edges matched, its line running from ' +
          'the bottom corner up towards the middle. Sew on the line. Cut the corner off, ',
        seam,
        ' outside the seam.',
      ],
      scene: sewnCorner(flip, 0, 'A small square on the left end of the rectangle, sewn on its diagonal; a cut beside the seam.'),
    },
    {
      words: ['Flip the triangle open and press the seam towards it.'],
      scene: openedCorners(flip, 1, 0, 'The rectangle with its left corner flipped open and pressed outwards.'),
    },
    {
      words: [
        'Lay the other small square on the right end, its line running up towards the middle as well. It overlaps the ' +
          'first. Sew and cut as before.',
      ],
      scene: sewnCorner(flip, 1, 'A small square on the right end, sewn on its diagonal; a cut beside the seam.'),
    },
    {
      words: [
        'Flip it open and press the seam towards the corner. The unit measures ',
        width,
        ' × ',
        height,
        ', and the point of the goose lies ',
        seam,
        ' below the top edge.',
      ],
      scene: openedCorners(flip, 2, 1, 'One goose between two sky triangles; its point lies a seam below the top edge.'),
    },
  ];
}
