import { turnSize } from '../drawing/turn.ts';
import { accept, type Maybe } from '../measure/finding.ts';
import { same } from '../measure/inches.ts';
import type { Ruler } from '../measure/ruler.ts';
import { named, plus, type TracedSize } from '../measure/traced.ts';
import type { Size } from '../pattern/schema.ts';
import { leavesOf, mapTree } from '../piecing/tree.ts';
import type { twoSeams } from './cut.ts';
import { piecesOf } from './onPoint/pieces.ts';
import type { BlockLeaf, Measure, Quilt, QuiltLeaf, QuiltPart } from './quilt.ts';
import { wholeBox } from './wholeBox.ts';

/** A top sewn together, before it is told what is in it. */
export interface Top {
  readonly root: QuiltPart;
  readonly centre: TracedSize;
  readonly size: TracedSize;
  readonly borders: Quilt['borders'];
}

/**
 * The quilt of a top: everything in it by kind, counted, and its measures.
 * @returns the quilt; or what is wrong when one block would be needed in two sizes, for a maker makes a block in one
 */
export function gather(
  size: Size,
  block: Measure,
  { root, centre, size: whole, borders }: Top,
  seams: ReturnType<typeof twoSeams>,
  ruler: Ruler,
): Maybe<Quilt> {
  const pieces = leavesOf<QuiltLeaf>(root).flatMap(piecesOf);
  const blocks = pieces.filter((piece) => piece.kind === 'block');
  const strips = pieces.filter((piece) => piece.kind === 'strip');
  const patches = pieces.filter((piece) => piece.kind === 'patch');
  const triangles = pieces.filter((piece) => piece.kind === 'triangle');
  const measures = measuresOf(blocks, size, ruler);
  if (!measures.ok) return measures;
  const counts = countsOf(blocks);
  const reversed = countsOf(blocks.filter(({ turn }) => turn.mirrored));
  const finished = { width: named(whole.width, 'finished'), height: named(whole.height, 'finished') };
  const unfinished = { width: plus(finished.width, seams), height: plus(finished.height, seams) };
  return accept({
    size: size.id,
    block,
    measures: measures.value,
    blocks,
    strips,
    patches,
    triangles,
    borders,
    counts,
    reversed,
    root,
    centre,
    finished,
    unfinished,
  });
}

/** The finished size of every block as it is made, unturned. */
function measuresOf(blocks: readonly BlockLeaf[], size: Size, ruler: Ruler): Maybe<Readonly<Record<string, Measure>>> {
  const measures: Record<string, Measure> = {};
  for (const leaf of blocks) {
    const { block, box, turn, border } = leaf;
    const whole = wholeBox(leaf);
    const own = turnSize(whole.width, whole.height, turn);
    const known = measures[block];
    if (known === undefined) measures[block] = own;
    else if (!same(known.width, own.width) || !same(known.height, own.height)) {
      const [a, b] = [known, own].map(({ width, height }) => ruler.size(width, height));
      const what = `Block ${block} is needed at ${a} and at ${b} in ${size.name}.`;
      const where = { path: border === undefined ? 'setting.motif' : 'borders', size: size.name, on: 'quilt', box };
      return {
        ok: false,
        findings: [{ level: 'stops', what, where, mend: 'Give one of the places a block of its own.' }],
      };
    }
  }
  return accept(measures);
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
