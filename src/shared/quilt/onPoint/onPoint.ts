import type { Box, Point } from '../../drawing/turn.ts';
import type { Inches } from '../../measure/inches.ts';
import { given } from '../../measure/traced.ts';
import type { House, OnPointSetting, Size } from '../../pattern/schema.ts';
import type { Part } from '../../piecing/piecing.ts';
import type { Centre } from '../centre.ts';
import { cutTo } from '../cut.ts';
import type { BlockLeaf, DiagonalLeaf, DiagonalRow, Measure, OnPointLeaf, PatchLeaf } from '../quilt.ts';
import { cornerstone, type Sashes, sashesOf, sashPart } from '../sashing.ts';
import { type Grounds, groundsOf } from './edges.ts';
import { type Band, type Ends, endsOf } from './ends.ts';
import { boxOf } from './frame.ts';
import { slantedLength } from './triangleCuts.ts';

/**
 * Blocks on point: diagonal rows with a triangle at each end, and a triangle in each corner. Rows follow one another from the
 * upper left corner of the quilt to the lower right. Sashing, when there is some, runs round every block.
 * @param blocks rows of the quilt from the top: those that touch the edges and those between in turn
 */
export function onPointCentre(
  setting: OnPointSetting,
  size: Size,
  block: Measure,
  blocks: readonly BlockLeaf[],
  house: House,
): Centre {
  const sashes = sashesOf(setting, size);
  const grounds = groundsOf(setting, size, block.width, sashes, house);
  const work: Work = { grounds, sashes, house, ends: endsOf(setting, grounds, sashes, house) };
  const diagonals = diagonalsOf(blocks);
  const rows = diagonals.flatMap((row, i): DiagonalRow[] => [
    ...(sashes === null ? [] : [sashRow(work, sashes, i)]),
    blockRow(work, row, i + 1),
  ]);
  const last = sashes === null ? [] : [sashRow(work, sashes, diagonals.length)];
  const box = { x: 0, y: 0, ...grounds.whole };
  const part: OnPointLeaf = {
    kind: 'on-point',
    box,
    origin: { x: grounds.beyond.x, y: grounds.beyond.y },
    rows: [...rows, ...last],
    corners: work.ends.corners(),
  };
  return { part, box, size: grounds.size };
}

const WITHIN = 'Sashing within diagonal rows';
const BETWEEN = 'Sashing between diagonal rows';

interface Work {
  readonly grounds: Grounds;
  readonly sashes: Sashes | null;
  readonly house: House;
  readonly ends: Ends;
}

/** The blocks of each diagonal row from the lower left to the upper right. */
function diagonalsOf(blocks: readonly BlockLeaf[]): readonly (readonly BlockLeaf[])[] {
  const rows: BlockLeaf[][] = [];
  for (const leaf of blocks) {
    // In half diagonals of a block: the middle of a block that touches the edges lies on odd numbers, of one between on even ones.
    const index = (middleColumn(leaf) + leaf.row + 1) / 2 - 1;
    rows[index] = [...(rows[index] ?? []), leaf];
  }
  return rows.map((row) => row.sort((a, b) => place(a) - place(b)));
}

function middleColumn({ column, row }: BlockLeaf): number {
  return 2 * column + 1 + (row % 2);
}

/** How many blocks to the right of the upper left corner's diagonal a block stands. */
function place(leaf: BlockLeaf): number {
  return (middleColumn(leaf) - leaf.row - 1) / 2;
}

function blockRow(work: Work, row: readonly BlockLeaf[], number: number): DiagonalRow {
  const { grounds, ends } = work;
  const { block, module, across, down } = grounds;
  const band: Band = { top: number * module - block / 2, bottom: number * module + block / 2 };
  const parts: Part<DiagonalLeaf>[] = [];
  row.forEach((leaf, i) => {
    const x = place(leaf) * module - block / 2;
    if (i === 0) parts.push(...uprightSash(work, x - grounds.sash, band));
    parts.push({ ...leaf, box: { x, y: band.top, width: block, height: block } });
    parts.push(...uprightSash(work, x + block, band));
  });
  const [first, last] = [row[0] as BlockLeaf, row.at(-1) as BlockLeaf];
  const left = place(first) * module - block / 2 - grounds.sash;
  const right = place(last) * module + block / 2 + grounds.sash;
  if (number !== down) parts.unshift(ends.side(band, left, 'left'));
  if (number !== across) parts.push(ends.side(band, right, 'right'));
  return { kind: 'blocks', parts, box: boxAround(parts) };
}

function uprightSash({ grounds, sashes, house }: Work, x: Inches, { top }: Band): readonly Part<DiagonalLeaf>[] {
  if (sashes === null) return [];
  const box = { x, y: top, width: grounds.sash, height: grounds.block };
  return [sashPart(sashes, 'down', box, given(grounds.block, 'block finished'), 'block', house, WITHIN)];
}

/** The sashing between two diagonal rows, or beyond the first and the last. @param line 0 above the first row */
function sashRow(work: Work, sashes: Sashes, line: number): DiagonalRow {
  const { grounds, ends, house } = work;
  const { module, sash, across, down } = grounds;
  const middle = (line + 0.5) * module;
  const band = { top: middle - sash / 2, bottom: middle + sash / 2 };
  const left = (line < down ? -(line + 0.5) : line + 0.5 - 2 * down) * module;
  const right = (line < across ? line + 0.5 : 2 * across - line - 0.5) * module;
  if (sashes.cornerstones === null) return throughRow(work, sashes, band);
  const parts: Part<DiagonalLeaf>[] = [ends.cornerstone(band, left + sash / 2, 'left')];
  const segments = Math.round((right - left) / module);
  for (let i = 0; i < segments; i += 1) {
    const x = left + i * module + sash / 2;
    if (i > 0) parts.push(cornerstone(sashes.cornerstones, sashes, x - sash, band.top, house));
    const box = { x, y: band.top, width: grounds.block, height: sash };
    parts.push(sashPart(sashes, 'across', box, given(grounds.block, 'block finished'), 'block', house, BETWEEN));
  }
  parts.push(ends.cornerstone(band, right - sash / 2, 'right'));
  return { kind: 'sashing', parts, box: boxAround(parts) };
}

/** Sashing that runs through: strips of one length, sewn side by side, whose ends the edge of the quilt cuts off. */
function throughRow({ ends, house }: Work, sashes: Sashes, band: Band): DiagonalRow {
  const whole = boxOf(ends.inside(band));
  const kind = `sashing diagonal ${Math.round(whole.width * 1e4)}`;
  const length = slantedLength(whole.width, house);
  let top = band.top;
  const strips = sashes.strips.map(({ fabric, width }, strip): PatchLeaf => {
    const outline: readonly Point[] = ends.inside({ top, bottom: top + width.value });
    top += width.value;
    return {
      kind: 'patch',
      use: 'sashing',
      name: `${kind} ${strip}`,
      words: BETWEEN,
      fabric,
      box: boxOf(outline),
      outline,
      cut: { width: length, height: cutTo(width, house) },
      sash: { run: 'across', reach: 'whole', strip, width: width.value, kind },
    };
  });
  const [only] = strips;
  const part: Part<DiagonalLeaf> =
    strips.length === 1 && only !== undefined
      ? only
      : { kind: 'row', along: 'down', parts: strips, box: whole, name: 'sashing' };
  return { kind: 'sashing', parts: [part], box: whole };
}

function boxAround(parts: readonly Part<DiagonalLeaf>[]): Box {
  return boxOf(
    parts.flatMap(({ box }) => [
      { x: box.x, y: box.y },
      { x: box.x + box.width, y: box.y + box.height },
    ]),
  );
}
