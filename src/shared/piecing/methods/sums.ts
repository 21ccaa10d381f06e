import type { Inches } from '../../measure/inches.ts';
import { longer, same } from '../../measure/inches.ts';
import { given, minus, named, plus, rounded, type Traced, type TracedSize, times } from '../../measure/traced.ts';
import type { Scale } from '../method.ts';

/**
 * The sums every method is made of. For a seam allowance s, a right triangle whose long side lies on a diagonal needs
 * s on each of its two sides and the length its sharp point takes up: s(2 + √2) on the leg of a triangle cut two to a
 * square, s(2 + 2√2) on the long side of one cut four to a square. Computed; with s = ¼ these are the trade's ⅞ and 1¼.
 */

/** A bare number in a sum: the 2 of "2 × ¼ seam". */
function bare(value: number): Traced {
  return { value, unit: 'count', how: { kind: 'given' } };
}

/** The 2 of a half or of both sides. */
export const two: Traced = bare(2);

/** `many` times a length, such as the 2 × 2⅜ of a square that is cut into quarters. */
export function multiple(many: number, length: Traced): Traced {
  return times(bare(many), length);
}

/** The seam allowance, for words that speak of it. */
export function seamOf(scale: Scale): Traced {
  return given(scale.seam, 'seam');
}

/** A seam on each side. */
export function twoSeams(scale: Scale): Traced {
  return multiple(2, seamOf(scale));
}

/** A finished length: so many grid units at this scale. */
export function finishedLength(units: number, scale: Scale): Traced {
  return named(multiple(units, given(scale.grid, 'grid unit')), 'finished');
}

/** Finished and a seam on each side, to the nearest mark of the ruler. */
export function unfinishedLength(units: number, scale: Scale): Traced {
  return rounded(plus(finishedLength(units, scale), twoSeams(scale)), scale.step, 'near');
}

/**
 * What a piece or a unit measures before it is sewn into anything, on the ruler.
 * @param width grid units
 * @param height grid units
 */
export function unfinishedSize(width: number, height: number, scale: Scale): TracedSize {
  return { width: unfinishedLength(width, scale), height: unfinishedLength(height, scale) };
}

/**
 * A finished length with room for the ruler: where the unfinished size had to be rounded up, the length that makes it.
 * Pieces that are trimmed later are cut from this, so that there is always enough to trim.
 */
export function roomyLength(units: number, scale: Scale): Traced {
  const finished = finishedLength(units, scale);
  const onRuler = named(minus(unfinishedLength(units, scale), twoSeams(scale)), 'finished on the ruler');
  return larger(finished, onRuler);
}

/** The larger of two lengths, with its own sum; the first when they are the same length. */
export function larger(a: Traced, b: Traced): Traced {
  return longer(b.value, a.value) ? b : a;
}

/** s(2 + √2): what a half-square triangle's leg needs beyond its finished length. */
export function halfSquareAdd(scale: Scale): Traced {
  const sum = plus(twoSeams(scale), multiple(Math.SQRT2, seamOf(scale)));
  return named(sum, 'for two seams and the diagonal');
}

/** s(2 + 2√2): what a quarter-square triangle's long side needs beyond its finished length. */
export function quarterSquareAdd(scale: Scale): Traced {
  const sum = plus(twoSeams(scale), multiple(2 * Math.SQRT2, seamOf(scale)));
  return named(sum, 'for two seams and two diagonals');
}

/** A length to cut for something that is trimmed later: with whatever is added to trim, up to the ruler. */
export function cutUp(scale: Scale, first: Traced, ...rest: readonly Traced[]): Traced {
  return rounded(plus(first, ...rest, ...toTrim(scale)), scale.step, 'up');
}

/** What is added so that there is more to trim; nothing when nothing is asked for. */
export function toTrim({ oversize = 0 }: Scale): readonly Traced[] {
  return oversize > 0 ? [given(oversize, 'to trim')] : [];
}

/** Finished and a seam on each side, as long as the ruler made it, before anything is rounded again. */
export function roomyUnfinished(units: number, scale: Scale): Traced {
  return named(plus(roomyLength(units, scale), twoSeams(scale)), 'unfinished');
}

/**
 * A length before any rounding to the ruler: the same sum with every rounding left out.
 * @returns inches (or whatever the number counts)
 */
export function exactly(traced: Traced): Inches {
  const { how } = traced;
  if (how.kind === 'given') return traced.value;
  if (how.kind === 'rounded') return exactly(how.of);
  const parts = how.of.map(exactly);
  return parts.reduce((total, part) => {
    if (how.op === '+') return total + part;
    if (how.op === '−') return total - part;
    return how.op === '×' ? total * part : total / part;
  });
}

/** "rectangle" or "square", by its measure. */
export function shapeWord(width: number, height: number): 'square' | 'rectangle' {
  return same(width, height) ? 'square' : 'rectangle';
}

/** A size in words with its numbers bound: one number for a square unit, width × height for any other. */
export function sizeWords(
  unit: { readonly width: number; readonly height: number },
  size: TracedSize,
): readonly (string | Traced)[] {
  return same(unit.width, unit.height) ? [size.width, ' square'] : [size.width, ' × ', size.height];
}
