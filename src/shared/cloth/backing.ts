import { longer } from '../measure/inches.ts';
import { CENTIMETRE, isMetric } from '../measure/metric.ts';
import { count, given, named, plus, rounded, type Traced, type TracedSize, times } from '../measure/traced.ts';
import type { Pattern } from '../pattern/schema.ts';
import type { Quilt } from '../quilt/quilt.ts';
import type { BackingNeed, BattingNeed } from './cloth.ts';
import { widthsFor } from './join.ts';
import { bought } from './yards.ts';

/** Backing and batting are asked for in whole inches, or whole centimetres. */
function wholeOf({ house }: Pattern): number {
  return isMetric(house.step) ? CENTIMETRE : 1;
}

/** The top as it is laid on the batting, and as far beyond each side as the pattern says, in whole inches or centimetres, up. */
function beyond(quilt: Quilt, pattern: Pattern): TracedSize {
  const { backing } = pattern;
  const extra = times(count(2, ''), given(backing.beyond, 'beyond each side'));
  const side = (top: Traced) => rounded(plus(named(top, 'top'), extra), wholeOf(pattern), 'up');
  return { width: side(quilt.unfinished.width), height: side(quilt.unfinished.height) };
}

/**
 * Backing: widths of cloth sewn side by side. Panels running down the quilt and panels running across it are both worked out
 * and the way that takes less cloth is chosen; of equal ways the one with fewer panels, then panels running down. No
 * squaring up is added: what reaches beyond the quilt is there to be squared.
 */
export function backingNeed(quilt: Quilt, pattern: Pattern): BackingNeed {
  const { width, height } = beyond(quilt, pattern);
  const down = panels(width, height, 'down', pattern.house.usableWidth, pattern);
  const across = panels(height, width, 'across', pattern.house.usableWidth, pattern);
  const more = down.cloth.value - across.cloth.value || down.panels.value - across.panels.value;
  const { seams, panels: many, panelLength, cloth } = more > 0 ? across : down;
  const yards = bought(cloth, pattern.house);
  return { fabric: pattern.backing.fabric, width, height, panels: many, seams, panelLength, yards };
}

/** Usable width of wide backing cloth, inches (common practice: it is sold as 108 wide). */
export const WIDE = 108;

/** One way to make the backing. */
export interface BackingWay {
  /** Cloth as for the top, or wide backing cloth. */
  readonly cloth: 'usual' | 'wide';
  /** Which way its panels run on the quilt. */
  readonly run: 'down' | 'across';
  readonly panels: Traced;
  readonly seams: BackingNeed['seams'];
  readonly panelLength: Traced;
  readonly yards: Traced;
}

/**
 * Every way to make the backing, least cloth of each kind first: panels of the usual cloth running down and across, and the
 * same of wide backing cloth.
 * @param wide usable width of wide backing cloth, inches
 */
export function backingWays(quilt: Quilt, pattern: Pattern, wide = WIDE): readonly BackingWay[] {
  const { width, height } = beyond(quilt, pattern);
  const ways = (['usual', 'wide'] as const).flatMap((cloth) => {
    const usable = cloth === 'wide' ? wide : pattern.house.usableWidth;
    return (['down', 'across'] as const).map((run): BackingWay => {
      const made =
        run === 'down' ? panels(width, height, run, usable, pattern) : panels(height, width, run, usable, pattern);
      const yards = bought(made.cloth, pattern.house);
      return { cloth, run, panels: made.panels, seams: made.seams, panelLength: made.panelLength, yards };
    });
  });
  const rank = (way: BackingWay) => (way.cloth === 'usual' ? 0 : 1);
  return ways.sort((a, b) => rank(a) - rank(b) || a.yards.value - b.yards.value || a.panels.value - b.panels.value);
}

interface Panels {
  readonly panels: Traced;
  readonly seams: BackingNeed['seams'];
  readonly panelLength: Traced;
  readonly cloth: Traced;
}

function panels(
  reach: Traced,
  length: Traced,
  seams: 'across' | 'down',
  usableWidth: number,
  { house }: Pattern,
): Panels {
  const one = !longer(reach.value, usableWidth);
  const many = one ? count(1, 'panel') : widthsFor(reach, { ...house, usableWidth });
  return {
    panels: many,
    seams: one ? 'none' : seams,
    panelLength: length,
    cloth: one ? length : times(named(many, 'panels'), named(length, 'long')),
  };
}

/** Batting: as large as the backing, in one piece. */
export function battingNeed(quilt: Quilt, pattern: Pattern): BattingNeed {
  return beyond(quilt, pattern);
}
