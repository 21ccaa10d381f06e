import { arcBetween } from '../drawing/curve.ts';
import type { Drawing } from '../drawing/drawing.ts';
import type { Point } from '../drawing/turn.ts';
import { edgesOf } from '../drawing/vertex.ts';
import { type Inches, onRuler } from '../measure/inches.ts';
import { rulerOn } from '../measure/ruler.ts';
import type { Piecing, Unit } from './piecing.ts';
import { unitName } from './unitNames.ts';

/** One finished width of a block, and whether everything in it falls on the marks of the ruler. */
export interface RulerSize {
  /** Finished width of the block, inches. */
  readonly size: Inches;
  readonly friendly: boolean;
  /** One sentence for the screen: that all is on the marks, or which length of which unit is not. */
  readonly why: string;
}

/** Block widths that are asked about, inches: every half inch from 2 to 24. */
export const ASKED_SIZES: readonly Inches[] = Array.from({ length: 45 }, (_, i) => 2 + i / 2);

/**
 * The finished widths at which a block can be cut as it is drawn: every length a maker measures along a unit's sides falls
 * on a mark of her ruler.
 * @param step of the ruler, inches
 */
export function rulerFriendlySizes(
  piecing: Piecing,
  step: Inches,
  sizes: readonly Inches[] = ASKED_SIZES,
): readonly RulerSize[] {
  const lengths = ruledLengths(piecing);
  const say = rulerOn(step).length;
  return sizes.map((size) => {
    const grid = size / piecing.drawing.width;
    const off = lengths.find(({ length }) => !onRuler(length * grid, step));
    if (off === undefined) return { size, friendly: true, why: `Every length falls on the ${say(step)} marks.` };
    const why = `${off.of}: ${say(off.length * grid)} is between the ${say(step)} marks.`;
    return { size, friendly: false, why };
  });
}

/** Whether a block of this finished width can be cut as it is drawn. */
export function isRulerFriendly(piecing: Piecing, size: Inches, step: Inches): boolean {
  return rulerFriendlySizes(piecing, step, [size]).every(({ friendly }) => friendly);
}

/** Every length to be measured, once, in grid units, with the unit it is in: whole units before their parts. */
function ruledLengths({ drawing, units }: Piecing): readonly { readonly length: number; readonly of: string }[] {
  const found = new Map<string, { readonly length: number; readonly of: string }>();
  const note = (length: number, of: string) => {
    const key = length.toFixed(6);
    if (length > 1e-6 && !found.has(key)) found.set(key, { length, of });
  };
  note(drawing.height, 'The block');
  for (const unit of units) for (const length of lengthsOf(unit)) note(length, unitName(unit));
  return [...found.values()];
}

/** The lengths of a unit, in grid units, that a maker measures along its sides: of its pieces too, where it is cut from them. */
function lengthsOf(unit: Unit): readonly number[] {
  const { width, height } = unit;
  switch (unit.kind) {
    case 'corners':
      return [width, height, ...unit.corners.map(({ size }) => size)];
    case 'four-patch':
    case 'square-in-square':
      return [width / 2, height / 2];
    case 'nine-patch':
      return [width / 3, height / 3];
    case 'checkerboard':
      return [width / unit.columns, height / unit.rows];
    case 'rails':
      return [width, height / unit.roles.length];
    case 'quarter-circle':
      return [width, height, unit.radius];
    case 'pieced':
      return cornersOf(unit.drawing).flatMap(({ x, y }) => [x, y]);
    default:
      return [width, height];
  }
}

/** The corners of patches; those on the way of an arc only carry the arc. */
export function cornersOf(drawing: Drawing): readonly Point[] {
  const straight = new Set(edgesOf(drawing).flatMap(([a, b]) => (arcBetween(drawing, a, b) === null ? [a, b] : [])));
  return drawing.points.filter((_, vertex) => straight.has(vertex));
}
