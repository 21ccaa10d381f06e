import { count, given, named, over, plus, rounded, type Traced, times } from '../measure/traced.ts';
import type { Pattern } from '../pattern/schema.ts';
import type { Quilt } from '../quilt/quilt.ts';
import { bindingNeed } from './binding.ts';
import { usableWidth } from './join.ts';
import { bought } from './yards.ts';

/** Binding cut on the bias, which bends round curves: as strips, or as one continuous strip from a square. */
export interface BiasBinding {
  /** Length that is needed, joins and corners included. */
  readonly length: Traced;
  /** Side of the square that one continuous strip is cut from. */
  readonly square: Traced;
  /** Squares: more than one when it would be wider than the cloth. */
  readonly squares: Traced;
  readonly yards: Traced;
}

/** Both ways of binding a quilt, to be compared. */
export interface BindingWays {
  readonly straight: { readonly strips: Traced; readonly length: Traced; readonly yards: Traced };
  readonly bias: BiasBinding;
}

/** Lost of a square's side in the tube that a continuous strip is cut from: its two seams, and the ends that do not meet. */
const LOST = 1;

/**
 * Straight binding and bias binding for one quilt. A continuous bias strip takes up the area of its square, so the square's side is
 * the root of length × strip width (plain geometry), and an inch for the seams of the tube and its ends, in whole
 * inches, up. Where one square is wider than the cloth, as many equal ones as are needed.
 */
export function bindingWays(quilt: Quilt, pattern: Pattern): BindingWays {
  const { strips, length, yards } = bindingNeed(quilt, pattern);
  return { straight: { strips, length, yards }, bias: biasBinding(length, pattern) };
}

function biasBinding(length: Traced, { binding, house }: Pattern): BiasBinding {
  for (let many = 1; ; many++) {
    const area = over(
      times(length, count(binding.strip, 'inches wide')),
      count(many, many === 1 ? 'square' : 'squares'),
    );
    const side = named(given(Math.sqrt(area.value), 'root of length × strip width'), 'root of length × strip width');
    const square = rounded(plus(side, given(LOST, 'for seams and ends')), 1, 'up');
    if (square.value > usableWidth(house).value && many < MOST_SQUARES) continue;
    const squares = count(many, many === 1 ? 'square' : 'squares');
    const cloth = many === 1 ? square : times(squares, named(square, 'side of a square'));
    return { length, square, squares, yards: bought(cloth, house) };
  }
}

/** A cloth so narrow that this many squares do not do is no cloth. */
const MOST_SQUARES = 60;
