import type { PressingPlan } from '../pressing/pressing.ts';
import type { BlockLeaf, Quilt, QuiltPart, StripLeaf } from '../quilt/quilt.ts';
import { type Apart, below, HERE, pullApart, type SeamSpot } from './apart.ts';
import { areasOf, type FigureBlock } from './blockCloth.ts';
import type { Arrow, Figure, Mark } from './figure.ts';
import { arrowAt, boxAround, boxLine, boxOutline, framed, letter } from './marks.ts';
import { pressArrows } from './pressArrows.ts';
import { gatherCloth } from './quiltCloth.ts';
import { quiltAlt } from './quiltFigure.ts';

type Leaf = BlockLeaf | StripLeaf;

/**
 * The blocks in rows pulled apart: each row has its number, an arrow for the way its seams are pressed, and the seams
 * between rows have theirs in the gaps.
 */
export function quiltRowsFigure(quilt: Quilt, blocks: readonly FigureBlock[], pressing?: PressingPlan): Figure {
  const { part, path } = centreOf(quilt.root, '');
  const gap = quilt.block.height * 0.3;
  const options = { gap: (at: string) => (at === path ? gap : 0), ...(pressing === undefined ? {} : { pressing }) };
  const pulled = pullApart<Leaf>(part, options, path, HERE);
  const rows = rowsOf(pulled);
  const marks: Mark[] = [...clothMarks(pulled, blocks)];
  const ends = rows.map((row) => endsOf(row));
  marks.push(
    ...pressArrows(
      pulled.seams.filter((seam) => seam.path === path),
      1,
      gap * 0.6,
    ),
  );
  marks.push(
    ...rows.flatMap((_, i) =>
      rowArrow(
        pulled.seams.filter((seam) => seam.path === below(path, i)),
        ends[i],
        gap,
      ),
    ),
  );
  marks.push(...ends.map(({ x, y, height }, i) => letter(String(i + 1), { x: x - gap, y: y + height / 2 }, 'number')));
  return framed(marks, `${quiltAlt(quilt)} Its ${rows.length} rows are drawn apart.`, { left: gap * 0.6 });
}

/** The blocks inside the borders. */
function centreOf(part: QuiltPart, path: string): { readonly part: QuiltPart; readonly path: string } {
  return part.kind === 'rounds' ? centreOf(part.core, below(path, 0)) : { part, path };
}

function rowsOf(pulled: Apart<Leaf>): readonly Apart<Leaf>['leaves'][] {
  const rows = new Map<number, Apart<Leaf>['leaves'][number][]>();
  for (const placed of pulled.leaves) {
    if (placed.leaf.kind !== 'block') continue;
    rows.set(placed.leaf.row, [...(rows.get(placed.leaf.row) ?? []), placed]);
  }
  return [...rows.values()];
}

function endsOf(row: Apart<Leaf>['leaves']) {
  return boxAround(
    row.flatMap(({ leaf, by }) => boxOutline({ ...leaf.box, x: leaf.box.x + by.x, y: leaf.box.y + by.y })),
  );
}

function clothMarks(pulled: Apart<Leaf>, blocks: readonly FigureBlock[]): readonly Mark[] {
  const gathering = gatherCloth(blocks);
  for (const { leaf, by } of pulled.leaves) {
    if (leaf.kind === 'block') gathering.addBlock(leaf, by);
    else gathering.addStrip(leaf, by);
  }
  const outlines = pulled.leaves.map(({ leaf, by }) =>
    boxLine({ ...leaf.box, x: leaf.box.x + by.x, y: leaf.box.y + by.y }, 'unit'),
  );
  return [...areasOf(gathering.cloth, 'full', 'patch'), ...outlines];
}

/** One arrow beside a row whose seams all go one way; else one on every seam. */
function rowArrow(
  seams: readonly SeamSpot[],
  row: ReturnType<typeof endsOf> | undefined,
  gap: number,
): readonly Arrow[] {
  const [first] = seams;
  if (first === undefined || row === undefined) return [];
  const oneWay = seams.every((seam) => seam.press === first.press);
  if (!oneWay || first.press === 'open') return pressArrows(seams, 1, gap * 0.5);
  return [arrowAt({ x: row.x + row.width + gap * 1.2, y: row.y + row.height / 2 }, first.press, gap * 0.6, 'press')];
}
