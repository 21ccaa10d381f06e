import { isDark } from './colour.ts';
import type { Area, Hatch, Ink } from './figure.ts';
import { fillingOf, type Tint } from './fill.ts';
import type { Fineness } from './fineness.ts';
import { hatchSegments } from './hatch.ts';
import { pathOf, pathOfAll, short } from './path.ts';
import type { Drawn, DrawnLine, Settings, Stroke } from './stroke.ts';
import { DOT, hatchWeight, LINES } from './weights.ts';

export interface AreaSettings extends Settings {
  readonly inkOf: ReadonlyMap<string, Ink>;
  readonly fineness: Fineness;
}

/** An area's fill and edge, and its hatch over them. */
export function areaStrokes(area: Area, settings: AreaSettings): readonly Stroke[] {
  const { hatches, edges } = settings.fineness;
  const { flat, hatch } = fillingOf(area, settings.inkOf, settings.manner, hatches === null);
  const path = pathOfAll(area.outlines, settings.pointsPerInch);
  const filled: Drawn = {
    kind: 'path',
    path,
    fill: flat,
    line: edgeOf(area, edges, settings),
    ...(area.of === undefined ? {} : { of: area.of }),
    ...(area.fabric !== null && area.tone === 'full' && settings.manner !== 'plain' ? { cloth: area.fabric } : {}),
  };
  if (hatch === null || hatches === null) return [filled];
  return [filled, hatchStroke(area, hatch.pattern, hatch.tint, hatches, settings)];
}

function edgeOf(area: Area, scale: number, { inkOf }: AreaSettings): DrawnLine | null {
  if (area.edge === 'none') return null;
  const { weight, dash, round } = LINES[area.edge];
  const ink = area.fabric === null ? undefined : inkOf.get(area.fabric);
  // Dark cloth needs an edge that shows on a dark sheet; on light or washed cloth that edge would be too faint.
  const dark = area.tone === 'full' && ink !== undefined && isDark(ink.colour);
  const paint = dark ? LINES[area.edge].paint : 'thread';
  return { tint: { of: paint, wash: area.tone === 'pale' ? 0.5 : 0 }, weight: weight * scale, dash, round };
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
