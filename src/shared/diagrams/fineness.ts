import type { Area, Figure } from './figure.ts';

/** How much finer than usual a figure is drawn because its patches are small; one for the whole figure, so that they compare. */
export interface Fineness {
  /** How close hatches lie, 1 to a half; null when no hatch could be told from another. */
  readonly hatches: number | null;
  /** How heavy the outlines of cloth are, 1 to about a half: a small quilt would else be all outlines. */
  readonly edges: number;
}

/** A patch narrower than this many points would hardly show its hatch: hatches lie closer then, down to half. */
const ROOMY = 22;
const CLOSEST = 0.5;

/** Below this many points no hatch is drawn. */
const TINY = 6;

/** Below this many points outlines get finer. */
const SMALL = 10;
const FINEST = 0.45;

/** How fine a figure must be drawn at this scale. */
export function finenessOf(figure: Figure, pointsPerInch: number): Fineness {
  const widths = figure.marks.flatMap((mark) => (mark.kind === 'area' ? [widthOf(mark)] : []));
  if (widths.length === 0) return { hatches: 1, edges: 1 };
  const usual = (widths.sort((a, b) => a - b)[Math.floor((widths.length - 1) / 2)] ?? 0) * pointsPerInch;
  return {
    hatches: usual < TINY ? null : Math.min(1, Math.max(CLOSEST, usual / ROOMY)),
    edges: Math.min(1, Math.max(FINEST, usual / SMALL)),
  };
}

/** The narrower side of an area's first patch, inches. */
function widthOf(area: Area): number {
  const [first = []] = area.outlines;
  const xs = first.map(({ x }) => x);
  const ys = first.map(({ y }) => y);
  return Math.min(Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys));
}
