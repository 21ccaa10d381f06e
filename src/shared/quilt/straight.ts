import type { Box } from '../drawing/turn.ts';
import { count, given, named, plus, type Traced, type TracedSize, times } from '../measure/traced.ts';
import type { House, Size, StraightSetting } from '../pattern/schema.ts';
import type { Centre } from './centre.ts';
import type { BlockLeaf, Measure, QuiltPart } from './quilt.ts';
import { cornerstone, type Sashes, sashesOf, sashPart } from './sashing.ts';

/** A column or a row of the setting: of blocks, or of sashing. */
export interface Track {
  readonly kind: 'blocks' | 'sashing';
  /** Which column or row of blocks; for sashing the one after it. */
  readonly index: number;
  readonly at: number;
  readonly reach: number;
}

/**
 * Blocks in rows and columns, with sashing between them when the setting has some.
 * @param blocks row by row; their boxes are given here
 */
export function straightCentre(
  setting: StraightSetting,
  size: Size,
  block: Measure,
  blocks: readonly BlockLeaf[],
  house: House,
): Centre {
  const cells = cellsOf(setting, size, block, blocks, house);
  const part = setting.sewn === 'columns' ? inColumns(cells) : inRows(cells);
  return { part, box: cells.box, size: cells.whole };
}

/** The columns and rows of blocks and sashing, and what there is to stand in them. */
export function cellsOf(
  setting: StraightSetting,
  size: Size,
  block: Measure,
  blocks: readonly BlockLeaf[],
  house: House,
): Cells {
  const sashes = sashesOf(setting, size);
  const columns = tracks(size.across, block.width, sashes);
  const rows = tracks(size.down, block.height, sashes);
  const whole = centreSize(size, block, sashes);
  const box = { x: 0, y: 0, width: reachOf(columns), height: reachOf(rows) };
  return { across: size.across, columns, rows, box, whole, block, blocks, sashes, house };
}

function reachOf(all: readonly Track[]): number {
  const last = all.at(-1);
  return last === undefined ? 0 : last.at + last.reach;
}

function tracks(many: number, reach: number, sashes: Sashes | null): readonly Track[] {
  const found: Track[] = [];
  let at = 0;
  const add = (kind: Track['kind'], index: number, wide: number) => {
    found.push({ kind, index, at, reach: wide });
    at += wide;
  };
  for (let index = 0; index < many; index += 1) {
    if (sashes !== null && (index > 0 || sashes.outside)) add('sashing', index, sashes.width.value);
    add('blocks', index, reach);
  }
  if (sashes?.outside) add('sashing', many, sashes.width.value);
  return found;
}

/** A setting as a lattice of columns and rows. */
export interface Cells {
  readonly across: number;
  readonly columns: readonly Track[];
  readonly rows: readonly Track[];
  readonly box: Box;
  readonly whole: TracedSize;
  readonly block: Measure;
  readonly blocks: readonly BlockLeaf[];
  readonly sashes: Sashes | null;
  readonly house: House;
}

function inRows(cells: Cells): QuiltPart {
  const { rows, columns, box, sashes, whole, house } = cells;
  const parts = rows.map((row): QuiltPart => {
    const own = { ...box, y: row.at, height: row.reach };
    if (row.kind === 'sashing' && sashes !== null && sashes.cornerstones === null)
      return sashPart(sashes, 'across', own, whole.width, 'whole', house);
    return rowOf(
      'across',
      columns.map((column) => cellOf(cells, column, row)),
      own,
    );
  });
  return rowOf('down', parts, box);
}

function inColumns(cells: Cells): QuiltPart {
  const { rows, columns, box, sashes, whole, house } = cells;
  const parts = columns.map((column): QuiltPart => {
    const own = { ...box, x: column.at, width: column.reach };
    if (column.kind === 'sashing' && sashes !== null && sashes.cornerstones === null)
      return sashPart(sashes, 'down', own, whole.height, 'whole', house);
    return rowOf(
      'down',
      rows.map((row) => cellOf(cells, column, row)),
      own,
    );
  });
  return rowOf('across', parts, box);
}

/** Parts side by side; one part alone is no row. */
export function rowOf(along: 'across' | 'down', parts: readonly QuiltPart[], box: Box): QuiltPart {
  const [only] = parts;
  return parts.length === 1 && only !== undefined ? only : { kind: 'row', along, parts, box };
}

/** What stands where a column crosses a row: a block, a sashing, a cornerstone. */
export function cellOf({ across, blocks, block, sashes, house }: Cells, column: Track, row: Track): QuiltPart {
  const box = { x: column.at, y: row.at, width: column.reach, height: row.reach };
  if (column.kind === 'blocks' && row.kind === 'blocks') {
    const leaf = blocks[row.index * across + column.index];
    if (leaf === undefined) throw new RangeError(`No block in column ${column.index}, row ${row.index}`);
    return { ...leaf, box };
  }
  if (sashes === null) throw new RangeError('Only sashing parts blocks');
  if (column.kind === 'sashing' && row.kind === 'sashing')
    return cornerstone(sashes.cornerstones ?? '', sashes, column.at, row.at, house);
  const run = column.kind === 'sashing' ? 'down' : 'across';
  const long = given(run === 'down' ? block.height : block.width, 'block finished');
  return sashPart(sashes, run, box, long, 'block', house);
}

function centreSize(size: Size, block: Measure, sashes: Sashes | null): TracedSize {
  return {
    width: withSashes(times(count(size.across, 'blocks across'), given(block.width, 'finished')), size.across, sashes),
    height: withSashes(times(count(size.down, 'blocks down'), given(block.height, 'finished')), size.down, sashes),
  };
}

function withSashes(blocks: Traced, many: number, sashes: Sashes | null): Traced {
  const between = sashes === null ? 0 : many + (sashes.outside ? 1 : -1);
  if (sashes === null || between === 0) return named(blocks, 'of blocks');
  const all = times(count(between, between === 1 ? 'sashing' : 'sashings'), sashes.width);
  return named(plus(named(blocks, 'of blocks'), named(all, 'of sashing')), 'of blocks and sashing');
}
