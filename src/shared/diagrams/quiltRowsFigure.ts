import type { Box } from '../drawing/turn.ts';
import type { Units } from '../measure/metric.ts';
import { isLeaf, leavesOf } from '../piecing/tree.ts';
import type { PressingPlan } from '../pressing/pressing.ts';
import { centreOf, hasLines, holdsBlock } from '../quilt/lines.ts';
import type { Quilt, QuiltLeaf, QuiltPart } from '../quilt/quilt.ts';
import { type Apart, below, HERE, pullApart, type SeamSpot } from './apart.ts';
import type { FigureBlock } from './blockCloth.ts';
import type { Arrow, Figure, Letter, Mark } from './figure.ts';
import { arrowAt, boxAround, boxOutline, framed, letter } from './marks.ts';
import { movedBy, movedCloth } from './movedCloth.ts';
import { onPointMarks } from './onPointRows.ts';
import { pressArrows } from './pressArrows.ts';
import { quiltAlt } from './quiltFigure.ts';
import { scrapsIn } from './scraps.ts';

/** A row or column of the setting, drawn apart from the others. */
interface Line {
  readonly path: string;
  /** With blocks in it; a line of sashing has no number. */
  readonly blocks: boolean;
  readonly box: Box;
}

/**
 * The blocks in rows (or columns) pulled apart: each has its number, an arrow for the way its seams are pressed, and the
 * seams between rows have theirs in the gaps.
 */
export function quiltRowsFigure(
  quilt: Quilt,
  blocks: readonly FigureBlock[],
  pressing?: PressingPlan,
  units: Units = 'inches',
): Figure {
  const { part, path } = centreOf(quilt.root);
  const gap = Math.min(quilt.block.width, quilt.block.height) * 0.3;
  if (isLeaf<QuiltLeaf>(part) && part.kind === 'on-point') {
    const rows = part.rows.filter(({ kind }) => kind === 'blocks').length;
    const marks = onPointMarks(part, path, gap, blocks, pressing, scrapsIn(quilt, blocks));
    return framed(marks, `${quiltAlt(quilt, undefined, units)} Its ${rows} diagonal rows are drawn apart.`, {
      left: gap * 0.6,
    });
  }
  const options = { gap: (at: string) => (at === path ? gap : 0), ...(pressing === undefined ? {} : { pressing }) };
  const pulled = pullApart<QuiltLeaf>(part, options, path, HERE);
  const along = inColumns(part) ? 'down' : 'across';
  const lines = linesOf(part, path, pulled);
  const between = pulled.seams.filter((seam) => seam.path === path);
  const marks: Mark[] = [
    ...movedCloth(
      pulled.leaves.flatMap(({ leaf, by }) => movedBy(leaf, by)),
      blocks,
      scrapsIn(quilt, blocks),
    ),
    ...pressArrows(between, 1, gap * 0.6),
    ...lines.flatMap((line) => lineArrow(seamsIn(pulled.seams, line.path, path), line.box, along, gap)),
    ...lines.filter((line) => line.blocks).map((line, i) => lineNumber(i + 1, line.box, along, gap)),
  ];
  const many = lines.filter((line) => line.blocks).length;
  const words = along === 'across' ? 'rows' : 'columns';
  const beside = along === 'across' ? { left: gap * 0.6 } : { top: gap * 0.6 };
  return framed(marks, `${quiltAlt(quilt, undefined, units)} Its ${many} ${words} are drawn apart.`, beside);
}

function inColumns(part: QuiltPart): boolean {
  return !isLeaf<QuiltLeaf>(part) && part.kind === 'row' && hasLines(part) === (part.along === 'across');
}

function linesOf(part: QuiltPart, path: string, pulled: Apart<QuiltLeaf>): readonly Line[] {
  if (!hasLines(part) || isLeaf<QuiltLeaf>(part) || part.kind !== 'row') return [lineOf(part, path, pulled)];
  return part.parts.map((child, i) => lineOf(child, below(path, i), pulled));
}

function lineOf(part: QuiltPart, path: string, pulled: Apart<QuiltLeaf>): Line {
  const own = new Set(leavesOf<QuiltLeaf>(part));
  const outlines = pulled.leaves.filter(({ leaf }) => own.has(leaf)).flatMap((placed) => boxOutline(boxOf(placed)));
  return { path, blocks: holdsBlock(part), box: boxAround(outlines) };
}

function boxOf({ leaf, by }: Apart<QuiltLeaf>['leaves'][number]): Box {
  return { ...leaf.box, x: leaf.box.x + by.x, y: leaf.box.y + by.y };
}

/** The seams of one line; a line that is the whole has its seams drawn in the gaps already. */
function seamsIn(seams: readonly SeamSpot[], path: string, whole: string): readonly SeamSpot[] {
  return path === whole ? [] : seams.filter((seam) => seam.path === path);
}

function lineNumber(number: number, box: Box, along: 'across' | 'down', gap: number): Letter {
  const at =
    along === 'across' ? { x: box.x - gap, y: box.y + box.height / 2 } : { x: box.x + box.width / 2, y: box.y - gap };
  return letter(String(number), at, 'number');
}

/** One arrow at the end of a line whose seams all go one way; else one on every seam. */
function lineArrow(seams: readonly SeamSpot[], box: Box, along: 'across' | 'down', gap: number): readonly Arrow[] {
  const [first] = seams;
  if (first === undefined) return [];
  const oneWay = seams.every((seam) => seam.press === first.press);
  if (!oneWay || first.press === 'open') return pressArrows(seams, 1, gap * 0.5);
  const end =
    along === 'across'
      ? { x: box.x + box.width + gap * 1.2, y: box.y + box.height / 2 }
      : { x: box.x + box.width / 2, y: box.y + box.height + gap * 1.2 };
  return [arrowAt(end, first.press, gap * 0.6, 'press')];
}
