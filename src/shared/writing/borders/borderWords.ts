import { given, type Traced } from '../../measure/traced.ts';
import type { Border } from '../../pattern/schema.ts';
import type { StripLeaf } from '../../quilt/quilt.ts';
import type { WorkedSize } from '../../workroom/workedOut.ts';
import type { Words } from '../book.ts';
import { type Desk, fabricName, namesOf } from '../desk.ts';
import { field, inSizes, strong } from '../words.ts';

/** The strips of a border in one size. */
export function stripsOf({ quilt }: WorkedSize, border: string): readonly StripLeaf[] {
  return quilt.strips.filter((strip) => strip.border === border);
}

/** Whether a size has this border. */
export function hasBorder({ quilt }: WorkedSize, border: string): boolean {
  return quilt.borders.some((one) => one.border === border);
}

/** Which two strips of a border, by the one that stands for both. */
export type PairSide = 'left' | 'top';

/** The sides in the order they are sewn. */
export function pairsOf(border: Border): readonly [PairSide, PairSide] {
  return border.first === 'sides' ? ['left', 'top'] : ['top', 'left'];
}

export function placeWords(side: PairSide): string {
  return side === 'left' ? 'to the sides' : 'to the top and bottom';
}

/** "two **G**, cut 37½″": the strips of a pair with their length in every size. */
export function pairWords(desk: Desk, border: Border, side: PairSide): Words {
  const sizes = desk.sizes.filter((size) => stripsOf(size, border.id).some((strip) => strip.side === side));
  const strips = sizes.map((size) => stripsOf(size, border.id).find((strip) => strip.side === side));
  const lengths = strips.map((strip) => strip?.cutLength).filter((length): length is Traced => length !== undefined);
  const pair = side === 'left' ? 'sides' : 'ends';
  return ['two ', strong(chartLetter(sizes[0], border.id, pair)), ', cut ', ...inSizes(lengths, namesOf(desk, sizes))];
}

/** The chart letter of a border's side strips, of its top and bottom, or of its corners. */
export function chartLetter(size: WorkedSize | undefined, border: string, what: 'sides' | 'ends' | 'corners'): string {
  const line = size?.cloth.pieces.find((piece) =>
    piece.use.some(({ unit, words }) => unit === border && words.endsWith(what)),
  );
  return line?.letter ?? '';
}

/** "Frame, Green. " */
export function titleWords(desk: Desk, border: Border): string {
  return `${border.name}, ${fabricName(desk.pattern, border.fabric)}. `;
}

/** How strips are joined or cut, where it is not the usual way. */
export function cuttingWords(desk: Desk, border: Border): readonly Words[] {
  if (border.lengthwise)
    return [
      ['Cut these strips along the length of the fabric, each in one piece, before anything else is cut from it.'],
    ];
  const joined = desk.sizes.some((size) =>
    size.cloth.pieces.some((line) => line.joined !== undefined && line.use.some(({ unit }) => unit === border.id)),
  );
  if (!joined || border.joins !== 'diagonal') return [];
  const { seam } = desk.pattern.house;
  return [
    [
      'Join strips on the diagonal: lay two ends across one another, right sides together, sew from corner to corner, trim ',
      field(given(seam, 'seam')),
      ' from the seam and press it open.',
    ],
  ];
}
