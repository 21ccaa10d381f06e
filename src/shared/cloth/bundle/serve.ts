import type { Inches } from '../../measure/inches.ts';
import type { Value } from '../../recipe/schema.ts';
import type { AllottedStrip, Shortage } from './allotment.ts';
import type { Group, LongWant } from './wants.ts';

/** The shortest end of a strip that is worth joining into a border or the binding, inches (common practice). */
const SHORTEST_END = 8;

export interface Served {
  readonly strips: readonly AllottedStrip[];
  readonly short: readonly Shortage[];
  readonly whole: number;
}

/** Strips for what is joined: whole ones first, then the longest ends. */
export function serve(
  wanted: readonly LongWant[],
  filled: readonly { readonly groups: readonly Group[]; readonly fabric: number; readonly left: Inches }[],
  have: number,
  length: Inches,
  value: Value,
): Served {
  const strips: AllottedStrip[] = filled.map(({ groups, fabric, left }, index) => {
    return { number: index + 1, value, fabric, groups, long: [], left };
  });
  const short: Shortage[] = [];
  for (const want of wanted) {
    const missing =
      want.strips === null ? join(want, strips, have, length, value) : takeWhole(want, strips, have, length, value);
    if (missing > 0) short.push({ words: want.words, value, strips: missing });
  }
  return { strips, short, whole: strips.length - filled.length };
}

/** Whole strips for strip sets; how many are missing. */
function takeWhole(want: LongWant, strips: AllottedStrip[], have: number, length: Inches, value: Value): number {
  let still = want.strips ?? 0;
  for (; still > 0 && strips.length < have; still--) strips.push(wholeStrip(want, strips.length + 1, length, value));
  return still;
}

/** Strips joined end to end until they reach; how many are missing. Each join takes `want.join` of what it joins. */
function join(want: LongWant, strips: AllottedStrip[], have: number, length: Inches, value: Value): number {
  let reached = -want.join;
  const take = (at: number) => {
    const strip = strips[at] as AllottedStrip;
    const first = reached < 0;
    const taken = Math.min(strip.left, want.reach - Math.max(0, reached) + (first ? 0 : want.join));
    strips[at] = { ...strip, long: [...strip.long, { letter: want.letter, length: taken }], left: strip.left - taken };
    reached = Math.max(0, reached) + taken - (first ? 0 : want.join);
  };
  while (reached < want.reach - 1e-6) {
    if (strips.length < have) {
      strips.push({ ...wholeStrip(want, strips.length + 1, length, value), long: [], left: length });
      take(strips.length - 1);
      continue;
    }
    const end = longestEnd(strips);
    if (end < 0) break;
    take(end);
  }
  const missing = (want.reach - Math.max(0, reached)) / Math.max(1e-6, length - want.join);
  return reached >= want.reach - 1e-6 ? 0 : Math.max(1, Math.ceil(missing - 1e-9));
}

function wholeStrip(want: LongWant, number: number, length: Inches, value: Value): AllottedStrip {
  return { number, value, fabric: number, groups: [], long: [{ letter: want.letter, length }], left: 0 };
}

function longestEnd(strips: readonly AllottedStrip[]): number {
  let best = -1;
  strips.forEach(({ left }, index) => {
    if (left >= SHORTEST_END && (best < 0 || left > (strips[best]?.left ?? 0))) best = index;
  });
  return best;
}
