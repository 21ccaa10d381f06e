import type { Point } from '../drawing/turn.ts';
import type { Units } from '../measure/metric.ts';
import { isLeaf, leavesOf } from '../piecing/tree.ts';
import { centreOf, hasLines } from '../quilt/lines.ts';
import type { OnPointLeaf, Quilt, QuiltLeaf, QuiltPart } from '../quilt/quilt.ts';
import type { Side } from '../recipe/schema.ts';
import { HERE, outward } from './apart.ts';
import type { FigureBlock } from './blockCloth.ts';
import type { Figure } from './figure.ts';
import { framed } from './marks.ts';
import { diagonalsApart, type Moved, movedBy, movedCloth } from './movedCloth.ts';
import { quiltAlt } from './quiltFigure.ts';
import { scrapsIn } from './scraps.ts';

/** What is drawn apart, and how much room it then takes beyond its own box on every side. */
interface Pulled {
  readonly moved: readonly Moved[];
  readonly more: Readonly<Record<Side, number>>;
}

const NO_MORE = { left: 0, right: 0, top: 0, bottom: 0 };

/**
 * The whole top pulled apart in the order it is sewn: blocks into rows (columns, diagonal rows), rows into the setting, then
 * border by border.
 * @param apart 0: sewn together; 1: rows a third of a block apart
 */
export function sewingOrderFigure(
  quilt: Quilt,
  blocks: readonly FigureBlock[],
  apart: number,
  units: Units = 'inches',
): Figure {
  const gap = Math.min(quilt.block.width, quilt.block.height) * 0.34 * apart;
  const { moved } = pulled(quilt.root, gap);
  const marks = movedCloth(moved, blocks, scrapsIn(quilt, blocks));
  return framed(marks, `${quiltAlt(quilt, undefined, units)} Drawn apart in the order it is sewn.`);
}

function pulled(root: QuiltPart, gap: number): Pulled {
  if (isLeaf<QuiltLeaf>(root) || root.kind !== 'rounds') return centrePulled(centreOf(root).part, gap);
  const core = pulled(root.core, gap);
  const more: Record<Side, number> = { ...core.more };
  const moved = [...core.moved];
  let [round, before]: [Side[], Record<Side, number>] = [[], { ...more }];
  for (const { side, part } of root.logs) {
    // A side that comes again begins the next border, outside this one.
    if (round.includes(side)) [round, before] = [[], { ...more }];
    round.push(side);
    const by = outward(HERE, side, before[side] + gap);
    moved.push(...leavesOf<QuiltLeaf>(part).flatMap((leaf) => movedBy(leaf, by)));
    more[side] = before[side] + gap;
  }
  return { moved, more };
}

/** The setting: its rows apart, and the blocks of every row a little. */
function centrePulled(part: QuiltPart, gap: number): Pulled {
  if (isLeaf<QuiltLeaf>(part))
    return part.kind === 'on-point' ? diagonalRows(part, gap) : { moved: movedBy(part, HERE), more: NO_MORE };
  if (part.kind !== 'row')
    return { moved: leavesOf<QuiltLeaf>(part).flatMap((leaf) => movedBy(leaf, HERE)), more: NO_MORE };
  const step = hasLines(part) ? gap : gap / 3;
  const middle = (part.parts.length - 1) / 2;
  const inner = part.parts.map((child) => rowPulled(child, gap / 3));
  const moved = inner.flatMap((row, i) => {
    const far = (i - middle) * step;
    return row.moved.map(({ piece, by }) => ({ piece, by: along(part.along, by, far) }));
  });
  const reach = middle * step;
  const across = Math.max(0, ...inner.map(({ more }) => more.left));
  const down = Math.max(0, ...inner.map(({ more }) => more.top));
  const [x, y] = part.along === 'across' ? [across + reach, down] : [across, down + reach];
  return { moved, more: { left: x, right: x, top: y, bottom: y } };
}

function rowPulled(part: QuiltPart, gap: number): Pulled {
  if (isLeaf<QuiltLeaf>(part) || part.kind !== 'row')
    return { moved: leavesOf<QuiltLeaf>(part).flatMap((leaf) => movedBy(leaf, HERE)), more: NO_MORE };
  const middle = (part.parts.length - 1) / 2;
  const moved = part.parts.flatMap((child, i) => {
    const by = along(part.along, HERE, (i - middle) * gap);
    return leavesOf<QuiltLeaf>(child).flatMap((leaf) => movedBy(leaf, by));
  });
  const reach = middle * gap;
  const [x, y] = part.along === 'across' ? [reach, 0] : [0, reach];
  return { moved, more: { left: x, right: x, top: y, bottom: y } };
}

function along(way: 'across' | 'down', { x, y }: Point, far: number): Point {
  return way === 'across' ? { x: x + far, y } : { x, y: y + far };
}

function diagonalRows(leaf: OnPointLeaf, gap: number): Pulled {
  const { moved, far } = diagonalsApart(leaf, gap);
  return { moved, more: { left: far, right: far, top: far, bottom: far } };
}
