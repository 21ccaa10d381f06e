import type { Inches } from '../../measure/inches.ts';
import type { Units } from '../../measure/metric.ts';
import { INCH_RULER, type Ruler, rulerIn } from '../../measure/ruler.ts';
import type { Bundle } from '../../pattern/schema.ts';
import type { Value } from '../../recipe/schema.ts';
import { allot } from './allot.ts';
import { type Allotment, BLOCKS, type Shortage, type Supply, VALUES } from './allotment.ts';
import { isSquares, type OneOf } from './squares.ts';
import type { Wants } from './wants.ts';

/** One thing that may go wrong with a bundle, how much of it the pattern bears, and what breaks first beyond that. */
export interface Trial {
  readonly what: 'fewer' | 'shorter' | 'pinked' | 'duplicates' | 'split' | 'rejected';
  /** The value it was tried on; absent when it concerns all strips. */
  readonly value?: Value;
  /** How much is borne: strips, pairs of equal strips, or inches. */
  readonly bears: number;
  /** What breaks first beyond that, as one sentence; says that nothing does when nothing can. */
  readonly breaks: string;
}

/** The ends of pinked strips are trimmed by this much each, and their long sides by as much (common practice: the teeth are ⅛). */
const TEETH = 1 / 8;
/** Lengths are tried on this step: a quarter inch, or half a centimetre. */
const STEP = 1 / 4;

/** The bundle as it is said to be. */
export function supplyOf(bundle: Bundle): Supply {
  const { length, values } = bundle;
  return isSquares(bundle) ? { length, values, square: true } : { length, values };
}

/**
 * Tries what happens when a bundle is not what it should be. Every trial stands by itself, all else as it was; what it
 * bears is found by trying, so it is exact for the way this allots. A bundle that is not enough as it is bears nothing.
 */
export function stress(wants: Wants, bundle: Bundle, units: Units = 'inches'): readonly Trial[] {
  const ruler = rulerIn(units);
  const supply = supplyOf(bundle);
  const whole = allot(wants, supply);
  if (!isEnough(whole)) {
    return [{ what: 'fewer', bears: 0, breaks: `All of it is not enough as it is: ${firstBroken(whole, ruler)}.` }];
  }
  const used = VALUES.filter((value) => supply.values[value] > 0);
  return [
    ...used.map((value) => fewer(wants, supply, value, ruler)),
    shorter(wants, supply, ruler),
    pinked(wants, bundle, ruler),
    ...used.map((value) => duplicates(wants, supply, value)),
    ...split(wants, supply, ruler),
    rejected(wants, supply, ruler),
  ];
}

/** The largest number up to `most` for which it still holds, if it holds less and less; −1 when it never does. */
function largest(most: number, holds: (n: number) => boolean): number {
  if (!holds(0)) return -1;
  let [low, high] = [0, most + 1];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (holds(middle)) low = middle;
    else high = middle;
  }
  return low;
}

function without(supply: Supply, value: Value, n: number): Supply {
  return { ...supply, values: { ...supply.values, [value]: supply.values[value] - n } };
}

function fewer(wants: Wants, supply: Supply, value: Value, ruler: Ruler): Trial {
  const have = supply.values[value];
  const bears = largest(have, (n) => isEnough(allot(wants, without(supply, value, n))));
  const broken = allot(wants, without(supply, value, Math.min(have, bears + 1)));
  return {
    what: 'fewer',
    value,
    bears,
    breaks:
      bears === have
        ? `No ${value} ${oneOf(supply)} is needed.`
        : `With ${have - bears - 1} ${value} ${oneOf(supply)}s ${firstBroken(broken, ruler)}.`,
  };
}

function shorter(wants: Wants, supply: Supply, ruler: Ruler): Trial {
  const step = ruler.stepOf(STEP);
  const steps = Math.floor(supply.length / step) - 1;
  const at = (n: number) => ({ ...supply, length: supply.length - n * step });
  const bears = largest(steps, (n) => isEnough(allot(wants, at(n))));
  const short = at(bears + 1);
  const size = `${oneOf(supply)}s ${ruler.length(short.length)} ${supply.square ? 'wide' : 'long'}`;
  const breaks = `With ${size} ${firstBroken(allot(wants, short), ruler)}.`;
  return { what: 'shorter', bears: Math.max(0, bears) * step, breaks };
}

/** Trimmed teeth make strips narrower and shorter: by how much narrower they are the trial bears only if pieces allow. */
function pinked(wants: Wants, bundle: Bundle, ruler: Ruler): Trial {
  const widest = Math.max(0, ...wants.groups.flatMap(({ cuts }) => cuts.map(({ across }) => across)));
  const trimmed = bundle.strip - 2 * TEETH;
  const ends = allot(wants, { ...supplyOf(bundle), length: bundle.length - 2 * TEETH });
  if (!isEnough(ends))
    return {
      what: 'pinked',
      bears: 0,
      breaks: `With the pinked ${isSquares(bundle) ? 'edges' : 'ends'} trimmed ${firstBroken(ends, ruler)}.`,
    };
  if (isSquares(bundle)) return { what: 'pinked', bears: TEETH, breaks: 'Pinked edges can be trimmed on all sides.' };
  if (widest <= trimmed + 1e-9 && wants.long.length === 0)
    return { what: 'pinked', bears: TEETH, breaks: 'Pinked edges can be trimmed on all sides.' };
  const breaks = `Trimmed along both sides a strip is ${ruler.length(trimmed)} wide, too narrow for pieces cut ${ruler.length(bundle.strip)} wide: trim the ends only, and measure the width from tooth to tooth.`;
  return { what: 'pinked', bears: 0, breaks };
}

function duplicates(wants: Wants, supply: Supply, value: Value): Trial {
  const most = supply.values[value] >> 1;
  const at = (n: number) => ({ ...supply, twice: { [value]: n } });
  const bears = largest(most, (n) => allot(wants, at(n)).clashes === 0);
  if (bears === most) return { what: 'duplicates', value, bears, breaks: `Every ${value} fabric may come twice.` };
  const { clashes } = allot(wants, at(bears + 1));
  const times = clashes === 1 ? 'once' : `${clashes} times`;
  const breaks = `With ${bears + 1} ${value} ${bears === 0 ? 'fabric' : 'fabrics'} coming twice, a fabric meets itself in a block or across blocks ${times}.`;
  return { what: 'duplicates', value, bears, breaks };
}

/** Light strips instead of dark ones, and the other way round. */
function split(wants: Wants, supply: Supply, ruler: Ruler): readonly Trial[] {
  const { light, dark } = supply.values;
  if (light === 0 || dark === 0) return [];
  return (['light', 'dark'] as const).map((value) => {
    const other = value === 'light' ? 'dark' : 'light';
    const at = (n: number): Supply => {
      const values = { ...supply.values, [value]: supply.values[value] - n, [other]: supply.values[other] + n };
      return { ...supply, values };
    };
    const bears = largest(supply.values[value], (n) => isEnough(allot(wants, at(n))));
    const one = at(Math.min(supply.values[value], bears + 1)).values;
    const words = `Split ${one.light} light to ${one.dark} dark`;
    return { what: 'split', value, bears, breaks: `${words}, ${firstBroken(allot(wants, at(bears + 1)), ruler)}.` };
  });
}

/** Strips that the designer will not use: the worst case, all of the value with least to spare. */
function rejected(wants: Wants, supply: Supply, ruler: Ruler): Trial {
  const worst = VALUES.filter((value) => supply.values[value] > 0)
    .map((value) => fewer(wants, supply, value, ruler))
    .reduce((a, b) => (b.bears < a.bears ? b : a), {
      what: 'fewer',
      bears: Number.POSITIVE_INFINITY,
      breaks: '',
    } as Trial);
  const bears = Number.isFinite(worst.bears) ? worst.bears : 0;
  return { ...worst, what: 'rejected', bears };
}

/** Enough strips, and no fabric meets itself. */
export function isEnough({ enough, clashes }: Allotment): boolean {
  return enough && clashes === 0;
}

/** "the binding cannot be cut: 2 dark strips are missing". What is served last is given up first. */
function firstBroken({ short, clashes }: Allotment, ruler: Ruler): string {
  const last = short.at(-1);
  if (last === undefined) return clashes > 0 ? 'a fabric meets itself in a block or across blocks' : 'nothing breaks';
  return brokenWords(last, ruler);
}

/** What cannot be cut and why, without a full stop. */
export function brokenWords({ words, value, strips, tooLong, square }: Shortage, ruler: Ruler = INCH_RULER): string {
  const one = square ? 'square' : 'strip';
  const what = words === BLOCKS ? 'pieces for the blocks' : `the ${inSentence(words)}`;
  if (tooLong !== undefined && square) return `${what} cannot be cut: what must match is more than one ${value} square`;
  if (tooLong !== undefined) return `${what} cannot be cut: ${ruler.length(tooLong)} of one ${value} strip must match`;
  const missing = strips === 1 ? `1 ${value} ${one} is missing` : `${strips} ${value} ${one}s are missing`;
  return `${what} cannot be cut: ${missing}`;
}

function oneOf({ square }: Supply): OneOf {
  return square ? 'square' : 'strip';
}

/** "Inner border, ends" within a sentence: "inner border (ends)". */
function inSentence(words: string): string {
  const lower = `${words.charAt(0).toLowerCase()}${words.slice(1)}`;
  return lower.replace(/, ([^,]+)$/, ' ($1)');
}

/** Inches to spare at the ends of strips that are cut, and whole strips to spare, of a value. */
export function toSpare(
  { values, strips }: Allotment,
  value: Value,
): { readonly strips: number; readonly ends: Inches } {
  const ends = strips.filter((strip) => strip.value === value).reduce((sum, { left }) => sum + left, 0);
  return { strips: values.find((use) => use.value === value)?.spare ?? 0, ends };
}
