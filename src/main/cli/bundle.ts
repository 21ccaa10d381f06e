import { type AllottedStrip, BLOCKS } from '../../shared/cloth/bundle/allotment.ts';
import type { BundleAnswer } from '../../shared/cloth/bundle/bundleFor.ts';
import { type OneOf, oneOf } from '../../shared/cloth/bundle/squares.ts';
import { stress, type Trial } from '../../shared/cloth/bundle/stress.ts';
import type { Units } from '../../shared/measure/metric.ts';
import { type Ruler, rulerIn } from '../../shared/measure/ruler.ts';
import { setBundle } from '../../shared/pattern/edits/index.ts';
import type { Bundle, Pattern } from '../../shared/pattern/schema.ts';
import { Refused } from '../refusal.ts';
import { tableText } from './table.ts';

/**
 * The pattern made from a bundle: its own, or forty strips as usual, or what the words say of one.
 * @param words such as "24 light 16 dark 2.5 x 41"; true for none
 */
export function fromBundle(pattern: Pattern, words: string | true): Pattern {
  const change = words === true ? {} : bundleOf(words);
  return pattern.bundle !== undefined && words === true ? pattern : setBundle.apply(pattern, change);
}

const COUNT = /(\d+)\s*(light|medium|dark)\b/g;
const MEASURE = /(\d+(?:\.\d+)?)\s*[x×]\s*(\d+(?:\.\d+)?)/;

function bundleOf(words: string): Partial<Bundle> {
  const counts = [...words.matchAll(COUNT)];
  const rest = words
    .replace(COUNT, '')
    .replace(MEASURE, '')
    .replace(/[\s,]+/g, '');
  const [, strip, length] = MEASURE.exec(words) ?? [];
  if (rest !== '' || (counts.length === 0 && strip === undefined)) {
    const like = 'such as “24 light 16 dark”, “2.5 x 42”, or both';
    throw new Refused('bad-input', `“${words}” says nothing of a bundle: write how many of each value, ${like}.`);
  }
  const many = Object.fromEntries(counts.map(([, n, value]) => [value, Number(n)]));
  return {
    ...(counts.length === 0 ? {} : { values: { light: 0, medium: 0, dark: 0, ...many } }),
    ...(strip === undefined ? {} : { strip: Number(strip), length: Number(length) }),
  };
}

/** The allotment and the stress test of one size, as plain data. */
export function bundleFacts(answer: BundleAnswer, units: Units): object {
  const { bundle, wants, oneIsEnough, bundles, fewest, allotment, instructions } = answer;
  return {
    ...bundle,
    oneIsEnough,
    bundles,
    fewest,
    use: allotment.values,
    short: allotment.short,
    clashes: allotment.clashes,
    near: allotment.near,
    outside: wants.outside,
    strips: allotment.strips.map(stripFacts),
    instructions: instructions.map(({ words, times, value, strips, left }) => ({ words, times, value, strips, left })),
    stress: stress(wants, bundle, units),
  };
}

function stripFacts({ number, value, fabric, groups, long, left, laid }: AllottedStrip): object {
  const cut = groups.map(({ place, cuts, length }) => ({ block: place === null ? null : place + 1, length, cuts }));
  const lies = laid?.map(({ group, ...box }) => ({ letters: group.cuts.map(({ letter }) => letter), ...box }));
  return { number, value, fabric, cut, long, left, ...(lies === undefined ? {} : { laid: lies }) };
}

/** The same as text: is one enough, what is to spare, how the strips are cut, and what breaks first. */
export function bundleText(answer: BundleAnswer, units: Units): string {
  const { bundle, wants, oneIsEnough, bundles, allotment, instructions, fewest } = answer;
  const ruler = rulerIn(units);
  const { light, medium, dark } = bundle.values;
  const one = oneOf(bundle);
  const strips = `${light + medium + dark} ${one}s ${ruler.size(bundle.strip, bundle.length)}`;
  const enough = oneIsEnough
    ? 'one bundle is enough'
    : bundles === null
      ? 'no number of bundles is enough'
      : `it takes ${bundles} bundles`;
  const least =
    fewest === null
      ? []
      : [`    The fewest that would do: ${fewest.light} light, ${fewest.medium} medium, ${fewest.dark} dark.`];
  const use = allotment.values.map(({ value, have, forBlocks, least: bound, forLong, spare }) => {
    const proof = forBlocks === bound ? 'fewer cannot do' : `at least ${bound}`;
    return `    ${value}: ${have} ${one}s; ${forBlocks} for ${BLOCKS} (${proof})${one === 'square' ? '' : `, ${forLong} whole for borders and binding`}, ${spare} to spare`;
  });
  return [
    `  From a bundle of ${strips}: ${enough}.`,
    [...use, ...least].join('\n'),
    instructions
      .map(({ words, left }) => `    ${words}${one === 'square' ? '' : ` ${ruler.length(left)} left.`}`)
      .join('\n'),
    '  What it bears, and what breaks first',
    trialsText(stress(wants, bundle, units), one, ruler),
  ].join('\n\n');
}

const TRIALS: Readonly<Record<Trial['what'], (n: number, one: OneOf, ruler: Ruler) => string>> = {
  fewer: (n, one) => `${n} ${one}s fewer`,
  shorter: (n, one, ruler) => `${one}s ${ruler.length(n)} ${one === 'square' ? 'smaller' : 'shorter'}`,
  pinked: () => 'pinked edges',
  duplicates: (n) => `${n} pairs alike`,
  split: (n) => `${n} of the other value`,
  rejected: (n, one) => `${n} ${one}s rejected`,
};

function trialsText(trials: readonly Trial[], one: OneOf, ruler: Ruler): string {
  const rows = trials.map(({ what, value, bears, breaks }) => [value ?? '', TRIALS[what](bears, one, ruler), breaks]);
  return tableText(
    [{ title: one === 'square' ? 'Squares' : 'Strips' }, { title: 'Bears' }, { title: 'Then' }],
    rows,
    4,
  );
}
