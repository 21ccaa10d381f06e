import type { Point } from '../drawing/turn.ts';
import { isLeaf, leavesOf } from '../piecing/tree.ts';
import { centreOf, hasLines } from '../quilt/lines.ts';
import { partInQuilt, piecesOf } from '../quilt/onPoint/pieces.ts';
import type { OnPointLeaf, Quilt, QuiltLeaf, QuiltPart, TopPiece } from '../quilt/quilt.ts';
import type { Side } from '../recipe/schema.ts';
import { HERE, outward } from './apart.ts';
import { areasOf, type FigureBlock } from './blockCloth.ts';
import type { Figure } from './figure.ts';
import { framed } from './marks.ts';
import { gatherCloth, pieceLine } from './quiltCloth.ts';
import { quiltAlt } from './quiltFigure.ts';

/** A piece of the top and how far it is drawn from where it is sewn. */
interface Moved {
  readonly piece: TopPiece;
  readonly by: Point;
}

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
export function sewingOrderFigure(quilt: Quilt, blocks: readonly FigureBlock[], apart: number): Figure {
  const gap = Math.min(quilt.block.width, quilt.block.height) * 0.34 * apart;
  const { moved } = pulled(quilt.root, gap);
  const gathering = gatherCloth(blocks);
  for (const { piece, by } of moved) gathering.add(piece, by);
  const lines = moved.map(({ piece, by }) => pieceLine(piece, by));
  const marks = [...areasOf(gathering.cloth, 'full', 'patch'), ...lines];
  return framed(marks, `${quiltAlt(quilt)} Drawn apart in the order it is sewn.`);
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

function movedBy(leaf: QuiltLeaf, by: Point): readonly Moved[] {
  return piecesOf(leaf).map((piece) => ({ piece, by }));
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

/** Rows move away along the diagonal they follow one another by; the corners, sewn on last, along theirs. */
function diagonalRows(leaf: OnPointLeaf, gap: number): Pulled {
  const middle = (leaf.rows.length - 1) / 2;
  const share = Math.SQRT1_2;
  const rows = leaf.rows.flatMap(({ parts }, i): readonly Moved[] => {
    const far = (i - middle) * gap * share;
    return parts.flatMap((part) => partInQuilt(part, leaf.origin)).map((piece) => ({ piece, by: { x: far, y: far } }));
  });
  const far = (middle + 1) * gap * share;
  const near = gap * share;
  const outs: readonly Point[] = [
    { x: -far, y: -far },
    { x: near, y: -near },
    { x: far, y: far },
    { x: -near, y: near },
  ];
  const corners = leaf.corners.flatMap((corner, i) =>
    partInQuilt(corner, leaf.origin).map((piece) => ({ piece, by: outs[i] as Point })),
  );
  return { moved: [...rows, ...corners], more: { left: far, right: far, top: far, bottom: far } };
}
