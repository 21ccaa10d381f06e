import { named, plus, type TracedSize } from '../measure/traced.ts';
import type { Size } from '../pattern/schema.ts';
import { leavesOf, mapTree } from '../piecing/tree.ts';
import type { twoSeams } from './cut.ts';
import { piecesOf } from './onPoint/pieces.ts';
import type { BlockLeaf, Measure, Quilt, QuiltLeaf, QuiltPart } from './quilt.ts';

/** A top sewn together, before it is told what is in it. */
export interface Top {
  readonly root: QuiltPart;
  readonly centre: TracedSize;
  readonly size: TracedSize;
}

/** The quilt of a top: everything in it by kind, counted, and its measures. */
export function gather(
  size: Size,
  block: Measure,
  { root, centre, size: whole }: Top,
  seams: ReturnType<typeof twoSeams>,
): Quilt {
  const pieces = leavesOf<QuiltLeaf>(root).flatMap(piecesOf);
  const blocks = pieces.filter((piece) => piece.kind === 'block');
  const strips = pieces.filter((piece) => piece.kind === 'strip');
  const patches = pieces.filter((piece) => piece.kind === 'patch');
  const triangles = pieces.filter((piece) => piece.kind === 'triangle');
  const counts = countsOf(blocks);
  const reversed = countsOf(blocks.filter(({ turn }) => turn.mirrored));
  const measures = Object.fromEntries(Object.keys(counts).map((letter) => [letter, block] as const));
  const finished = { width: named(whole.width, 'finished'), height: named(whole.height, 'finished') };
  const unfinished = { width: plus(finished.width, seams), height: plus(finished.height, seams) };
  return {
    size: size.id,
    block,
    measures,
    blocks,
    strips,
    patches,
    triangles,
    counts,
    reversed,
    root,
    centre,
    finished,
    unfinished,
  };
}

function countsOf(blocks: readonly BlockLeaf[]): Readonly<Record<string, number>> {
  const counts: Record<string, number> = {};
  for (const { block } of blocks) counts[block] = (counts[block] ?? 0) + 1;
  return counts;
}

/** Everything moved so that the quilt's top left corner is at 0, 0. */
export function movedTo(root: QuiltPart, x: number, y: number): QuiltPart {
  if (x === 0 && y === 0) return root;
  const box = (b: QuiltPart['box']) => ({ ...b, x: b.x + x, y: b.y + y });
  const leaf = (is: QuiltLeaf): QuiltLeaf => {
    if (is.kind !== 'on-point') return { ...is, box: box(is.box) };
    return { ...is, box: box(is.box), origin: { x: is.origin.x + x, y: is.origin.y + y } };
  };
  return mapTree<QuiltLeaf, QuiltLeaf>(root, leaf, box);
}
