import type { MethodId } from '../method.ts';

/**
 * What a way of making a unit does to a print that has a top.
 * - 'kept': each patch is cut by itself and can be laid so that its print stands upright.
 * - 'paired': patches come in pairs that lie half a turn apart.
 * - 'whole': patches stand upright in the unit as it is made, and turn with it.
 * - 'whole-paired': as 'whole', and half of them stand on their heads.
 * - 'turned': patches come lying every way.
 */
type PrintLies = 'kept' | 'paired' | 'whole' | 'whole-paired' | 'turned';

/** By plain geometry: follow the arrow of a print through the cutting and sewing of each method. */
const LIES: Readonly<Record<MethodId, PrintLies>> = {
  'plain-cut': 'kept',
  'log-cut': 'kept',
  'hst-two': 'paired',
  'hst-oversize': 'paired',
  'hst-triangles': 'paired',
  'geese-flip': 'kept',
  'square-in-square-flip': 'kept',
  'half-rectangle': 'paired',
  'corners-flip': 'kept',
  'four-patch-strips': 'whole-paired',
  'four-patch-squares': 'kept',
  'nine-patch-strips': 'whole',
  'nine-patch-squares': 'kept',
  'checkerboard-strips': 'whole',
  'checkerboard-squares': 'kept',
  'rails-strips': 'whole',
  'rails-pieces': 'kept',
  'quarter-circle': 'kept',
  template: 'kept',
  foundation: 'kept',
};

/** What a method does to a print that has a top; of one that is not listed, that it turns it every way. */
function printLies(method: MethodId): PrintLies {
  return LIES[method] ?? 'turned';
}

/** How a fabric's print runs: it has a top, or it runs in lines that look alike from both ends. */
export type Direction = 'one-way' | 'two-way';

/**
 * Whether a method keeps a print as it should stand.
 * @param turns quarter turns that the unit lies at anywhere in the quilt
 */
export function keepsPrint(method: MethodId, direction: Direction, turns: ReadonlySet<number>): boolean {
  const lies = printLies(method);
  if (lies === 'kept') return true;
  if (lies === 'turned') return false;
  if (direction === 'one-way' && lies !== 'whole') return false;
  if (lies === 'paired') return true;
  const apart = direction === 'one-way' ? 4 : 2;
  return [...turns].every((quarters) => quarters % apart === 0);
}
