import { accept, type Finding, type Maybe } from '../measure/finding.ts';
import { sizeText } from '../measure/fraction.ts';
import { same } from '../measure/inches.ts';
import { readMotif, rowLengths } from '../pattern/motif.ts';
import type { Pattern, Size } from '../pattern/schema.ts';
import type { Log, Piecing } from '../piecing/piecing.ts';
import { borderWidth, type Growing, leftOut, plainBorder } from './borders.ts';
import type { Centre } from './centre.ts';
import { twoSeams } from './cut.ts';
import { gather, movedTo } from './gather.ts';
import { onPointCentre } from './onPoint/onPoint.ts';
import { placeBlocks } from './placeBlocks.ts';
import type { BlockLeaf, Measure, Quilt, QuiltLeaf, QuiltPart } from './quilt.ts';
import { straightCentre } from './straight.ts';

/** The most blocks one size may have. */
export const MOST_BLOCKS = 2500;

/**
 * One size of a pattern, laid out in finished inches: the blocks as they are set, then border by border.
 * @param pieced the piecing of each block, by letter
 * @param path where the size stands in the document
 * @returns the quilt, or why this size cannot be laid out
 */
export function layOut(pattern: Pattern, size: Size, pieced: ReadonlyMap<string, Piecing>, path: string): Maybe<Quilt> {
  const total = rowLengths(pattern.setting, size).reduce((sum, many) => sum + many, 0);
  if (total > MOST_BLOCKS) return tooMany(total, size, path);
  const block = blockSize(pattern, size, pieced);
  if (block === null) return { ok: false, findings: [] };
  const placed = placeBlocks(pattern, size, pieced, block);
  if (!placed.ok) return placed;
  const wrong = squareFinding(pattern, size, block);
  if (wrong !== null) return { ok: false, findings: [wrong] };
  return accept(bordered(pattern, size, block, centreOf(pattern, size, block, placed.value)));
}

function centreOf(
  { setting, house }: Pattern,
  size: Size,
  block: Measure,
  rows: readonly (readonly BlockLeaf[])[],
): Centre {
  return setting.kind === 'on-point'
    ? onPointCentre(setting, size, block, rows, house)
    : straightCentre(setting, size, block, rows, house);
}

/** On point only square blocks fit together. */
function squareFinding({ setting }: Pattern, size: Size, { width, height }: Measure): Finding | null {
  if (setting.kind !== 'on-point' || same(width, height)) return null;
  const what = `On point, blocks must be square; these are ${sizeText(width, height)} in ${size.name}.`;
  const where = { path: 'setting.kind', size: size.name, on: 'quilt' };
  return { level: 'stops', what, where, mend: 'Use square blocks, or set them straight.' };
}

function tooMany(total: number, size: Size, path: string): Maybe<never> {
  const what = `${size.name} would have ${total.toLocaleString('en')} blocks; the most is ${MOST_BLOCKS.toLocaleString('en')}.`;
  const where = { path, size: size.name, on: 'quilt' };
  return { ok: false, findings: [{ level: 'stops', what, where, mend: 'Use fewer, larger blocks.' }] };
}

/** The finished block of a size: as wide as the size says, and of the shape of the motif's first block. */
function blockSize(pattern: Pattern, size: Size, pieced: ReadonlyMap<string, Piecing>): Measure | null {
  const first = readMotif(pattern.setting)[0]?.[0];
  const letter = first === undefined || typeof first === 'string' ? undefined : first.name;
  const piecing = (letter === undefined ? undefined : pieced.get(letter)) ?? pieced.values().next().value;
  if (piecing === undefined) return null;
  const { width, height } = piecing.drawing;
  return { width: size.block, height: (size.block * height) / width };
}

function bordered(pattern: Pattern, size: Size, block: Measure, centre: Centre): Quilt {
  let top: Growing = { box: centre.box, size: centre.size };
  const logs: Log<QuiltLeaf>[] = [];
  for (const border of pattern.borders) {
    const width = borderWidth(border, size);
    if (leftOut(width)) continue;
    const sewn = plainBorder(top, border, width, pattern.house);
    logs.push(...sewn.logs);
    top = sewn.top;
  }
  const root: QuiltPart = logs.length === 0 ? centre.part : { kind: 'rounds', core: centre.part, logs, box: top.box };
  const whole = { root: movedTo(root, -top.box.x, -top.box.y), centre: centre.size, size: top.size };
  return gather(size, block, whole, twoSeams(pattern.house));
}
