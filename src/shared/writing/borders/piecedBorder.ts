import { count, type Traced } from '../../measure/traced.ts';
import type { Border } from '../../pattern/schema.ts';
import type { WorkedSize } from '../../workroom/workedOut.ts';
import type { Words } from '../book.ts';
import { type Desk, fabricName, namesOf } from '../desk.ts';
import { inSizes, listed, strong } from '../words.ts';
import { chartLetter, hasBorder, type PairSide, pairsOf, placeWords } from './borderWords.ts';

/** How a border of units is sewn together and on. */
export function piecedBorderWords(desk: Desk, border: Border): readonly Words[] {
  const sizes = desk.sizes.filter((size) => hasBorder(size, border.id));
  const [first, second] = pairsOf(border);
  const units = listed(lettersOf(sizes, border, false));
  const turning =
    border.pieced?.run === 'middle'
      ? 'The units face both ways from the middle of each side'
      : 'The units run on round the quilt';
  const sideWords = (side: PairSide): Words => [
    ...inSizes(
      sizes.map((size) => alongOf(size, border, side)),
      namesOf(desk, sizes),
    ),
    ' ',
    strong(units),
  ];
  return [
    [
      `${border.name}. For each side of the first pair, ${pairName(first)}, sew together `,
      ...sideWords(first),
      ` end to end. ${turning}, as the figure shows. Sew these ${placeWords(first)}. Press towards the border.`,
    ],
    [
      `For ${pairName(second)} sew together `,
      ...sideWords(second),
      ', and ',
      ...cornerWords(desk, sizes, border),
      ` at both ends. Sew these ${placeWords(second)}, matching the seams of the corners. Press towards the border.`,
    ],
  ];
}

function pairName(side: PairSide): string {
  return side === 'left' ? 'the sides' : 'the top and bottom';
}

function alongOf({ quilt }: WorkedSize, border: Border, side: PairSide): Traced {
  const laid = quilt.borders.find((one) => one.border === border.id)?.units;
  return count((side === 'left' ? laid?.down : laid?.across) ?? 0, 'units');
}

/** The letters of the border's blocks: those along the sides, or those in the corners. */
function lettersOf(sizes: readonly WorkedSize[], { id, pieced }: Border, corners: boolean): readonly string[] {
  const named = (text: string | undefined) => (text ?? '').split(/\s+/).map((entry) => entry.replace(/:.*/, ''));
  const wanted = new Set(named(corners ? pieced?.corner : pieced?.units).filter((letter) => letter !== ''));
  const there = sizes.flatMap(({ quilt }) =>
    quilt.blocks.filter(({ border }) => border === id).map(({ block }) => block),
  );
  return [...new Set(there)].filter((letter) => wanted.has(letter)).sort();
}

function cornerWords(desk: Desk, sizes: readonly WorkedSize[], border: Border): Words {
  const blocks = lettersOf(sizes, border, true);
  if (blocks.length > 0) return ['a ', strong(listed(blocks)), ', turned as the figure shows,'];
  const fabric = fabricName(desk.pattern, border.cornerstones ?? border.fabric);
  return [`a square `, strong(chartLetter(sizes[0], border.id, 'corners')), ` of ${fabric}`];
}
