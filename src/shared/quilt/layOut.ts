import { accept, type Finding, type Maybe } from '../measure/finding.ts';
import { same } from '../measure/inches.ts';
import { rulerOn } from '../measure/ruler.ts';
import { readMotif } from '../pattern/motif.ts';
import { blockCount } from '../pattern/places.ts';
import type { Border, Pattern, Size } from '../pattern/schema.ts';
import type { Log, Piecing } from '../piecing/piecing.ts';
import { type Bordered, type Growing, leftOut, plainBorder } from './borders.ts';
import type { Centre } from './centre.ts';
import { twoSeams } from './cut.ts';
import { gather, movedTo } from './gather.ts';
import { type BorderWidths, borderWidths } from './growing.ts';
import { onPointCentre } from './onPoint/onPoint.ts';
import { borderUnits, laidUnits, pieceBorder, tooLong } from './piecedBorder.ts';
import { placeBlocks } from './placeBlocks.ts';
import type { BlockLeaf, LaidBorder, Measure, Quilt, QuiltLeaf, QuiltPart } from './quilt.ts';
import { moduleCentre, spansOf } from './spans.ts';
import { straightCentre } from './straight.ts';
import { stripsCentre } from './strips.ts';

/** The most blocks one size may have. */
export const MOST_BLOCKS = 2500;

/**
 * One size of a pattern, laid out in finished inches: the blocks as they are set, then border by border.
 * @param pieced the piecing of each block, by letter
 * @param path where the size stands in the document
 * @returns the quilt, or why this size cannot be laid out
 */
export function layOut(pattern: Pattern, size: Size, pieced: ReadonlyMap<string, Piecing>, path: string): Maybe<Quilt> {
  const total = blockCount(pattern.setting, size);
  if (total > MOST_BLOCKS) return tooMany(total, size, path);
  const block = blockSize(pattern, size, pieced);
  if (block === null) return { ok: false, findings: [] };
  const placed = placeBlocks(pattern, size, pieced, block);
  if (!placed.ok) return placed;
  const wrong = squareFinding(pattern, size, block);
  if (wrong !== null) return { ok: false, findings: [wrong] };
  const centre = centreOf(pattern, size, block, placed.value);
  return centre.ok ? bordered(pattern, size, block, centre.value, pieced) : centre;
}

function centreOf(pattern: Pattern, size: Size, block: Measure, blocks: readonly BlockLeaf[]): Maybe<Centre> {
  const { setting, house } = pattern;
  const spans = spansOf(pattern);
  if (blocks.some((leaf) => spans.has(leaf.block))) return moduleCentre(pattern, size, block, blocks);
  switch (setting.kind) {
    case 'straight':
      return accept(straightCentre(setting, size, block, blocks, house));
    case 'on-point':
      return accept(onPointCentre(setting, size, block, blocks, house));
    case 'strips':
      return accept(stripsCentre(setting, size, block, blocks, house));
  }
}

/** On point only square blocks fit together. */
function squareFinding({ setting, house }: Pattern, size: Size, { width, height }: Measure): Finding | null {
  if (setting.kind !== 'on-point' || same(width, height)) return null;
  const what = `On point, blocks must be square; these are ${rulerOn(house.step).size(width, height)} in ${size.name}.`;
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

/** The setting with its borders on, from the inside out. */
function bordered(
  pattern: Pattern,
  size: Size,
  block: Measure,
  centre: Centre,
  pieced: ReadonlyMap<string, Piecing>,
): Maybe<Quilt> {
  let top: Growing = { box: centre.box, size: centre.size };
  const logs: Log<QuiltLeaf>[] = [];
  const borders: LaidBorder[] = [];
  for (const [i, border] of pattern.borders.entries()) {
    const widths = borderWidths(border, size);
    if (leftOut(widths)) continue;
    const sewn = oneBorder(top, border, widths, { pattern, size, pieced, path: `borders[${i}]` });
    if (!sewn.ok) return sewn;
    logs.push(...sewn.value.logs);
    borders.push(sewn.value.laid);
    top = sewn.value.top;
  }
  const root: QuiltPart = logs.length === 0 ? centre.part : { kind: 'rounds', core: centre.part, logs, box: top.box };
  const whole = { root: movedTo(root, -top.box.x, -top.box.y), centre: centre.size, size: top.size, borders };
  return gather(size, block, whole, twoSeams(pattern.house), rulerOn(pattern.house.step));
}

interface At {
  readonly pattern: Pattern;
  readonly size: Size;
  readonly pieced: ReadonlyMap<string, Piecing>;
  readonly path: string;
}

function oneBorder(
  top: Growing,
  border: Border,
  widths: BorderWidths,
  { pattern: { house }, size, pieced, path }: At,
): Maybe<Bordered & { readonly laid: LaidBorder }> {
  const inside = { width: top.size.width.value, height: top.size.height.value };
  if (border.pieced === undefined)
    return accept({ ...plainBorder(top, border, widths, house), laid: { border: border.id, inside } });
  const units = borderUnits(border, widths.sides, pieced, path);
  if (!units.ok) return units;
  const wrong = tooLong(top, border, units.value, size, path, rulerOn(house.step).length);
  if (wrong !== null) return { ok: false, findings: [wrong] };
  const laid = { border: border.id, inside, units: laidUnits(inside, widths.sides, units.value) };
  return accept({ ...pieceBorder(top, border, widths.sides, units.value, house), laid });
}
