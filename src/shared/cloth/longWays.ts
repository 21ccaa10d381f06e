import { longer } from '../measure/inches.ts';
import { count, given, named, over, rounded, type Traced, times } from '../measure/traced.ts';
import type { House } from '../pattern/schema.ts';
import type { PieceLine } from './cloth.ts';
import { widthsFor } from './join.ts';
import { yardsFor } from './yards.ts';

/** Long strips cut one way of the cloth. */
export interface LongWay {
  /** Across the width, joined where they are longer; or along the length, in one piece. */
  readonly cut: 'across' | 'along';
  /** Inches along the cloth that these strips alone take. */
  readonly length: Traced;
  /** Joins in all. */
  readonly joins: number;
  readonly yards: Traced;
}

/**
 * Long strips of one line both ways, to be compared. Across the cloth each takes its own width of length, and what is longer than the
 * cloth is joined, each join losing two seams; along the cloth none is joined, as many lie side by side as the width
 * holds, and the length is theirs.
 */
export function longWays(line: PieceLine, house: House): readonly LongWay[] {
  const { width, height, count: many } = line;
  const joined = longer(width.value, house.usableWidth);
  const reach = times(many, named(width, 'long'));
  const strips = joined ? widthsFor(reach, house) : stripsFor(line, house);
  const across = times(named(strips, 'strips'), named(height, 'wide'));
  const sideBySide = count(Math.max(1, Math.floor(house.usableWidth / height.value + 1e-9)), 'side by side');
  const rows = rounded(over(many, sideBySide), 1, 'up');
  const along = rows.value === 1 ? width : times(named(rows, 'lengths'), named(width, 'long'));
  return [
    {
      cut: 'across',
      length: across,
      joins: joined ? strips.value - 1 : 0,
      yards: yardsFor(named(across, 'of strips'), house),
    },
    { cut: 'along', length: along, joins: 0, yards: yardsFor(named(along, 'of length'), house) },
  ];
}

/** Strips that are no longer than the cloth is wide: as many to a width as it holds. */
function stripsFor({ width, count: many }: PieceLine, house: House): Traced {
  const each = Math.max(1, Math.floor(house.usableWidth / width.value + 1e-9));
  return each === 1 ? many : rounded(over(many, given(each, 'from a width', 'count')), 1, 'up');
}
