import { outlinePoints } from '../drawing/curve.ts';
import type { Drawing } from '../drawing/drawing.ts';
import { turnPoint, turnSize } from '../drawing/turn.ts';
import type { Finding } from '../measure/finding.ts';
import { type Inches, longer } from '../measure/inches.ts';
import type { Size } from '../pattern/schema.ts';
import type { BlockLeaf, Quilt } from '../quilt/quilt.ts';

/**
 * Blocks cut off at the edge of the quilt that keep less of a patch than a seam allowance: its seam inside would lie in the
 * seam at the edge. What a cut takes away besides is meant.
 * @param drawings of every block, by letter; @param say how lengths are said
 */
export function cutOffFindings(
  quilt: Quilt,
  drawings: ReadonlyMap<string, Drawing>,
  seam: Inches,
  size: Size,
  say: (length: Inches) => string,
): readonly Finding[] {
  const told = new Map<string, Finding>();
  for (const leaf of quilt.blocks) {
    const drawing = drawings.get(leaf.block);
    if (leaf.part === undefined || drawing === undefined) continue;
    const left = narrowestKept(leaf, drawing, (quilt.measures[leaf.block] ?? quilt.block).width / drawing.width);
    if (left === null || !longer(seam, left)) continue;
    const what = `Cut off at the edge, block ${leaf.block} keeps only ${say(left)} of a patch in ${size.name}: less than a seam.`;
    const where = { path: 'setting.shift', size: size.name, on: 'quilt', box: leaf.box };
    const mend = 'Shift the strips by another part of a block, or fill their ends with plain pieces.';
    if (!told.has(leaf.block)) told.set(leaf.block, { level: 'look', what, where, mend });
  }
  return [...told.values()];
}

/** How far the patch that reaches least into what is kept does so, inches; null when the cut goes through none. */
function narrowestKept({ part, turn }: BlockLeaf, drawing: Drawing, grid: Inches): Inches | null {
  if (part === undefined) return null;
  const { width, height } = turnSize(drawing.width, drawing.height, turn);
  const [axis, reach] = part.along === 'across' ? (['x', width] as const) : (['y', height] as const);
  const kept = drawing.patches.flatMap((patch) => {
    const places = outlinePoints(drawing, patch).map(
      (point) => turnPoint(point, turn, drawing.width, drawing.height)[axis],
    );
    const [least, most] = [Math.min(...places), Math.max(...places)];
    return [
      ...(part.from > 0 ? across(least, most, part.from * reach) : []),
      ...(part.to < 1 ? across(-most, -least, -part.to * reach) : []),
    ];
  });
  return kept.length === 0 ? null : Math.min(...kept) * grid;
}

/** What lies beyond a cut of something that reaches from the one place to the other, if the cut goes through it or along it. */
function across(least: number, most: number, cut: number): readonly number[] {
  return least <= cut + 1e-9 && most > cut + 1e-9 ? [most - cut] : [];
}
