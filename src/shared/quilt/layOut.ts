import { afterTurn, type Turn, turnSize } from '../drawing/turn.ts';
import { accept, type Finding, type Maybe } from '../measure/finding.ts';
import { count, given, named, plus, type TracedSize, times } from '../measure/traced.ts';
import { blockAt } from '../pattern/motif.ts';
import type { Pattern, Size } from '../pattern/schema.ts';
import { mirrorTurn } from '../piecing/likeness.ts';
import type { Log, Piecing } from '../piecing/piecing.ts';
import { mapTree } from '../piecing/tree.ts';
import type { Token } from '../recipe/token.ts';
import { borderWidth, buttBorder, type Growing, leftOut } from './borders.ts';
import type { BlockLeaf, Quilt, QuiltPart, StripLeaf } from './quilt.ts';

/** The most blocks one size may have. */
export const MOST_BLOCKS = 2500;

/**
 * One size of a pattern, laid out in finished inches: rows of blocks, then border by border.
 * @param pieced the piecing of each block, by letter
 * @param path where the size stands in the document
 * @returns the quilt, or why this size cannot be laid out
 */
export function layOut(pattern: Pattern, size: Size, pieced: ReadonlyMap<string, Piecing>, path: string): Maybe<Quilt> {
  const total = size.across * size.down;
  if (total > MOST_BLOCKS) {
    const what = `${size.name} would have ${total.toLocaleString('en')} blocks; the most is ${MOST_BLOCKS.toLocaleString('en')}.`;
    return { ok: false, findings: [stops(what, path, size, 'Use fewer, larger blocks.')] };
  }
  const first = pieced.values().next().value;
  if (first === undefined) return { ok: false, findings: [] };
  const block = { width: size.block, height: (size.block * first.drawing.height) / first.drawing.width };
  const rows = placeBlocks(pattern, size, pieced, block);
  if (!rows.ok) return rows;
  return accept(assemble(pattern, size, block, rows.value));
}

function stops(what: string, path: string, size: Size, mend: string): Finding {
  return { level: 'stops', what, where: { path, size: size.name, on: 'quilt' }, mend };
}

type BlockSize = Quilt['block'];

function placeBlocks(
  pattern: Pattern,
  size: Size,
  pieced: ReadonlyMap<string, Piecing>,
  block: BlockSize,
): Maybe<BlockLeaf[][]> {
  const at = blockAt(pattern.setting);
  const findings = new Map<string, Finding>();
  const asSewn = sewnTurns();
  const rows = Array.from({ length: size.down }, (_, row) =>
    Array.from({ length: size.across }, (_, column): BlockLeaf | null => {
      const token = at(size.id, column, row);
      const piecing = token === null ? undefined : pieced.get(token.name);
      if (token === null || piecing === undefined) return null;
      const wrong = shapeFinding(token, piecing, block, size);
      if (wrong !== null) findings.set(wrong.what, wrong);
      const box = { x: column * block.width, y: row * block.height, ...block };
      return { kind: 'block', block: token.name, turn: asSewn(token, piecing), column, row, box };
    }),
  );
  if (findings.size > 0) return { ok: false, findings: [...findings.values()] };
  // A missing block is the document's fault and told once there, not once a size.
  return rows.some((row) => row.includes(null)) ? { ok: false, findings: [] } : accept(rows as BlockLeaf[][]);
}

/** How each block lies once it is sewn: a mirrored block that is the same as a turned one is that turned one. */
function sewnTurns(): (token: Token, piecing: Piecing) => Turn {
  const known = new Map<string, Turn | null>();
  return ({ name, turn }, { root, units }) => {
    if (!turn.mirrored) return turn;
    const found = known.get(name);
    const alike = found === undefined ? mirrorTurn(root, units) : found;
    known.set(name, alike);
    return alike === null ? turn : afterTurn(alike, { quarters: turn.quarters, mirrored: false });
  };
}

/** Every block, turned as it is, must fill the same cell. */
function shapeFinding(token: Token, piecing: Piecing, block: BlockSize, size: Size): Finding | null {
  const { width, height } = turnSize(piecing.drawing.width, piecing.drawing.height, token.turn);
  if (Math.abs(width * block.height - height * block.width) < 1e-6 * width * block.height) return null;
  const what = `Block ${token.name}, turned this way, is ${width} by ${height} on its grid and does not fill its place.`;
  return stops(what, 'setting.motif', size, 'Turn it by a half, or use blocks of one shape.');
}

function assemble(pattern: Pattern, size: Size, block: BlockSize, rows: readonly BlockLeaf[][]): Quilt {
  const centre = centreSize(size, block);
  const box = { x: 0, y: 0, width: size.across * block.width, height: size.down * block.height };
  let top: Growing = { box, size: centre };
  const logs: Log<BlockLeaf | StripLeaf>[] = [];
  for (const border of pattern.borders) {
    const width = borderWidth(border, size);
    if (leftOut(width)) continue;
    const sewn = buttBorder(top, border, width, pattern.house);
    logs.push(...sewn.logs);
    top = sewn.top;
  }
  const core = rowsOf(rows, box);
  const root: QuiltPart = logs.length === 0 ? core : { kind: 'rounds', core, logs, box: top.box };
  return quiltFrom(size, block, moved(root, -top.box.x, -top.box.y), centre, top.size, pattern.house.seam);
}

function rowsOf(rows: readonly BlockLeaf[][], box: QuiltPart['box']): QuiltPart {
  const parts = rows.map((row): QuiltPart => {
    const [only] = row;
    if (row.length === 1 && only !== undefined) return only;
    const height = row[0]?.box.height ?? 0;
    return { kind: 'row', along: 'across', parts: row, box: { ...box, y: row[0]?.box.y ?? 0, height } };
  });
  const [only] = parts;
  return parts.length === 1 && only !== undefined ? only : { kind: 'row', along: 'down', parts, box };
}

/** Moves everything so that the quilt's top left corner is at 0, 0. */
function moved(root: QuiltPart, x: number, y: number): QuiltPart {
  const box = (b: QuiltPart['box']) => ({ ...b, x: b.x + x, y: b.y + y });
  return mapTree<BlockLeaf | StripLeaf, BlockLeaf | StripLeaf>(root, (leaf) => ({ ...leaf, box: box(leaf.box) }), box);
}

function centreSize(size: Size, block: BlockSize): TracedSize {
  return {
    width: named(times(count(size.across, 'blocks across'), given(block.width, 'finished')), 'of blocks'),
    height: named(times(count(size.down, 'blocks down'), given(block.height, 'finished')), 'of blocks'),
  };
}

function quiltFrom(
  size: Size,
  block: BlockSize,
  root: QuiltPart,
  centre: TracedSize,
  top: TracedSize,
  seam: number,
): Quilt {
  const blocks: BlockLeaf[] = [];
  const strips: StripLeaf[] = [];
  mapTree<BlockLeaf | StripLeaf, BlockLeaf | StripLeaf>(
    root,
    (leaf) => {
      if (leaf.kind === 'block') blocks.push(leaf);
      else strips.push(leaf);
      return leaf;
    },
    (box) => box,
  );
  const counts = countsOf(blocks);
  const reversed = countsOf(blocks.filter(({ turn }) => turn.mirrored));
  const finished = { width: named(top.width, 'finished'), height: named(top.height, 'finished') };
  const seams = named(times(count(2, ''), given(seam, 'seam')), 'for two seams');
  const unfinished = { width: plus(finished.width, seams), height: plus(finished.height, seams) };
  return { size: size.id, block, blocks, strips, counts, reversed, root, centre, finished, unfinished };
}

function countsOf(blocks: readonly BlockLeaf[]): Readonly<Record<string, number>> {
  const counts: Record<string, number> = {};
  for (const { block } of blocks) counts[block] = (counts[block] ?? 0) + 1;
  return counts;
}
