import { longer } from '../measure/inches.ts';
import { count, given, named, plus, rounded, type Traced, type TracedSize, times } from '../measure/traced.ts';
import type { Pattern } from '../pattern/schema.ts';
import type { Quilt } from '../quilt/quilt.ts';
import type { BackingNeed, BattingNeed } from './cloth.ts';
import { widthsFor } from './join.ts';
import { bought, wholeLength } from './yards.ts';

/** Usable width of wide backing cloth, inches, where the pattern says no other (common practice: it is sold as 108 wide). */
export const WIDE = 108;

/** One way to make the backing, and whether it is the pattern's. */
export interface BackingWay extends BackingNeed {
  readonly chosen: boolean;
}

/** The top as it is laid on the batting, and as far beyond each side as the pattern says, in whole inches or centimetres, up. */
function beyond(quilt: Quilt, { backing, house }: Pattern): TracedSize {
  const extra = times(count(2, ''), given(backing.beyond, 'beyond each side'));
  const side = (top: Traced) => rounded(plus(named(top, 'top'), extra), wholeLength(house), 'up');
  return { width: side(quilt.unfinished.width), height: side(quilt.unfinished.height) };
}

/**
 * Backing: widths of cloth sewn side by side, of the cloth and in the direction that the pattern chooses; where it does not,
 * of the usual cloth and the way that takes less; of equal ways the one with fewer panels, then panels running
 * down. No squaring up is added: what reaches beyond the quilt is there to be squared.
 */
export function backingNeed(quilt: Quilt, pattern: Pattern): BackingNeed {
  const { run, wide } = pattern.backing;
  const runs = run === undefined ? (['down', 'across'] as const) : [run];
  const [least] = runs.map((way) => made(quilt, pattern, way, wide ?? null)).sort(byCloth);
  return least as BackingNeed;
}

/**
 * Every way to make the backing, least cloth of each kind first: panels of the usual cloth running down and across, and the
 * same of wide backing cloth.
 */
export function backingWays(quilt: Quilt, pattern: Pattern): readonly BackingWay[] {
  const own = backingNeed(quilt, pattern);
  const wide = pattern.backing.wide ?? WIDE;
  return [null, wide].flatMap((width) =>
    (['down', 'across'] as const)
      .map((run) => made(quilt, pattern, run, width))
      .sort(byCloth)
      .map((way) => ({ ...way, chosen: way.cloth === own.cloth && way.run === own.run })),
  );
}

function byCloth(a: BackingNeed, b: BackingNeed): number {
  const cloth = ({ panels, panelLength }: BackingNeed) => panels.value * panelLength.value;
  return cloth(a) - cloth(b) || a.panels.value - b.panels.value;
}

/** @param wide usable width of wide backing cloth, inches; null for the usual cloth */
function made(quilt: Quilt, pattern: Pattern, run: BackingNeed['run'], wide: number | null): BackingNeed {
  const { width, height } = beyond(quilt, pattern);
  const [reach, length] = run === 'down' ? [width, height] : [height, width];
  const usable = wide ?? pattern.house.usableWidth;
  const one = !longer(reach.value, usable);
  const panels = one ? count(1, 'panel') : widthsFor(reach, { ...pattern.house, usableWidth: usable });
  const cloth = one ? named(length, 'long') : times(named(panels, 'panels'), named(length, 'long'));
  return {
    fabric: pattern.backing.fabric,
    ...{ width, height, run, panels },
    cloth: wide === null ? 'usual' : 'wide',
    usableWidth: given(usable, wide === null ? 'usable width' : 'usable width of wide cloth'),
    seams: one ? 'none' : run,
    panelLength: length,
    yards: bought(cloth, pattern.house),
  };
}

/** Batting: as large as the backing, in one piece. */
export function battingNeed(quilt: Quilt, pattern: Pattern): BattingNeed {
  return beyond(quilt, pattern);
}
