import type { Box } from '../drawing/turn.ts';
import type { Inches } from '../measure/inches.ts';
import { count, given, named, plus, type Traced, type TracedSize, times } from '../measure/traced.ts';
import { shiftAt } from '../pattern/places.ts';
import type { House, Size, StripsSetting } from '../pattern/schema.ts';
import type { Centre } from './centre.ts';
import { cutTo } from './cut.ts';
import type { BlockLeaf, Measure, PatchLeaf, QuiltPart } from './quilt.ts';
import { type Sashes, sashesOf, sashPart } from './sashing.ts';
import { rowOf } from './straight.ts';

/**
 * Strips of blocks side by side, in rows or in columns: each may begin by part of a block further on than the one before it, and
 * sashing may run between them. What a shifted strip lacks at its ends is filled by plain pieces, or by blocks that are cut off.
 * @param blocks strip by strip, each from its beginning
 */
export function stripsCentre(
  setting: StripsSetting,
  size: Size,
  block: Measure,
  blocks: readonly BlockLeaf[],
  house: House,
): Centre {
  const rows = setting.run === 'rows';
  const sashes = sashesOf(setting, size);
  const lay: Lay = {
    setting,
    rows,
    house,
    sashes,
    long: rows ? block.width : block.height,
    wide: rows ? block.height : block.width,
    places: rows ? size.across : size.down,
    strips: rows ? size.down : size.across,
  };
  const whole = stripsSize(lay);
  const length = rows ? whole.width : whole.height;
  const parts: QuiltPart[] = [];
  let at = 0;
  const sash = () => {
    if (sashes === null) return;
    parts.push(
      sashPart(
        sashes,
        rows ? 'across' : 'down',
        boxOf(lay, 0, length.value, at, sashes.width.value),
        length,
        'whole',
        house,
      ),
    );
    at += sashes.width.value;
  };
  for (let strip = 0; strip < lay.strips; strip += 1) {
    if (strip > 0 || sashes?.outside) sash();
    const own = blocks.filter(({ column, row }) => (rows ? row : column) === strip);
    parts.push(stripOf(lay, own, strip, at));
    at += lay.wide;
  }
  if (sashes?.outside) sash();
  const box = boxOf(lay, 0, length.value, 0, at);
  return { part: rowOf(rows ? 'down' : 'across', parts, box), box, size: whole };
}

interface Lay {
  readonly setting: StripsSetting;
  readonly rows: boolean;
  readonly house: House;
  readonly sashes: Sashes | null;
  /** A block along its strip and across it, and how many fill a strip; how many strips. */
  readonly long: Inches;
  readonly wide: Inches;
  readonly places: number;
  readonly strips: number;
}

/** A box so far along the strips and across them. */
function boxOf({ rows }: Pick<Lay, 'rows'>, from: Inches, long: Inches, at: Inches, wide: Inches): Box {
  return rows ? { x: from, y: at, width: long, height: wide } : { x: at, y: from, width: wide, height: long };
}

function stripOf(lay: Lay, blocks: readonly BlockLeaf[], strip: number, at: Inches): QuiltPart {
  const { setting, long, wide, places, rows } = lay;
  const shift = shiftAt(setting, strip);
  const parts: QuiltPart[] = [];
  let from = 0;
  const add = (part: (box: Box) => QuiltPart, reach: Inches) => {
    parts.push(part(boxOf(lay, from, reach, at, wide)));
    from += reach;
  };
  blocks.forEach((leaf, i) => {
    const cutOff = shift > 0 && setting.fill === undefined;
    if (i === 0 && shift > 0 && setting.fill !== undefined) add((box) => filler(lay, shift, box), shift * long);
    if (cutOff && i === 0) add((box) => ({ ...leaf, box, part: cutPart(rows, 1 - shift, 1) }), shift * long);
    else if (cutOff && i === blocks.length - 1)
      add((box) => ({ ...leaf, box, part: cutPart(rows, 0, 1 - shift) }), (1 - shift) * long);
    else add((box) => ({ ...leaf, box }), long);
  });
  if (shift > 0 && setting.fill !== undefined) {
    // A strip one block long has no whole block at all once it is shifted.
    if (blocks.length === 0) add((box) => filler(lay, shift, box), shift * long);
    add((box) => filler(lay, 1 - shift, box), (1 - shift) * long);
  }
  return rowOf(rows ? 'across' : 'down', parts, boxOf(lay, 0, places * long, at, wide));
}

function cutPart(rows: boolean, from: number, to: number): NonNullable<BlockLeaf['part']> {
  return { along: rows ? 'across' : 'down', from, to };
}

/** A plain piece as long as so much of a block. */
function filler({ setting, long, wide, rows, house }: Lay, share: number, box: Box): PatchLeaf {
  const part = cutTo(times(given(share, 'of a block', 'count'), given(long, 'finished')), house);
  const whole = cutTo(given(wide, 'block finished'), house);
  return {
    kind: 'patch',
    use: 'filler',
    name: `filler ${share.toFixed(6)}`,
    words: 'Plain pieces at the ends',
    fabric: setting.fill ?? '',
    box,
    cut: rows ? { width: part, height: whole } : { width: whole, height: part },
  };
}

function stripsSize({ rows, long, wide, places, strips, sashes }: Lay): TracedSize {
  const along = named(times(count(places, 'blocks long'), given(long, 'finished')), 'of blocks');
  const across = withSashes(times(count(strips, 'strips'), given(wide, 'finished')), strips, sashes);
  return rows ? { width: along, height: across } : { width: across, height: along };
}

function withSashes(blocks: Traced, strips: number, sashes: Sashes | null): Traced {
  const between = sashes === null ? 0 : strips + (sashes.outside ? 1 : -1);
  if (sashes === null || between === 0) return named(blocks, 'of blocks');
  const all = times(count(between, between === 1 ? 'sashing' : 'sashings'), sashes.width);
  return named(plus(named(blocks, 'of blocks'), named(all, 'of sashing')), 'of blocks and sashing');
}
