import type { Kind } from '../strips/kinds.ts';
import type { Sheet } from './sheet.ts';

/** Thresholds tried on each side at most. */
const MOST = 20;

/**
 * No fewer sheets than this hold all the pieces, however they are cut.
 *
 * Why: let u and v be dual feasible functions (`binBound`). Then Σ u(width) × v(height) over pieces that lie on one sheet is at most 1
 * (Fekete and Schepers, "A combinatorial characterization of higher-dimensional orthogonal packing", 2004), so all pieces
 * together need at least that sum of sheets. A piece that may be turned counts by the lesser of its two ways. u and v are
 * the share of the side, and the function that drops what is shorter than a threshold and counts what would leave less as whole.
 */
export function sheetBound(kinds: readonly Kind[], sheet: Sheet): number {
  const across = thresholds(kinds, sheet.width);
  const along = thresholds(kinds, sheet.height);
  let most = 0;
  for (const p of across) {
    for (const q of along) {
      const total = kinds.reduce((sum, { width, height, count, turns }) => {
        const usual = share(width, sheet.width, p) * share(height, sheet.height, q);
        const turned = share(height, sheet.width, p) * share(width, sheet.height, q);
        return sum + count * (turns ? Math.min(usual, turned) : usual);
      }, 0);
      most = Math.max(most, total);
    }
  }
  return Math.max(0, Math.ceil(most - 1e-6));
}

/** Lengths above half of which anything shorter may be dropped, and none at all. */
function thresholds(kinds: readonly Kind[], side: number): readonly number[] {
  const edges = kinds.flatMap(({ width, height }) => [width, height, side - width + 2e-6, side - height + 2e-6]);
  const useful = [...new Set(edges)].filter((edge) => edge > 0 && 2 * edge <= side + 1e-9).sort((a, b) => b - a);
  return [0, ...useful.slice(0, MOST)];
}

function share(length: number, side: number, threshold: number): number {
  if (length > side - threshold + 1e-6) return threshold > 0 ? 1 : length / side;
  return length < threshold - 1e-6 ? 0 : length / side;
}
