import type { Box } from '../drawing/turn.ts';
import { accept, type Finding, type Maybe } from '../measure/finding.ts';
import type { Pattern, Size } from '../pattern/schema.ts';
import type { Centre } from './centre.ts';
import type { BlockLeaf, Measure, QuiltPart } from './quilt.ts';
import { sashesOf } from './sashing.ts';
import { type Cells, cellOf, cellsOf, rowOf, type Track } from './straight.ts';

/** How many places of the setting, each way, every block fills; those that fill one are left out. */
export function spansOf({ blocks }: Pick<Pattern, 'blocks'>): ReadonlyMap<string, number> {
  return new Map(blocks.flatMap(({ id, places = 1 }) => (places > 1 ? [[id, places] as const] : [])));
}

/** How settings come apart that are sewn in one direction. */
function unparted(kind: 'on-point' | 'strips', size: string): string {
  return kind === 'on-point'
    ? `On point, ${size} is sewn in diagonal rows:`
    : `In strips, ${size} is sewn strip by strip:`;
}

/**
 * Blocks of several sizes on a common module: a block that fills several places takes those to its right and below it, whatever
 * the motif has there, and the sashing between them. All must come apart along straight seams.
 * @param blocks what the motif has in every place, row by row
 * @param module finished place, inches
 */
export function moduleCentre(
  pattern: Pattern,
  size: Size,
  module: Measure,
  blocks: readonly BlockLeaf[],
): Maybe<Centre> {
  const { setting, house } = pattern;
  const refuse = (what: string, path: string, mend: string, box?: Box): Maybe<never> => {
    const where = { path, size: size.name, on: 'quilt', ...(box === undefined ? {} : { box }) };
    return { ok: false, findings: [{ level: 'stops', what, where, mend } satisfies Finding] };
  };
  if (setting.kind !== 'straight')
    return refuse(
      `${unparted(setting.kind, size.name)} a block that fills several places would cut into two of them, and no seam would run from edge to edge.`,
      'setting.kind',
      'Put the smaller blocks together in one recipe, two by two, so that every block fills one place; or set the blocks straight.',
    );
  if (sashesOf(setting, size)?.cornerstones === null)
    return refuse(
      'Beside blocks that fill several places, sashing cannot run through.',
      'setting.sashing.cornerstones',
      'Give the sashing cornerstones; they may be of its own fabric.',
    );
  const cells = cellsOf(setting, size, module, blocks, house);
  const laid = covering(cells, spansOf(pattern));
  if ('clash' in laid) {
    const { block, column, row, box } = laid.clash;
    const place = `row ${row + 1}, column ${column + 1}`;
    const what = `Block ${block} fills several places and has no room for them at ${place} of ${size.name}.`;
    return refuse(what, 'setting.motif', 'Move it, or choose a size its motif repeats in whole.', box);
  }
  const ways = setting.sewn === 'columns' ? (['across', 'down'] as const) : (['down', 'across'] as const);
  const part = sliced(laid.pieces, cells.box, ways);
  if (part !== null) return accept({ part, box: cells.box, size: cells.whole });
  return refuse(
    `The blocks of ${size.name} lie so that no straight seam runs between them from edge to edge.`,
    'setting.motif',
    'Move the larger blocks so that they stand in rows or columns of their own.',
  );
}

/** Something on the lattice of columns and rows: where it begins, and where what comes after it does. */
interface Laid {
  readonly part: QuiltPart;
  readonly across: Reach;
  readonly down: Reach;
}

interface Reach {
  readonly from: number;
  readonly to: number;
}

type Covered = { readonly pieces: readonly Laid[] } | { readonly clash: BlockLeaf };

function covering(cells: Cells, spans: ReadonlyMap<string, number>): Covered {
  const { columns, rows } = cells;
  const taken = new Set<number>();
  const pieces: Laid[] = [];
  for (const [r, row] of rows.entries()) {
    for (const [c, column] of columns.entries()) {
      if (taken.has(r * columns.length + c)) continue;
      const part = cellOf(cells, column, row);
      const span = part.kind === 'block' ? (spans.get(part.block) ?? 1) : 1;
      const [across, down] = [reach(columns, c, span), reach(rows, r, span)];
      const box = boxOf(columns, rows, across, down);
      const free = across.to <= columns.length && down.to <= rows.length && take(taken, across, down, columns.length);
      if (part.kind !== 'block') pieces.push({ part, across, down });
      else if (free) pieces.push({ part: { ...part, box }, across, down });
      else return { clash: { ...part, box } };
    }
  }
  return { pieces };
}

/** From a track over so many tracks of blocks, with the sashing between them. */
function reach(tracks: readonly Track[], from: number, span: number): Reach {
  const sashed = tracks.some(({ kind }) => kind === 'sashing');
  return { from, to: from + (sashed ? 2 * span - 1 : span) };
}

function boxOf(columns: readonly Track[], rows: readonly Track[], across: Reach, down: Reach): Box {
  const [x, width] = stretch(columns, across);
  const [y, height] = stretch(rows, down);
  return { x, y, width, height };
}

function stretch(tracks: readonly Track[], { from, to }: Reach): readonly [at: number, long: number] {
  const own = tracks.slice(from, to);
  return [own[0]?.at ?? 0, own.reduce((sum, { reach: long }) => sum + long, 0)];
}

/** Takes the places if they are free; whether they were. */
function take(taken: Set<number>, across: Reach, down: Reach, wide: number): boolean {
  for (let r = down.from; r < down.to; r += 1) {
    for (let c = across.from; c < across.to; c += 1) {
      if (taken.has(r * wide + c)) return false;
      taken.add(r * wide + c);
    }
  }
  return true;
}

type Way = 'down' | 'across';

/** Pieces as rows of rows, cut apart wherever a straight seam runs from edge to edge; null where none does. */
function sliced(pieces: readonly Laid[], box: Box, ways: readonly Way[]): QuiltPart | null {
  const [only] = pieces;
  if (pieces.length === 1 && only !== undefined) return only.part;
  for (const along of ways) {
    const bands = bandsOf(pieces, along);
    if (bands.length < 2) continue;
    const parts = bands.map((band) => sliced(band, bandBox(band, box, along), ways));
    if (parts.some((part) => part === null)) return null;
    return rowOf(along, parts as QuiltPart[], box);
  }
  return null;
}

/** The pieces in bands that none reaches out of, in order. */
function bandsOf(pieces: readonly Laid[], along: Way): readonly (readonly Laid[])[] {
  const bands: Laid[][] = [];
  let reached = 0;
  for (const laid of [...pieces].sort((a, b) => a[along].from - b[along].from)) {
    if (laid[along].from >= reached) bands.push([laid]);
    else bands.at(-1)?.push(laid);
    reached = Math.max(reached, laid[along].to);
  }
  return bands;
}

function bandBox(band: readonly Laid[], box: Box, along: Way): Box {
  const boxes = band.map(({ part }) => part.box);
  if (along === 'down') {
    const top = Math.min(...boxes.map(({ y }) => y));
    return { ...box, y: top, height: Math.max(...boxes.map(({ y, height }) => y + height)) - top };
  }
  const left = Math.min(...boxes.map(({ x }) => x));
  return { ...box, x: left, width: Math.max(...boxes.map(({ x, width }) => x + width)) - left };
}
