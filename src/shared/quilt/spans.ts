import type { Box } from '../drawing/turn.ts';
import { accept, type Finding, type Maybe } from '../measure/finding.ts';
import type { Pattern, Size } from '../pattern/schema.ts';
import type { BlockLeaf, Measure, QuiltPart } from './quilt.ts';
import { rowOf } from './straight.ts';

/** How many places of the setting, each way, every block fills; those that fill one are left out. */
export function spansOf({ blocks }: Pattern): ReadonlyMap<string, number> {
  return new Map(blocks.flatMap(({ id, places = 1 }) => (places > 1 ? [[id, places] as const] : [])));
}

/**
 * Blocks of several sizes on a common module: a block that fills several places takes those to its right and below it, whatever
 * the motif has there, and all must come apart along straight seams.
 * @param blocks what the motif has in every place, row by row
 * @param module finished place, inches
 */
export function moduleCentre(
  pattern: Pattern,
  size: Size,
  module: Measure,
  blocks: readonly BlockLeaf[],
): Maybe<QuiltPart> {
  const { setting } = pattern;
  const refuse = (what: string, path: string, mend: string, box?: Box): Maybe<never> => {
    const where = { path, size: size.name, on: 'quilt', ...(box === undefined ? {} : { box }) };
    return { ok: false, findings: [{ level: 'stops', what, where, mend } satisfies Finding] };
  };
  if (setting.kind !== 'straight' || setting.sashing !== undefined)
    return refuse(
      'Blocks that fill several places go into rows and columns without sashing only.',
      'setting.kind',
      'Set the blocks straight without sashing, or let every block fill one place.',
    );
  const covered = covering(blocks, spansOf(pattern), size, module);
  if ('clash' in covered) {
    const { block, column, row, box } = covered.clash;
    const place = `row ${row + 1}, column ${column + 1}`;
    const what = `Block ${block} fills several places and has no room for them at ${place} of ${size.name}.`;
    return refuse(what, 'setting.motif', 'Move it, or choose a size its motif repeats in whole.', box);
  }
  const whole = { x: 0, y: 0, width: size.across * module.width, height: size.down * module.height };
  const part = sliced(covered.blocks, whole);
  if (part !== null) return accept(part);
  return refuse(
    `The blocks of ${size.name} lie so that no straight seam runs between them from edge to edge.`,
    'setting.motif',
    'Move the larger blocks so that they stand in rows or columns of their own.',
  );
}

type Covered = { readonly blocks: readonly BlockLeaf[] } | { readonly clash: BlockLeaf };

function covering(
  blocks: readonly BlockLeaf[],
  spans: ReadonlyMap<string, number>,
  { across, down }: Size,
  module: Measure,
): Covered {
  const taken = new Set<number>();
  const kept: BlockLeaf[] = [];
  for (const leaf of blocks) {
    const { column, row, block } = leaf;
    if (taken.has(row * across + column)) continue;
    const span = spans.get(block) ?? 1;
    const box = {
      x: column * module.width,
      y: row * module.height,
      width: span * module.width,
      height: span * module.height,
    };
    if (column + span > across || row + span > down) return { clash: { ...leaf, box } };
    for (let r = row; r < row + span; r += 1) {
      for (let c = column; c < column + span; c += 1) {
        if (taken.has(r * across + c)) return { clash: { ...leaf, box } };
        taken.add(r * across + c);
      }
    }
    kept.push({ ...leaf, box });
  }
  return { blocks: kept };
}

/** Blocks as rows of rows, cut apart wherever a straight seam runs from edge to edge; null where none does. */
function sliced(blocks: readonly BlockLeaf[], box: Box): QuiltPart | null {
  const [only] = blocks;
  if (blocks.length === 1 && only !== undefined) return only;
  for (const along of ['down', 'across'] as const) {
    const bands = bandsOf(blocks, along);
    if (bands.length < 2) continue;
    const parts = bands.map((band) => sliced(band, bandBox(band, box, along)));
    if (parts.some((part) => part === null)) return null;
    return rowOf(along, parts as QuiltPart[], box);
  }
  return null;
}

/** The blocks in bands that no block reaches out of, in order. */
function bandsOf(blocks: readonly BlockLeaf[], along: 'down' | 'across'): readonly (readonly BlockLeaf[])[] {
  const start = ({ box }: BlockLeaf) => (along === 'down' ? box.y : box.x);
  const end = ({ box }: BlockLeaf) => (along === 'down' ? box.y + box.height : box.x + box.width);
  const bands: BlockLeaf[][] = [];
  let reached = Number.NEGATIVE_INFINITY;
  for (const leaf of [...blocks].sort((a, b) => start(a) - start(b))) {
    if (start(leaf) >= reached - 1e-6) bands.push([leaf]);
    else bands.at(-1)?.push(leaf);
    reached = Math.max(reached, end(leaf));
  }
  return bands;
}

function bandBox(band: readonly BlockLeaf[], box: Box, along: 'down' | 'across'): Box {
  if (along === 'down') {
    const top = Math.min(...band.map((leaf) => leaf.box.y));
    const bottom = Math.max(...band.map((leaf) => leaf.box.y + leaf.box.height));
    return { ...box, y: top, height: bottom - top };
  }
  const left = Math.min(...band.map((leaf) => leaf.box.x));
  const right = Math.max(...band.map((leaf) => leaf.box.x + leaf.box.width));
  return { ...box, x: left, width: right - left };
}
