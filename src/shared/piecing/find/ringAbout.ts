import type { Side } from '../../recipe/schema.ts';
import type { Field } from './field.ts';
import type { Region } from './fieldPatch.ts';

/** Four parts about a core, as lines of the drawing: the arms in sewing order. */
export interface RegionRing {
  readonly core: Region;
  readonly arms: readonly [Arm, Arm, Arm, Arm];
}

interface Arm {
  readonly side: Side;
  readonly region: Region;
}

/**
 * Every ring that fills a rectangle: each arm begins at a corner of the rectangle and ends at the side of the next one.
 * Clockwise ones first.
 */
export function ringsIn(field: Field, whole: Region): readonly RegionRing[] {
  return [...clockwise(field, whole), ...anticlockwise(field, whole)];
}

/** The top arm begins at the left, the right one at the top, and so on round the core. */
function clockwise(field: Field, whole: Region): readonly RegionRing[] {
  const { left, top, right, bottom } = whole;
  const found: RegionRing[] = [];
  for (const [coreTop, coreRight] of pairs(top, bottom, left, right)) {
    if (!field.level(coreTop, left, coreRight)) continue;
    for (const [coreBottom, coreLeft] of pairs(coreTop, bottom, left, coreRight)) {
      const closes =
        field.upright(coreRight, top, coreBottom) &&
        field.level(coreBottom, coreLeft, right) &&
        field.upright(coreLeft, coreTop, bottom);
      if (!closes) continue;
      found.push({
        core: { left: coreLeft, top: coreTop, right: coreRight, bottom: coreBottom },
        arms: [
          { side: 'top', region: { left, top, right: coreRight, bottom: coreTop } },
          { side: 'right', region: { left: coreRight, top, right, bottom: coreBottom } },
          { side: 'bottom', region: { left: coreLeft, top: coreBottom, right, bottom } },
          { side: 'left', region: { left, top: coreTop, right: coreLeft, bottom } },
        ],
      });
    }
  }
  return found;
}

/** The mirror image: the top arm begins at the right. */
function anticlockwise(field: Field, whole: Region): readonly RegionRing[] {
  const { left, top, right, bottom } = whole;
  const found: RegionRing[] = [];
  for (const [coreTop, coreLeft] of pairs(top, bottom, left, right)) {
    if (!field.level(coreTop, coreLeft, right)) continue;
    for (const [coreBottom, coreRight] of pairs(coreTop, bottom, coreLeft, right)) {
      const closes =
        field.upright(coreLeft, top, coreBottom) &&
        field.level(coreBottom, left, coreRight) &&
        field.upright(coreRight, coreTop, bottom);
      if (!closes) continue;
      found.push({
        core: { left: coreLeft, top: coreTop, right: coreRight, bottom: coreBottom },
        arms: [
          { side: 'top', region: { left: coreLeft, top, right, bottom: coreTop } },
          { side: 'left', region: { left, top, right: coreLeft, bottom: coreBottom } },
          { side: 'bottom', region: { left, top: coreBottom, right: coreRight, bottom } },
          { side: 'right', region: { left: coreRight, top: coreTop, right, bottom } },
        ],
      });
    }
  }
  return found;
}

/** Every line strictly between the first two with every line strictly between the other two. */
function* pairs(from: number, to: number, from2: number, to2: number): Generator<readonly [number, number]> {
  for (let a = from + 1; a < to; a += 1) for (let b = from2 + 1; b < to2; b += 1) yield [a, b];
}
