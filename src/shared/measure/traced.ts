import { fractionOf, inchesText, yardsText } from './fraction.ts';
import { type Inches, toRuler, type Way } from './inches.ts';

/** What a traced number counts. */
export type Unit = 'inch' | 'yard' | 'count';

/**
 * A number together with the short sum that made it, so that screen, paper and tests can all answer "why 8½?".
 * `name` says what it is in the trade's words ("finished", "seam"); a named number is quoted, not taken apart, in a larger sum.
 */
export interface Traced {
  readonly value: number;
  readonly unit: Unit;
  readonly name?: string;
  readonly how: How;
}

export type How =
  | { readonly kind: 'given' }
  | { readonly kind: 'sum'; readonly op: Op; readonly of: readonly Traced[] }
  | { readonly kind: 'rounded'; readonly of: Traced; readonly step: number; readonly way: Way };

export type Op = '+' | '−' | '×' | '÷';

/** A number somebody chose or the trade fixes. */
export function given(value: number, name: string, unit: Unit = 'inch'): Traced {
  return { value, unit, name, how: { kind: 'given' } };
}

/** A whole number of things. */
export function count(value: number, name: string): Traced {
  return given(value, name, 'count');
}

function sum(op: Op, of: readonly Traced[], value: number, unit: Unit): Traced {
  return { value, unit, how: { kind: 'sum', op, of } };
}

/** a + b + …, in the unit of the first. */
export function plus(first: Traced, ...rest: readonly Traced[]): Traced {
  const value = rest.reduce((total, part) => total + part.value, first.value);
  return sum('+', [first, ...rest], value, first.unit);
}

/** a − b, in the unit of the first. */
export function minus(a: Traced, b: Traced): Traced {
  return sum('−', [a, b], a.value - b.value, a.unit);
}

/** a × b; a count times a length is a length. */
export function times(a: Traced, b: Traced): Traced {
  return sum('×', [a, b], a.value * b.value, a.unit === 'count' ? b.unit : a.unit);
}

/** a ÷ b; a length over a length is a count, a length over a count a length. */
export function over(a: Traced, b: Traced): Traced {
  return sum('÷', [a, b], a.value / b.value, a.unit === b.unit ? 'count' : a.unit);
}

/** The number taken to a ruler mark; the same number (no step in the sum) when it is on one already. */
export function rounded(of: Traced, step: number, way: Way): Traced {
  const value = toRuler(of.value, step, way);
  if (Math.abs(value - of.value) < 1e-9) return of;
  return { value, unit: of.unit, how: { kind: 'rounded', of, step, way } };
}

/** The same number under a name of its own, so that larger sums quote it instead of taking it apart. */
export function named(traced: Traced, name: string): Traced {
  return { ...traced, name };
}

/** The same length said in yards. */
export function inYards(length: Traced): Traced {
  return { ...over(length, count(36, 'inches in a yard')), unit: 'yard' };
}

/** The number as it is printed, with its unit mark: `8½″`, `2⅝ yd`, `12`. */
export function tracedText(traced: Traced): string {
  if (traced.unit === 'inch') return inchesText(traced.value);
  return traced.unit === 'yard' ? yardsText(traced.value) : fractionOf(traced.value);
}

function quoted(part: Traced): string {
  return part.name === undefined ? sumText(part) : `${fractionOf(part.value)} ${part.name}`.trim();
}

function bracketed(part: Traced, op: Op): string {
  const loose = part.name === undefined && part.how.kind === 'sum' && (part.how.op === '+' || part.how.op === '−');
  return loose && op !== '+' ? `(${sumText(part)})` : quoted(part);
}

function sumText(traced: Traced): string {
  const { how } = traced;
  if (how.kind === 'given') return `${fractionOf(traced.value)} ${traced.name ?? ''}`.trim();
  if (how.kind === 'rounded') return `${quoted(how.of)}, ${wayText(how.way)} ${fractionOf(how.step)}`;
  return how.of.map((part) => bracketed(part, how.op)).join(` ${how.op} `);
}

function wayText(way: Way): string {
  return way === 'near' ? 'to the nearest' : `${way} to the next`;
}

/** Why a number is what it is, as one short sum: "8½″ = 8 finished + 2 × ¼ seam". */
export function explain(traced: Traced): string {
  const name = traced.name !== undefined && traced.how.kind !== 'given' ? ` ${traced.name}` : '';
  return `${tracedText(traced)}${name} = ${sumText(traced)}`;
}

/** A cut or sewn size: width across, height down. */
export interface TracedSize {
  readonly width: Traced;
  readonly height: Traced;
}

/** Convenience for places that only need the numbers. */
export function plain(size: TracedSize): { readonly width: Inches; readonly height: Inches } {
  return { width: size.width.value, height: size.height.value };
}
