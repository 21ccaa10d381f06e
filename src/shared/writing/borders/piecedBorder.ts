import { count, type Traced } from '../../measure/traced.ts';
import type { Border } from '../../pattern/schema.ts';
import { isLeaf, leavesOf } from '../../piecing/tree.ts';
import type { Press } from '../../pressing/pressing.ts';
import type { QuiltLeaf, QuiltPart } from '../../quilt/quilt.ts';
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
      ` end to end. ${turning}, as the figure shows. ${pressWords(sizes, border, first)}Sew these ${placeWords(first)}. Press towards the border.`,
    ],
    [
      `For ${pairName(second)} sew together `,
      ...sideWords(second),
      ', and ',
      ...cornerWords(desk, sizes, border),
      ` at both ends. ${pressWords(sizes, border, second)}${awayWords(border)}Sew these ${placeWords(second)}, matching the seams of the corners. Press towards the border.`,
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

const WAY_WORDS: Readonly<Record<Press, string>> = {
  left: 'to the left',
  right: 'to the right',
  up: 'upwards',
  down: 'downwards',
  open: 'open',
};

/** Which way the seams between the units of a side are pressed, as they lie in the quilt. Nothing for a single unit. */
function pressWords(sizes: readonly WorkedSize[], border: Border, side: PairSide): string {
  const ways = new Set(sizes.flatMap((size) => unitSeams(size, border, side)));
  const [way] = ways;
  if (way === undefined || ways.size > 1) return '';
  return `Press the seams between them ${WAY_WORDS[way]}, as they lie in the quilt. `;
}

function unitSeams({ quilt: { root }, pressing }: WorkedSize, { id }: Border, side: PairSide): readonly Press[] {
  if (isLeaf<QuiltLeaf>(root) || root.kind !== 'rounds') return [];
  const at = root.logs.findIndex((log) => log.side === side && holdsUnits(log.part, id));
  const part = root.logs[at]?.part;
  if (part === undefined || isLeaf<QuiltLeaf>(part) || part.kind !== 'row') return [];
  const within =
    part.name === 'units' ? '' : `.${part.parts.findIndex((one) => 'name' in one && one.name === 'units')}`;
  return pressing.parts.find(({ path }) => path === `${at + 1}${within}`)?.seams ?? [];
}

function holdsUnits(part: QuiltPart, border: string): boolean {
  return leavesOf<QuiltLeaf>(part).some((leaf) => leaf.kind === 'block' && leaf.border === border);
}

/** Beside plain squares in the corners seams are pressed towards the units. */
function awayWords({ pieced }: Border): string {
  return pieced?.corner === undefined ? 'Press away from the squares. ' : '';
}
