import type { Block, Section } from '../../../shared/writing/book.ts';
import type { Desk } from '../desk.ts';
import { caution } from './caution.ts';
import { chart } from './chart.ts';
import { cover } from './cover.ts';
import { figureRows, wholePageFigure } from './figurePieces.ts';
import type { Piece } from './piece.ts';
import { steps } from './steps.ts';
import { testSquare } from './testSquare.ts';
import { heading, list, paragraph, sectionTitle } from './text.ts';
import { trueSize } from './trueSize.ts';

/** The pieces of a section: its title, then its blocks. A cover needs no title above it. */
export function sectionPieces(desk: Desk, section: Section): Piece[] {
  const covered = section.blocks.some((block) => block.kind === 'cover');
  const title = covered || section.title === '' ? [] : [sectionTitle(desk, section.title, section.newPage)];
  const together = sideBySide(section.blocks);
  const all = [...title];
  let run = 0;
  together.forEach((block, index) => {
    // A run of steps begins under its heading; what is above that is on a page of its own if there is no room for both.
    if (block.kind === 'heading' && together[index - 1]?.kind === 'steps') run = all.length;
    const pieces = blockPieces(desk, block, heightOf(all.slice(run)), index === 0);
    all.push(...(introduces(together, index) ? pieces.map((piece) => ({ ...piece, keepWithNext: true })) : pieces));
  });
  return all;
}

type FiguresBlock = Extract<Block, { kind: 'figures' }>;
type Together = Block | (FiguresBlock & { readonly large: true });

/** Single figures that follow one another, such as the layout of each size, stand in rows, and large. */
function sideBySide(blocks: readonly Block[]): Together[] {
  const found: Together[] = [];
  for (const block of blocks) {
    const last = found.at(-1);
    if (!isSingle(block)) found.push(block);
    else if (last !== undefined && 'large' in last)
      found[found.length - 1] = { ...last, figures: [...last.figures, ...block.figures] };
    else found.push({ ...block, large: true });
  }
  return found;
}

function isSingle(block: Block): block is FiguresBlock {
  return block.kind === 'figures' && !block.sameScale && block.figures.length === 1;
}

/** One or two paragraphs under a title or heading that lead up to a chart, steps or figures stay with them. */
function introduces(blocks: readonly Together[], index: number): boolean {
  const opens = (at: number) => at <= 0 || blocks[at - 1]?.kind === 'heading';
  const isWords = (at: number) => blocks[at]?.kind === 'words';
  const leads = (at: number) => isWords(at) && blocks[at + 1] !== undefined && !isWords(at + 1);
  if (leads(index)) return opens(index) || (isWords(index - 1) && opens(index - 1));
  return isWords(index) && opens(index) && leads(index + 1);
}

function heightOf(pieces: readonly Piece[]): number {
  return pieces.reduce((sum, { height, after = 0 }) => sum + height + after, 0);
}

/**
 * @param above what stands above on the page at the least, points
 * @param first whether nothing but the title stands above in its section
 */
function blockPieces(desk: Desk, block: Together, above: number, first: boolean): Piece[] {
  switch (block.kind) {
    case 'cover':
      return [cover(desk, block)];
    case 'heading':
      return [heading(desk, block.text)];
    case 'words':
      return [paragraph(desk, block.text, block.tone)];
    case 'list':
      return list(desk, block.items);
    case 'chart':
      return chart(desk, block.chart);
    case 'steps':
      return steps(desk, block.steps, block.firstNumber, above);
    case 'figures':
      return figureRows(desk, block.figures, block.sameScale, 'large' in block);
    case 'caution':
      return caution(desk, block.title, block.items);
    case 'whole-page-figure':
      return [wholePageFigure(desk, block.figure, block.caption)];
    case 'test-square':
      return [testSquare(desk, block.side, block.units)];
    case 'true-size':
      return trueSize(desk, block, first ? above : null);
  }
}
