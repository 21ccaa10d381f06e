import { type Inches, longer } from '../measure/inches.ts';
import type { BattingNeed } from './cloth.ts';

/** One size in which batting is sold. */
export interface Packaged {
  readonly width: Inches;
  readonly height: Inches;
}

/** Packaged batting, smallest first: 45×60, 72×90, 81×96, 90×108, 120×120 (published list). */
const PACKAGED: readonly Packaged[] = [
  { width: 45, height: 60 },
  { width: 72, height: 90 },
  { width: 81, height: 96 },
  { width: 90, height: 108 },
  { width: 120, height: 120 },
];

/** The smallest package that the batting can be cut from, either way round; null when it has to be pieced. */
export function packagedFor({ width, height }: BattingNeed, packages = PACKAGED): Packaged | null {
  const holds = (one: Packaged, w: Inches, h: Inches) => !longer(w, one.width) && !longer(h, one.height);
  const [w, h] = [width.value, height.value];
  return packages.find((one) => holds(one, w, h) || holds(one, h, w)) ?? null;
}
