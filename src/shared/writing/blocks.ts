import { blockFigure } from '../diagrams/blockFigure.ts';
import { type BlockStep, blockStepFigures } from '../diagrams/blockSteps.ts';
import type { Turn } from '../drawing/turn.ts';
import { count } from '../measure/traced.ts';
import type { BlockPart, UnitLeaf } from '../piecing/piecing.ts';
import { leavesOf } from '../piecing/tree.ts';
import type { WorkedBlock, WorkedSize } from '../workroom/workedOut.ts';
import type { Block, CaptionedFigure, Section, Step, Words } from './book.ts';
import { type Desk, namesOf, perSize, sizesWith } from './desk.ts';
import { lettersOf } from './unitGroups.ts';
import { field, inSizes, listed, sizesWords } from './words.ts';

/** Each block sewn together, with its pressing. */
export function blocks(desk: Desk): Section {
  return {
    id: 'blocks',
    title: 'Sewing the blocks',
    newPage: false,
    blocks: desk.blocks.flatMap((block) => blockBlocks(desk, block)),
  };
}

function blockBlocks(desk: Desk, block: WorkedBlock): readonly Block[] {
  const sizes = sizesWith(desk, block.id);
  const shown = sizes.includes(desk.shown) ? desk.shown : sizes[0];
  const grid = shown?.blocks.find(({ id }) => id === block.id)?.grid ?? 1;
  const { piecing, pressing, fabricOf } = block;
  const whole = blockFigure(piecing, grid, fabricOf, { units: true, name: `Block ${block.id}, ${block.name}` });
  const steps = blockStepFigures(piecing, grid, fabricOf, pressing, plainLetters(desk, block));
  const closing = [measures(desk, block, sizes), ...reversed(desk, block, sizes)];
  const finished: readonly CaptionedFigure[] =
    closing.length === 1
      ? [{ figure: whole }]
      : [
          { figure: whole, caption: [block.id] },
          { figure: mirrored(block, grid), caption: [`${block.id}r`] },
        ];
  const counts = sizes.map((size) => [size, count(size.quilt.counts[block.id] ?? 0, 'blocks')] as const);
  const made = perSize(desk, 'Make', counts);
  if (steps.length === 0) {
    const only: Step = {
      words: [[`The block is this one ${isCutOnly(block) ? 'piece' : 'unit'}.`], ...closing],
      figures: finished,
      perSize: made,
    };
    return [{ kind: 'heading', text: `Block ${block.id}, ${block.name}` }, desk.number([only])];
  }
  const told = steps.map((step, i): Step => {
    const last = i === steps.length - 1;
    const words = [stepWords(desk, block, step, last)];
    if (!last) return { words, figures: [{ figure: step.figure }] };
    return { words: [...words, ...closing], figures: [{ figure: step.figure }, ...finished], perSize: made };
  });
  return [{ kind: 'heading', text: `Block ${block.id}, ${block.name}` }, desk.number(told)];
}

/** A block that is one plain square, cut and not sewn. */
function isCutOnly({ piecing: { units } }: WorkedBlock): boolean {
  return units.every(({ kind }) => kind === 'plain');
}

function measures(desk: Desk, block: WorkedBlock, sizes: readonly WorkedSize[]): Words {
  const unfinished = sizes
    .map((size) => size.blocks.find(({ id }) => id === block.id)?.unfinished)
    .filter((size) => size !== undefined);
  const said = sizesWords(unfinished, namesOf(desk, sizes));
  return ['Block ', { strong: block.id }, ' measures ', ...said, ', unfinished.'];
}

/** How many of a block stand in the quilt as mirror images: they are sewn so from the start, for no turn makes them. */
function reversed(desk: Desk, block: WorkedBlock, sizes: readonly WorkedSize[]): readonly Words[] {
  const many = sizes.map(({ quilt }) => count(quilt.reversed[block.id] ?? 0, 'reversed'));
  if (many.every(({ value }) => value === 0)) return [];
  return [
    [
      'Of these, sew ',
      ...inSizes(many, namesOf(desk, sizes)),
      ' as block ',
      { strong: `${block.id}r` },
      ', reversed: lay everything out as its mirror image, left for right, and press it so too.',
    ],
  ];
}

const MIRRORED: Turn = { quarters: 0, mirrored: true };

function mirrored({ piecing, fabricOf, id, name }: WorkedBlock, grid: number): CaptionedFigure['figure'] {
  return blockFigure(piecing, grid, fabricOf, { units: true, turn: MIRRORED, name: `Block ${id}r, ${name} reversed` });
}

/** The chart letters of pieces that are only cut, to be shown where they are sewn in. */
function plainLetters(desk: Desk, block: WorkedBlock): Readonly<Record<string, string>> {
  const plain = block.piecing.units.filter(({ kind }) => kind === 'plain');
  return Object.fromEntries(plain.map(({ key }) => [key, lettersOf(desk, block.id, key).join(', ')]));
}

function stepWords(desk: Desk, block: WorkedBlock, step: BlockStep, last: boolean): Words {
  if (step.kind === 'logs') return logWords(desk, block, step);
  if (step.kind === 'ring') return ringWords(step, last);
  const made = nameOf(step);
  if (step.kind === 'rows') {
    const what = made === null ? 'Lay the units out' : `For each ${made}, lay its units out`;
    return [`${what} as shown and sew them into rows. Press the seams of each row the way its arrow points.`];
  }
  const { part } = step;
  const parts = part.kind === 'row' ? part.parts : [];
  // Rows were sewn in the step before; anything else is laid out here.
  const pieces = parts.every((inner) => inner.kind === 'unit') ? piecesOf(desk, block, parts) : '';
  const plain = made !== null && pieces !== '';
  const rows = isRows(step);
  const what = rows
    ? 'Sew the rows together'
    : plain
      ? `For each ${made} sew ${pieces} together`
      : made === null
        ? 'Lay the units out as shown and sew them together'
        : `For each ${made} lay its units out as shown and sew them together`;
  const matching = rows ? ', matching the seams where they meet' : '';
  const arrows = parts.length > 2 ? 'arrows point' : 'arrow points';
  return [`${what}${matching}. Press as the ${arrows}. `, ...ending(step, last)];
}

function ending(step: BlockStep, last: boolean): Words {
  if (nameOf(step) !== null) return ['Make ', field(count(step.times, 'for each block')), ' for each block.'];
  return last ? ['The block is whole.'] : [];
}

/** The name of the recipe that is being made, when it is one that stands in the block. */
function nameOf({ part, path }: BlockStep): string | null {
  return path === '' || part.kind === 'unit' || part.name === undefined ? null : part.name.toLowerCase();
}

/** A ring of parts about a middle: a partial seam, in three steps (common practice). */
function ringWords(step: BlockStep, last: boolean): Words {
  switch (step.stage) {
    case 'start':
      return [
        'Lay the first part along the middle, right sides together, even at the end from which the stitches run in the ' +
          'figure. Sew from that end and stop about halfway along the middle: this is a partial seam. Its other half stays open.',
      ];
    case 'round':
      return [
        'Open the part out and press what is sewn away from the middle. Sew on the others in the order of their numbers, each ' +
          'along its whole edge, and press away from the middle.',
      ];
    default:
      return [
        'Now finish the first seam: fold the last part out of the way and sew on from where the stitches stop to the end of ' +
          'the first part. Press away from the middle. ',
        ...ending(step, last),
      ];
  }
}

/** Whether what is joined are rows made in the step before. */
function isRows({ part }: BlockStep): boolean {
  return part.kind === 'row' && part.parts.every((inner) => inner.kind === 'row' && inner.name === undefined);
}

/** The letters of plain pieces, when all of them are plain: "G and H". */
function piecesOf(desk: Desk, block: WorkedBlock, parts: readonly BlockPart[]): string {
  const units = new Map(block.piecing.units.map((unit) => [unit.key, unit]));
  const keys = parts.flatMap((part) => (part.kind === 'unit' ? [part.unit] : []));
  if (keys.some((key) => units.get(key)?.kind !== 'plain')) return '';
  return listed([...new Set(keys.flatMap((key) => lettersOf(desk, block.id, key)))]);
}

function logWords(desk: Desk, block: WorkedBlock, step: BlockStep): Words {
  if (step.part.kind !== 'rounds' || step.logs === undefined) return [];
  const logs = step.part.logs.slice(step.logs.first, step.logs.last + 1);
  const letters = logs.flatMap(({ part }) =>
    leavesOf<UnitLeaf>(part).flatMap(({ unit }) => lettersOf(desk, block.id, unit)),
  );
  const start = step.logs.first === 0 ? 'Sew the first round of logs to the centre' : 'Sew on the next round of logs';
  return [`${start} in this order: ${listed(letters)}. After each log press its seam away from the centre.`];
}
