import { longer, same } from '../../measure/inches.ts';
import type { TracedSize } from '../../measure/traced.ts';
import type { Corner } from '../../recipe/schema.ts';
import type { Cut, Method, Scale } from '../method.ts';
import type { FlippedCorner, Unit } from '../piecing.ts';
import { cornersFlipStages } from './cornersFlipStages.ts';
import type { Flip } from './flip.ts';
import { ofKind } from './ofKind.ts';
import { shapeWord, sizeWords, unfinishedLength, unfinishedSize } from './sums.ts';

type Corners = Extract<Unit, { kind: 'corners' }>;

/** One to four corner triangles on a rectangle, each from a square sewn on its diagonal and flipped open. */
export const cornersFlip: Method = {
  id: 'corners-flip',
  name: 'Corners, stitch and flip',
  source: 'Rectangle and corner squares: finished and a seam on each side; common practice',
  makes: (unit) => unit.kind === 'corners' && hasRoom(unit),
  plan(unit, scale) {
    const corners = ofKind(unit, 'corners');
    const unfinished = unfinishedSize(corners.width, corners.height, scale);
    const use = shapeWord(corners.width, corners.height);
    const base = {
      role: corners.role,
      ...unfinished,
      count: 1,
      patches: 1,
      use: use === 'square' ? 'large square' : use,
    };
    return {
      cuts: [base, ...cornerCuts(corners.corners, scale)],
      yield: 1,
      unfinished,
      trimmed: false,
      stages: cornersFlipStages(flipOf(corners, unfinished, scale), scale, sizeWords(corners, unfinished)),
    };
  },
};

/** The corner squares; equal ones of one fabric are one line. */
function cornerCuts(corners: readonly FlippedCorner[], scale: Scale): readonly Cut[] {
  const cuts = new Map<string, Cut>();
  for (const { role, size } of corners) {
    const key = `${role} ${size}`;
    const side = unfinishedLength(size, scale);
    const count = (cuts.get(key)?.count ?? 0) + 1;
    cuts.set(key, { role, width: side, height: side, count, patches: 1, use: 'corner square' });
  }
  return [...cuts.values()];
}

function flipOf(unit: Corners, { width, height }: TracedSize, scale: Scale): Flip {
  const corners = unit.corners.map(({ at, role, size }) => ({ at, role, side: unfinishedLength(size, scale).value }));
  return { role: unit.role, width: width.value, height: height.value, corners, seam: scale.seam };
}

const SIDES: readonly (readonly [Corner, Corner, 'width' | 'height'])[] = [
  ['top-left', 'top-right', 'width'],
  ['bottom-left', 'bottom-right', 'width'],
  ['top-left', 'bottom-left', 'height'],
  ['top-right', 'bottom-right', 'height'],
];

const OPPOSITE: readonly (readonly [Corner, Corner])[] = [
  ['top-left', 'bottom-right'],
  ['top-right', 'bottom-left'],
];

/** Whether the finished triangles lie inside the rectangle without covering one another, and leave some of it to be seen. */
function hasRoom(unit: Corners): boolean {
  const { width, height, corners } = unit;
  const places = new Set(corners.map(({ at }) => at));
  if (corners.length === 0 || places.size < corners.length) return false;
  const size = (at: Corner) => corners.find((corner) => corner.at === at)?.size ?? 0;
  const inside = corners.every((corner) => corner.size > 0 && !longer(corner.size, Math.min(width, height)));
  const apart = SIDES.every(([one, other, side]) => !longer(size(one) + size(other), unit[side]));
  const meet = OPPOSITE.some(([one, other]) => same(size(one) + size(other), width + height));
  return inside && apart && !meet;
}
