import { same } from '../measure/inches.ts';
import type { Traced, TracedSize } from '../measure/traced.ts';
import type { Inline, Words } from './book.ts';

/** A number bound to the model, shown as what it counts. */
export function field(traced: Traced): Inline {
  const show = traced.unit === 'inch' ? 'length' : traced.unit === 'yard' ? 'yards' : 'count';
  return { field: traced, show };
}

export function strong(text: string): Inline {
  return { strong: text };
}

/** What parts the values of one number in several sizes. */
const BETWEEN_SIZES = ' · ';

/** The names of some sizes, in order; null stands for all sizes, whose order the maker knows. */
export type Named = readonly string[] | null;

/**
 * One number in every size, in the pattern's order; said once when it is the same in all. Where it is not said for every
 * size of the pattern, each number has its size's name behind it, for the order alone would mislead.
 */
export function inSizes(values: readonly Traced[], named: Named = null): Words {
  const [first] = values;
  if (first === undefined) return [];
  if (values.every((value) => same(value.value, first.value))) return [field(first)];
  return between(
    values.map((value) => [field(value)]),
    named,
  );
}

function between(each: readonly Words[], named: Named): Words {
  return each.flatMap((words, i) => [
    ...(i === 0 ? [] : [BETWEEN_SIZES]),
    ...words,
    ...(named === null ? [] : [` (${named[i]})`]),
  ]);
}

/** A size of cloth: `8½″ × 4½″`, or `8½″ square`. */
export function sizeWords({ width, height }: TracedSize): Words {
  if (same(width.value, height.value)) return [field(width), ' square'];
  return [field(width), ' × ', field(height)];
}

/** A size of cloth in every size of the pattern, said once when it is the same in all; “square” is said once, too. */
export function sizesWords(sizes: readonly TracedSize[], named: Named = null): Words {
  const [first] = sizes;
  if (first === undefined) return [];
  const alike = ({ width, height }: TracedSize) =>
    same(width.value, first.width.value) && same(height.value, first.height.value);
  if (sizes.every(alike)) return sizeWords(first);
  const square = ({ width, height }: TracedSize) => same(width.value, height.value);
  if (named === null && sizes.every(square)) return [...inSizes(sizes.map(({ width }) => width)), ' square'];
  return between(sizes.map(sizeWords), named);
}

type Sentence = readonly (string | Traced)[];

/**
 * The same sentence in every size of the pattern: its words once, each of its numbers in every size. A width and a height
 * with a × between them stay together. Null when the sentences do not run alike.
 */
export function alike(sentences: readonly Sentence[], named: Named = null): Words | null {
  const [first] = sentences;
  if (first === undefined) return null;
  const words: Inline[] = [];
  for (let i = 0; i < first.length; i += 1) {
    const here = partsAt(sentences, i);
    if (here === null) return null;
    if (typeof here === 'string') {
      words.push(here);
      continue;
    }
    const heights = first[i + 1] === ' × ' ? partsAt(sentences, i + 2) : null;
    if (heights === null || typeof heights === 'string') {
      words.push(...inSizes(here, named));
    } else {
      words.push(
        ...sizesWords(
          here.map((width, k) => ({ width, height: heights[k] as Traced })),
          named,
        ),
      );
      i += 2;
    }
  }
  return sentences.every((sentence) => sentence.length === first.length) ? words : null;
}

/** What stands at one place of every sentence: the same words, or a number each; null when they differ in kind. */
function partsAt(sentences: readonly Sentence[], i: number): string | readonly Traced[] | null {
  const all = sentences.map((sentence) => sentence[i]);
  const [first] = all;
  if (typeof first === 'string') return all.every((part) => part === first) ? first : null;
  const numbers = all.filter((part): part is Traced => typeof part === 'object');
  return numbers.length === all.length ? numbers : null;
}

/** "A", "A and B", "A, B and C". */
export function listed(items: readonly string[]): string {
  const last = items.at(-1) ?? '';
  return items.length < 2 ? last : `${items.slice(0, -1).join(', ')} and ${last}`;
}

/** Words as they were typed, set as one line of running text: breaks and tabs are spaces. */
export function onOneLine(text: string): string {
  return text.trim().replace(/\s*[\n\r\t\u2028\u2029]\s*/g, ' ');
}

/** The words as plain text, for tests, search and whoever cannot show fields. */
export function plainText(words: Words, text: (traced: Traced) => string): string {
  return words
    .map((part) => (typeof part === 'string' ? part : 'strong' in part ? part.strong : text(part.field)))
    .join('');
}
