import { accept, type Maybe } from '../measure/finding.ts';
import { readMotif } from '../pattern/motif.ts';
import type { Pattern, Size } from '../pattern/schema.ts';
import type { Log, Piecing } from '../piecing/piecing.ts';
import { borderWidth, type Growing, leftOut, plainBorder } from './borders.ts';
import { twoSeams } from './cut.ts';
import { gather, movedTo } from './gather.ts';
import { placeBlocks } from './placeBlocks.ts';
import type { Measure, Quilt, QuiltLeaf, QuiltPart } from './quilt.ts';
import { type Centre, straightCentre } from './straight.ts';

/** The most blocks one size may have. */
export const MOST_BLOCKS = 2500;

/**
 * One size of a pattern, laid out in finished inches: the blocks as they are set, then border by border.
 * @param pieced the piecing of each block, by letter
 * @param path where the size stands in the document
 * @returns the quilt, or why this size cannot be laid out
 */
export function layOut(pattern: Pattern, size: Size, pieced: ReadonlyMap<string, Piecing>, path: string): Maybe<Quilt> {
  const total = size.across * size.down;
  if (total > MOST_BLOCKS) return tooMany(total, size, path);
  const block = blockSize(pattern, size, pieced);
  if (block === null) return { ok: false, findings: [] };
  const placed = placeBlocks(pattern, size, pieced, block);
  if (!placed.ok) return placed;
  const centre = straightCentre(pattern.setting, size, block, placed.value, pattern.house);
  return accept(bordered(pattern, size, block, centre));
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
