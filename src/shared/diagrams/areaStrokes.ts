import type { Area, Figure, Hatch, Ink } from './figure.ts';
import { fillingOf, type Tint } from './fill.ts';
import { hatchSegments } from './hatch.ts';
import { pathOf, pathOfAll, short } from './path.ts';
import type { Drawn, DrawnLine, Settings, Stroke } from './stroke.ts';
import { DOT, hatchWeight, LINES } from './weights.ts';

/** A patch narrower than this many points would hardly show its hatch: hatches lie closer then, down to half. */
const ROOMY = 22;
const CLOSEST = 0.5;

/** Below this many points no hatch can be told from another. */
const TINY = 6;

/**
 * How close the hatches of a figure lie, 1 to a half, because its patches are small; one figure for all, so that they
 * compare. Null when patches are too small for any.
 */
export function hatchScale(figure: Figure, pointsPerInch: number): number | null {
  const widths = figure.marks.flatMap((mark) =>
    mark.kind === 'area' && mark.fabric !== null ? [typicalWidth(mark)] : [],
  );
  if (widths.length === 0) return 1;
  const usual = (widths.sort((a, b) => a - b)[Math.floor((widths.length - 1) / 2)] ?? 0) * pointsPerInch;
  return usual < TINY ? null : Math.min(1, Math.max(CLOSEST, usual / ROOMY));
}

/** The narrower side of an area's first patch, inches. */
function typicalWidth(area: Area): number {
  const [first = []] = area.outlines;
  const xs = first.map(({ x }) => x);
  const ys = first.map(({ y }) => y);
  return Math.min(Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys));
}

export interface AreaSettings extends Settings {
  readonly inkOf: ReadonlyMap<string, Ink>;
  /** Null leaves hatches out. */
  readonly hatchScale: number | null;
}

/** An area's fill and edge, and its hatch over them. */
export function areaStrokes(area: Area, settings: AreaSettings): readonly Stroke[] {
  const { flat, hatch } = fillingOf(area, settings.inkOf, settings.manner, settings.hatchScale === null);
  const path = pathOfAll(area.outlines, settings.pointsPerInch);
  const filled: Drawn = {
    kind: 'path',
    path,
    fill: flat,
    line: edgeOf(area),
    ...(area.of === undefined ? {} : { of: area.of }),
  };
  if (hatch === null || settings.hatchScale === null) return [filled];
  return [filled, hatchStroke(area, hatch.pattern, hatch.tint, settings.hatchScale, settings)];
}

function edgeOf(area: Area): DrawnLine | null {
  if (area.edge === 'none') return null;
  const { paint, weight, dash, round } = LINES[area.edge];
  return { tint: { of: paint, wash: area.tone === 'pale' ? 0.5 : 0 }, weight, dash, round };
}

function hatchStroke(area: Area, pattern: Hatch, tint: Tint, scale: number, settings: Settings): Drawn {
  const { pointsPerInch, manner } = settings;
  const segments = hatchSegments(area.outlines, { ...pattern, gap: pattern.gap * scale }, pointsPerInch);
  const dots = pattern.kind === 'dots';
  const path = segments.map(({ from, to }) =>
    dots ? dotPath(from.x * pointsPerInch, from.y * pointsPerInch) : pathOf([from, to], pointsPerInch, false),
  );
  const weight = hatchWeight(pattern, manner !== 'plain') * scale;
  return { kind: 'path', path: path.join(''), fill: null, line: { tint, weight, dash: null, round: dots } };
}

function dotPath(x: number, y: number): string {
  return `M${short(x)} ${short(y)}H${short(x + DOT)}`;
}
