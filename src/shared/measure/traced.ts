import { fractionOf, inchesText, yardsText } from './fraction.ts';
import { INCHES_PER_YARD, type Inches, toRuler, type Way } from './inches.ts';
import { CENTIMETRE, centimetresOf, metresOf, type Units } from './metric.ts';

/** What a traced number counts; an area is square inches. */
export type Unit = 'inch' | 'yard' | 'count' | 'area';

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

/** a ÷ b; a length over a length is a count, a length over a count a length, an area over a length a length. */
export function over(a: Traced, b: Traced): Traced {
  const unit = a.unit === b.unit ? 'count' : a.unit === 'area' && b.unit === 'inch' ? 'inch' : a.unit;
  return sum('÷', [a, b], a.value / b.value, unit);
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

const IN_A_YARD = count(INCHES_PER_YARD, 'inches in a yard');

/** The same length said in yards. */
export function inYards(length: Traced): Traced {
  return { ...over(length, IN_A_YARD), unit: 'yard' };
}

/** The number as it is printed, with its unit mark: `8½″`, `2⅝ yd`, `12`; or `21.5 cm`, `2.4 m`. */
export function tracedText(traced: Traced, units: Units = 'inches'): string {
  if (traced.unit === 'inch') return inchesText(traced.value, units);
  if (traced.unit === 'area') return areaText(traced.value, units);
  return traced.unit === 'yard' ? yardsText(traced.value, units) : fractionOf(traced.value);
}

/** "12.5 square inches", or "80.6 square centimetres". */
function areaText(square: number, units: Units): string {
  const value = units === 'inches' ? square : square / CENTIMETRE ** 2;
  return `${Number(value.toFixed(1))} square ${units}`;
}

/** A number of a sum without its mark, in what is said. */
function bare(value: number, unit: Unit, units: Units): string {
  if (unit === 'area') return areaText(value, units);
  if (units === 'inches' || unit === 'count') return fractionOf(value);
  return unit === 'inch' ? centimetresOf(value) : metresOf(value);
}

function quoted(part: Traced, units: Units): string {
  if (units === 'centimetres' && part.name === IN_A_YARD.name) return '100 cm in a metre';
  if (part.name === undefined) return sumText(part, units);
  return `${bare(part.value, part.unit, units)} ${part.name}`.trim();
}

function bracketed(part: Traced, op: Op, units: Units): string {
  const loose = part.name === undefined && part.how.kind === 'sum' && (part.how.op === '+' || part.how.op === '−');
  return loose && op !== '+' ? `(${sumText(part, units)})` : quoted(part, units);
}

function sumText(traced: Traced, units: Units): string {
  const { how } = traced;
  if (how.kind === 'given') return `${bare(traced.value, traced.unit, units)} ${traced.name ?? ''}`.trim();
  if (how.kind === 'rounded')
    return `${quoted(how.of, units)}, ${wayText(how.way)} ${bare(how.step, traced.unit, units)}`;
  return how.of.map((part) => bracketed(part, how.op, units)).join(` ${how.op} `);
}

function wayText(way: Way): string {
  return way === 'near' ? 'to the nearest' : `${way} to the next`;
}

/** Why a number is what it is, as one short sum: "8½″ = 8 finished + 2 × ¼ seam". */
export function explain(traced: Traced, units: Units = 'inches'): string {
  const name = traced.name !== undefined && traced.how.kind !== 'given' ? ` ${traced.name}` : '';
  return `${tracedText(traced, units)}${name} = ${sumText(traced, units)}`;
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
