import type { Inches } from '../../measure/inches.ts';
import { longer, toRuler } from '../../measure/inches.ts';
import { count, given, named, plus, rounded, type Traced, type TracedSize, times } from '../../measure/traced.ts';
import type { House, OnPointSetting, Size } from '../../pattern/schema.ts';
import { TWO } from '../growing.ts';
import type { Measure } from '../quilt.ts';
import type { Sashes } from '../sashing.ts';
import type { HalfPlane } from './clip.ts';
import { diagonalOf } from './triangleCuts.ts';

/** The measures of a setting on point. */
export interface Grounds {
  readonly across: number;
  readonly down: number;
  /** Finished block; and from one block to the next, with sashing. */
  readonly block: Inches;
  readonly sash: Inches;
  readonly module: Inches;
  /** From the points of the blocks to the edge of the setting, inches: left and right, top and bottom. */
  readonly beyond: { readonly x: Inches; readonly y: Inches };
  /** The larger of the two. */
  readonly float: Inches;
  readonly whole: Measure;
  readonly size: TracedSize;
}

/** Works out how large a setting on point is and how far its triangles reach beyond the points of its blocks. */
export function groundsOf(
  setting: OnPointSetting,
  { across, down }: Size,
  block: Inches,
  sashes: Sashes | null,
  house: House,
): Grounds {
  const own = given(block, 'finished');
  const diagonal = diagonalOf(sashes === null ? own : named(plus(own, sashes.width), 'block and sashing'));
  const side = (many: number, word: string) => sideOf(setting, times(count(many, word), diagonal), house);
  const size = { width: side(across, 'blocks across'), height: side(down, 'blocks down') };
  const whole = { width: size.width.value, height: size.height.value };
  const beyond = {
    x: Math.max(0, (whole.width - across * diagonal.value) / 2),
    y: Math.max(0, (whole.height - down * diagonal.value) / 2),
  };
  const sash = sashes?.width.value ?? 0;
  const float = Math.max(beyond.x, beyond.y);
  return { across, down, block, sash, module: block + sash, beyond, float, whole, size };
}

function sideOf({ triangles }: OnPointSetting, points: Traced, house: House): Traced {
  const { fit = 'rounded-up', float = 0 } = triangles;
  const reach = fit === 'floating' && longer(float, 0) ? plus(points, times(TWO, given(float, 'floating'))) : points;
  const side =
    fit === 'exact' || toRuler(reach.value, house.step, 'up') === reach.value
      ? reach
      : rounded(reach, house.step, 'up');
  return named(side, 'of blocks on point');
}

/** The edges of the quilt as lines of the frame, whose 0, 0 is where the points of the blocks begin. */
export function edgePlanes({ beyond, whole }: Grounds): readonly HalfPlane[] {
  const share = Math.SQRT1_2;
  return [
    { a: -share, b: -share, c: beyond.x },
    { a: share, b: share, c: whole.width - beyond.x },
    { a: share, b: -share, c: beyond.y },
    { a: -share, b: share, c: whole.height - beyond.y },
  ];
}

/** The rectangle of the frame that holds every row; what lies outside are the four corners. */
export function rowsBox({ across, down, block, sash, module }: Grounds): {
  readonly left: Inches;
  readonly right: Inches;
  readonly top: Inches;
  readonly bottom: Inches;
} {
  const reach = block / 2 + sash;
  return {
    left: -(down - 1) * module - reach,
    right: (across - 1) * module + reach,
    top: module - reach,
    bottom: (across + down - 1) * module + reach,
  };
}
