import type { Inches } from '../../measure/inches.ts';
import { INCH_RULER, type Ruler } from '../../measure/ruler.ts';
import type { Value } from '../../recipe/schema.ts';
import type { Allotment, AllottedStrip } from './allotment.ts';

/** Strips that are cut alike. */
export interface StripInstruction {
  readonly value: Value;
  /** How many strips. */
  readonly times: number;
  /** Their numbers in the bundle. */
  readonly strips: readonly number[];
  readonly cuts: readonly {
    readonly letter: string;
    readonly length: Inches;
    readonly across: Inches;
    readonly count: number;
  }[];
  /** Set when they are squares. */
  readonly square?: true;
  /** Border or binding that takes the whole strip or its end. */
  readonly long: readonly { readonly letter: string; readonly length: Inches }[];
  readonly left: Inches;
  /** "From each of 3 dark strips cut 1 H (16½″) and 1 G (14½″)." */
  readonly words: string;
}

/** The allotment as a maker follows it: strips cut alike are one instruction, those cut most often first. */
export function instructionsOf({ strips }: Allotment, ruler: Ruler = INCH_RULER): readonly StripInstruction[] {
  const alike = new Map<string, AllottedStrip[]>();
  for (const strip of strips) {
    const key = JSON.stringify([strip.value, cutsOf(strip), strip.long]);
    alike.set(key, [...(alike.get(key) ?? []), strip]);
  }
  const made = [...alike.values()].map((same) => instruction(same, ruler));
  return made.sort((a, b) => a.value.localeCompare(b.value) * -1 || b.times - a.times);
}

function instruction(strips: readonly AllottedStrip[], ruler: Ruler): StripInstruction {
  const [first] = strips as readonly [AllottedStrip, ...AllottedStrip[]];
  const [cuts, times] = [cutsOf(first), strips.length];
  const { value, long, left, square } = first;
  const numbers = strips.map(({ number }) => number);
  const words = wordsFor(first, times, cuts, ruler);
  return { value, times, strips: numbers, cuts, long, left, words, ...(square ? { square } : {}) };
}

/** What is cut from a strip, by letter, longest first. */
function cutsOf({ groups }: AllottedStrip): StripInstruction['cuts'] {
  const found = new Map<string, StripInstruction['cuts'][number]>();
  for (const { letter, length, across, count } of groups.flatMap(({ cuts }) => cuts)) {
    const before = found.get(`${letter} ${length}`);
    found.set(`${letter} ${length}`, { letter, length, across, count: (before?.count ?? 0) + Math.ceil(count - 1e-9) });
  }
  return [...found.values()].sort((a, b) => b.length - a.length || (a.letter < b.letter ? -1 : 1));
}

function wordsFor(
  { value, long, square }: AllottedStrip,
  times: number,
  cuts: StripInstruction['cuts'],
  ruler: Ruler,
): string {
  const one = square ? 'square' : 'strip';
  const from = times === 1 ? `From 1 ${value} ${one}` : `From each of ${times} ${value} ${one}s`;
  const pieces = cuts.map(({ letter, length, across, count }) => {
    return `${count} ${letter} (${square ? ruler.size(across, length) : ruler.length(length)})`;
  });
  const rest = long.map(({ letter, length }) => `${ruler.length(length)} for ${letter}`);
  return `${from} cut ${listed([...pieces, ...rest])}.`;
}

function listed(words: readonly string[]): string {
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}
