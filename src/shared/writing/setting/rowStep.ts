import { quiltRowsFigure } from '../../diagrams/quiltRowsFigure.ts';
import { longer } from '../../measure/inches.ts';
import { count } from '../../measure/traced.ts';
import { linesIn } from '../../quilt/lines.ts';
import type { WorkedSize } from '../../workroom/workedOut.ts';
import type { Step, Words } from '../book.ts';
import { type Desk, perSize, shownFigure } from '../desk.ts';
import { listed } from '../words.ts';
import { nestingWords } from './nesting.ts';
import { sashedWords } from './sashedRows.ts';
import { sashKinds } from './sashings.ts';
import { stripWords } from './stripWords.ts';

/**
 * How blocks, with or without sashing, are sewn into rows or columns and those together.
 * @param several the sizes that are more than a single block
 */
export function rowStep(desk: Desk, several: readonly WorkedSize[]): Step {
  const shown = clearest(several);
  const { setting } = desk.pattern;
  const columns = desk.worked.assembly.way === 'columns';
  const sashed = several.find((size) => sashKinds(size).length > 0);
  const sewing =
    setting.kind === 'strips'
      ? stripWords(desk, several, setting)
      : sashed === undefined
        ? plainWords(several, columns)
        : [...nestedWords(several, true), ...sashedWords(desk, sashed, columns)];
  return {
    words: [
      ...sewing,
      ...nestingWords(desk, several),
      ...withoutSashing(several, sashed !== undefined),
      ...single(desk, several),
    ],
    figures: [shownFigure(desk, shown, quiltRowsFigure(shown.quilt, desk.blocks, shown.pressing, desk.units))],
    perSize: perSize(
      desk,
      columns ? 'Columns' : 'Rows',
      several.map((size) => [size, count(linesIn(size.quilt.root, columns), columns ? 'columns' : 'rows')]),
    ),
  };
}

/**
 * The size with the fewest blocks shows best how rows are sewn; one that has both rows and columns, and sashing where others
 * have, if there is one.
 */
function clearest(sizes: readonly WorkedSize[]): WorkedSize {
  const sashed = sizes.filter((size) => sashKinds(size).length > 0);
  const kin = sashed.length > 0 ? sashed : sizes;
  const square = kin.filter(({ size }) => size.across > 1 && size.down > 1);
  const among = square.length > 0 ? square : kin;
  return among.reduce((few, size) => (size.quilt.blocks.length < few.quilt.blocks.length ? size : few));
}

function plainWords(several: readonly WorkedSize[], columns: boolean): readonly Words[] {
  if (several.every(({ size }) => size.across === 1)) {
    return [['Sew the blocks together one below another. Press the seams as the arrows point.']];
  }
  if (several.every(({ size }) => size.down === 1)) {
    return [['Sew the blocks together side by side. Press the seams as the arrow points.']];
  }
  const [row, rows] = columns ? ['column', 'columns'] : ['row', 'rows'];
  return [
    ...nestedWords(several, false),
    [
      `Sew the blocks of each ${row} together. Press the seams of a ${row} all one way and those of the next ${row} the other way, as the arrows point.`,
    ],
    [`Sew the ${rows} together. Press the seams as the arrows point.`],
  ];
}

/** Where some blocks are larger than others, what is sewn before the rows are. */
function nestedWords(several: readonly WorkedSize[], sashed: boolean): readonly Words[] {
  const nested = several.some(({ quilt }) =>
    quilt.blocks.some(({ border, box }) => border === undefined && longer(box.width, quilt.block.width)),
  );
  if (!nested) return [];
  const between = sashed ? ', with sashings and cornerstones between them,' : '';
  return [
    [
      `Sew the smaller blocks beside a larger one to one another first${between} so that every row comes together in straight seams.`,
    ],
  ];
}

function withoutSashing(several: readonly WorkedSize[], sashed: boolean): readonly Words[] {
  const without = several.filter((size) => sashKinds(size).length === 0).map(({ size }) => size.name);
  if (!sashed || without.length === 0) return [];
  const has = without.length === 1 ? 'has' : 'have';
  return [[`${listed(without)} ${has} no sashing: sew the blocks to one another.`]];
}

function single(desk: Desk, several: readonly WorkedSize[]): readonly Words[] {
  const names = desk.sizes.filter((size) => !several.includes(size)).map(({ size }) => size.name);
  if (names.length === 0) return [];
  return [[`${listed(names)} ${names.length === 1 ? 'is' : 'are'} a single block.`]];
}
