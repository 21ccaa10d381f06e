import type { Bundle } from '../../pattern/schema.ts';
import type { Value } from '../../recipe/schema.ts';
import { allot } from './allot.ts';
import { type Allotment, VALUES } from './allotment.ts';
import { supplyOf } from './stress.ts';
import type { Wants } from './wants.ts';

/** The value of a strip by its number in the bundle: light first, then medium, then dark. Null when there is none. */
export function valueOfStrip({ values }: Bundle, number: number): Value | null {
  let last = 0;
  for (const value of VALUES) {
    last += values[value];
    if (number <= last) return number < 1 ? null : value;
  }
  return null;
}

/** Every number of a bundle's strips of one value. */
export function numbersOf(bundle: Bundle, value: Value): readonly number[] {
  const before = VALUES.slice(0, VALUES.indexOf(value)).reduce((sum, one) => sum + bundle.values[one], 0);
  return Array.from({ length: bundle.values[value] }, (_, i) => before + i + 1);
}

/**
 * The bundle cut without the strips that are set aside: all the others, by their own numbers. Strips of one value are as good
 * as one another, so those that are left are taken in order.
 * @param aside numbers of strips, as the bundle counts them
 */
export function withoutStrips(wants: Wants, bundle: Bundle, aside: ReadonlySet<number>): Allotment {
  const own = (value: Value) => numbersOf(bundle, value).filter((number) => !aside.has(number));
  const left = { light: own('light'), medium: own('medium'), dark: own('dark') };
  const values = { light: left.light.length, medium: left.medium.length, dark: left.dark.length };
  const allotment = allot(wants, { ...supplyOf(bundle), values });
  let before = 0;
  const firstOf = new Map<Value, number>();
  for (const value of VALUES) {
    firstOf.set(value, before);
    const used = allotment.strips.filter((strip) => strip.value === value).length;
    before += Math.max(values[value], used);
  }
  const strips = allotment.strips.map((strip) => {
    const number = left[strip.value][strip.number - (firstOf.get(strip.value) ?? 0) - 1];
    return number === undefined ? strip : { ...strip, number, fabric: number };
  });
  return { ...allotment, strips: strips.filter(({ number, value }) => left[value].includes(number)) };
}
