import { same } from '../measure/inches.ts';
import { given } from '../measure/traced.ts';
import { blockCount } from '../pattern/places.ts';
import type { Pattern, Size } from '../pattern/schema.ts';
import { judge, type Reason } from './find/judge.ts';
import { type FoundSize, type FoundSizes, foundIn } from './findSizes.ts';
import { workBlocks } from './workBlocks.ts';
import type { WorkedSize } from './workedOut.ts';
import { workOut } from './workOut.ts';

/** A quilt is at most so much longer than it is wide. */
const LONGEST = 1.5;
const MOST_ACROSS = 24;

/**
 * The largest sizes of a pattern that one bundle of strips is enough for, in the blocks the pattern has: strips fix how large its
 * units are. The larger, the better; then whole motifs, counts and borders that close.
 * @param most how many are answered
 */
export function findBundleSizes(pattern: Pattern, most = 8): FoundSizes {
  const nothing = { width: given(0, 'found'), height: given(0, 'found') };
  const refuse = (what: string, path: string, mend: string): FoundSizes => {
    return { target: nothing, sizes: [], met: false, findings: [{ level: 'stops', what, where: { path }, mend }] };
  };
  if (pattern.bundle === undefined)
    return refuse('The pattern is not made from a bundle of strips.', 'bundle', 'Say what a bundle of it holds.');
  const { blocks, findings } = workBlocks(pattern);
  if (blocks.length < pattern.blocks.length) return { target: nothing, sizes: [], met: false, findings };
  const enough = ownWidths(pattern).flatMap((block) => largestEnough(pattern, block, most));
  const [largest] = [...enough].sort((a, b) => areaOf(b.one) - areaOf(a.one));
  if (largest === undefined)
    return refuse(
      'One bundle is not enough for any size of this design.',
      'bundle.values',
      'Use smaller units, or take borders and binding from other cloth.',
    );
  const { finished } = largest.one.quilt;
  const sizes = enough.map((tried) => ranked(pattern, tried, areaOf(largest.one))).sort((a, b) => a.points - b.points);
  return { target: finished, sizes: sizes.slice(0, most), met: true, findings: [] };
}

function ownWidths({ sizes }: Pattern): readonly number[] {
  const all = sizes.map(({ block }) => block);
  return all.filter((width, i) => all.findIndex((one) => same(one, width)) === i);
}

/** A size worked out, for which one bundle is enough. */
interface Tried {
  readonly size: Size;
  readonly one: WorkedSize;
  readonly findings: ReturnType<typeof workOut>['findings'];
}

/** The largest shapes for which one bundle is enough, found by doubling and halving: a larger quilt takes more strips. */
function largestEnough(pattern: Pattern, block: number, most: number): readonly Tried[] {
  const shapes = shapesOf(pattern, block);
  const known = new Map<number, Tried | null>();
  const at = (i: number): Tried | null => {
    const before = known.get(i);
    if (before !== undefined) return before;
    const found = tried(pattern, shapes[i] as Size);
    known.set(i, found);
    return found;
  };
  // From small to large, for what is far too large takes longest to be told.
  let [least, beyond] = [-1, 0];
  while (beyond < shapes.length && at(beyond) !== null)
    [least, beyond] = [beyond, Math.min(shapes.length, 2 * beyond + 1)];
  while (beyond - least > 1) {
    const middle = Math.floor((least + beyond) / 2);
    if (at(middle) === null) beyond = middle;
    else least = middle;
  }
  // Shapes of about as many blocks differ in their borders: those next to the bound are tried one by one.
  const first = Math.max(0, least - most);
  const near = Array.from({ length: Math.min(shapes.length, least + 3) - first }, (_, i) => at(first + i));
  return near.filter((one) => one !== null);
}

/** Shapes no longer than a quilt is, by how many blocks they have. */
function shapesOf({ setting }: Pattern, block: number): readonly Size[] {
  const shapes: Size[] = [];
  for (let across = 1; across <= MOST_ACROSS; across += 1)
    for (let down = across; down <= Math.ceil(across * LONGEST); down += 1)
      shapes.push({ id: 'found', name: 'Found', across, down, block, borders: {} });
  return shapes.sort((a, b) => blockCount(setting, a) - blockCount(setting, b) || a.across - b.across);
}

function tried(pattern: Pattern, size: Size): Tried | null {
  const { sizes, findings } = workOut({ ...pattern, sizes: [size], setting: { ...pattern.setting, single: [] } });
  const [one] = sizes;
  return one?.bundle?.oneIsEnough === true ? { size, one, findings } : null;
}

function areaOf({ quilt }: WorkedSize): number {
  return quilt.finished.width.value * quilt.finished.height.value;
}

/** With a point for every hundredth that it is smaller than the largest. */
function ranked(pattern: Pattern, { size, one, findings }: Tried, largest: number): FoundSize {
  const { finished } = one.quilt;
  const whole = { width: finished.width.value, height: finished.height.value };
  const candidate = { size, finished: whole, friendly: true, usualBlock: true, borderBy: 0 };
  // How near it is to itself says nothing.
  const [, ...own] = judge(pattern, candidate, whole);
  const smaller = 100 * (1 - areaOf(one) / largest);
  return foundIn(pattern, one, findings, [bundleReason(one, smaller), ...own], whole);
}

function bundleReason({ bundle }: WorkedSize, smaller: number): Reason {
  const { light, medium, dark } = bundle?.bundle.values ?? { light: 0, medium: 0, dark: 0 };
  const used = bundle?.allotment.strips.length ?? 0;
  const words = `One bundle is enough: ${used} of its ${light + medium + dark} strips are cut.`;
  return { speaks: 'for', words, points: smaller };
}
