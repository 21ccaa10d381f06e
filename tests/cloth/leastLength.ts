import type { Kind } from '../../src/shared/cloth/strips/kinds.ts';
import { longer } from '../../src/shared/measure/inches.ts';

/**
 * The least length of strips for a handful of single pieces, by trying every way to part them into strips: an answer that
 * owes nothing to the planner.
 */
export function leastLength(pieces: readonly Kind[], width: number): number {
  const all = (1 << pieces.length) - 1;
  const strip = Array.from({ length: all + 1 }, (_, mask) => heightOfOneStrip(chosen(pieces, mask), width));
  const least = new Array<number>(all + 1).fill(Number.POSITIVE_INFINITY);
  least[0] = 0;
  for (let mask = 1; mask <= all; mask++) {
    for (let part = mask; part > 0; part = (part - 1) & mask) {
      const together = (strip[part] as number) + (least[mask ^ part] as number);
      least[mask] = Math.min(least[mask] as number, together);
    }
  }
  return least[all] as number;
}

function chosen(pieces: readonly Kind[], mask: number): readonly Kind[] {
  return pieces.filter((_, index) => (mask & (1 << index)) !== 0);
}

/** The lowest strip all of these lie in side by side, or infinity when none is wide enough. */
function heightOfOneStrip(pieces: readonly Kind[], width: number): number {
  const heights = pieces.flatMap((piece) => [piece.height, piece.width]);
  const enough = heights.filter((height) => {
    const widths = pieces.map((piece) => narrowest(piece, height));
    return !longer(
      widths.reduce((sum, one) => sum + one, 0),
      width,
    );
  });
  return pieces.length === 0 ? 0 : Math.min(Number.POSITIVE_INFINITY, ...enough);
}

function narrowest({ width, height, turns }: Kind, tallest: number): number {
  const usual = height <= tallest ? width : Number.POSITIVE_INFINITY;
  const turned = turns && width <= tallest ? height : Number.POSITIVE_INFINITY;
  return Math.min(usual, turned);
}
