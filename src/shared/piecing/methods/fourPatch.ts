import type { TracedSize } from '../../measure/traced.ts';
import type { Scale } from '../method.ts';
import type { Unit } from '../piecing.ts';
import { sewnLength } from './boardSize.ts';
import { unfinishedLength } from './sums.ts';

export type FourPatch = Extract<Unit, { kind: 'four-patch' }>;

/** One of the four patches as cut. */
export function patchSize({ width, height }: FourPatch, scale: Scale): TracedSize {
  return { width: unfinishedLength(width / 2, scale), height: unfinishedLength(height / 2, scale) };
}

/** The four-patch as sewn from them: it is not trimmed, so patches that were rounded to the ruler count twice. */
export function fourPatchSize(unit: FourPatch, scale: Scale): TracedSize {
  const patch = patchSize(unit, scale);
  return {
    width: sewnLength(unit.width, 2, patch.width, scale),
    height: sewnLength(unit.height, 2, patch.height, scale),
  };
}
