import { given, rounded, type Traced } from '../../measure/traced.ts';
import type { Border } from '../../pattern/schema.ts';
import type { Words } from '../book.ts';
import { type Desk, namesOf } from '../desk.ts';
import { field, inSizes, strong } from '../words.ts';
import { chartLetter, pairsOf, pairWords, placeWords, stripsOf, titleWords } from './borderWords.ts';

/** How a plain border is sewn on, by how its strips meet in the corners. */
export function plainBorderWords(desk: Desk, border: Border): readonly Words[] {
  if (border.corners === 'mitred') return mitred(desk, border);
  return border.corners === 'cornerstones' ? cornered(desk, border) : butted(desk, border);
}

function butted(desk: Desk, border: Border): readonly Words[] {
  const pairs = pairsOf(border).filter((side) =>
    desk.sizes.some((size) => stripsOf(size, border.id).some((strip) => strip.side === side)),
  );
  return pairs.map((side, i) => [
    `${i === 0 ? `${titleWords(desk, border)}Sew ` : 'Then sew '}`,
    ...pairWords(desk, border, side),
    `, ${placeWords(side)}. Press towards the border.`,
  ]);
}

function cornered(desk: Desk, border: Border): readonly Words[] {
  const [first, second] = pairsOf(border);
  const shown = desk.sizes.find((size) => stripsOf(size, border.id).length > 0);
  const corner = strong(chartLetter(shown, border.id, 'corners'));
  return [
    [
      `${titleWords(desk, border)}Sew `,
      ...pairWords(desk, border, first),
      `, ${placeWords(first)}. Press towards the border.`,
    ],
    [
      'Sew a square ',
      corner,
      ' to both ends of each of ',
      ...pairWords(desk, border, second),
      '. Press away from the squares.',
    ],
    [`Sew these ${placeWords(second)}, matching the seams of the squares. Press towards the border.`],
  ];
}

function mitred(desk: Desk, border: Border): readonly Words[] {
  const { seam, step } = desk.pattern.house;
  const sizes = desk.sizes.filter((size) => stripsOf(size, border.id).length > 0);
  const mitres = sizes.map((size) => stripsOf(size, border.id)[0]?.mitre);
  const lengths = mitres
    .filter((mitre): mitre is Traced => mitre !== undefined)
    .map((mitre) => rounded(mitre, step, 'near'));
  const allowance = field(given(seam, 'seam'));
  return [
    [
      `${titleWords(desk, border)}Pin `,
      ...pairWords(desk, border, 'left'),
      `, ${placeWords('left')} and `,
      ...pairWords(desk, border, 'top'),
      `, ${placeWords('top')}, middle to middle: they reach beyond the corners. `,
      'Sew each, beginning and ending ',
      allowance,
      ' from the corners of the top. Press towards the border.',
    ],
    [
      'At each corner fold the top on the diagonal, right sides together, so that two strips lie edge to edge. Draw a line ',
      'at 45° from the last stitch to the outer edges and sew on it from the inside out: the seam measures about ',
      ...inSizes(lengths, namesOf(desk, sizes)),
      '. Trim ',
      allowance,
      ' from the seam and press it open.',
    ],
  ];
}
