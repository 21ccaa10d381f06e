import type { SeamSpot } from './apart.ts';
import type { Arrow } from './figure.ts';
import { arrowAt } from './marks.ts';

/**
 * The arrows that say which way seams are pressed; a seam pressed open gets one to each side.
 * @param scale inches for one unit of the spots
 * @param reach half the length of an arrow, inches
 */
export function pressArrows(seams: readonly SeamSpot[], scale: number, reach: number): readonly Arrow[] {
  return seams.flatMap((seam): readonly Arrow[] => {
    const at = { x: seam.middle.x * scale, y: seam.middle.y * scale };
    if (seam.press !== 'open') return [arrowAt(at, seam.press, reach, 'press')];
    const both = seam.upright ? (['left', 'right'] as const) : (['up', 'down'] as const);
    return both.map((way) => ({ ...arrowAt(at, way, reach, 'press'), from: at }));
  });
}
