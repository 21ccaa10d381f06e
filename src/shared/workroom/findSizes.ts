import type { Finding } from '../measure/finding.ts';
import { yardsText } from '../measure/fraction.ts';
import { METRE, type Units, unitsOn } from '../measure/metric.ts';
import { rulerOn } from '../measure/ruler.ts';
import { type Steps, toTheEnd } from '../measure/steps.ts';
import type { TracedSize } from '../measure/traced.ts';
import type { Pattern } from '../pattern/schema.ts';
import { closingsOf } from '../quilt/find/closingsOf.ts';
import { bestClosing } from '../quilt/find/closingWords.ts';
import type { Target } from '../quilt/find/target.ts';
import type { Measure } from '../quilt/quilt.ts';
import { type Candidate, candidates } from './find/candidates.ts';
import { judge, type Reason } from './find/judge.ts';
import { workBlocks } from './workBlocks.ts';
import type { WorkedSize } from './workedOut.ts';
import { workOut } from './workOut.ts';

export type { Reason } from './find/judge.ts';

/** A size that was found, with what speaks for it and against it. */
export interface FoundSize {
  readonly across: number;
  readonly down: number;
  /** Finished width of a block, inches. */
  readonly block: number;
  /** Border widths that differ from the design, by the border's id, inches. */
  readonly borders: Readonly<Record<string, number>>;
  readonly finished: TracedSize;
  /** Finished inches beyond the target; below zero it is smaller. */
  readonly off: Measure;
  /** Yards of all fabrics together, binding and backing included. */
  readonly yards: number;
  /** Penalty points: the fewer, the better. */
  readonly points: number;
  readonly reasons: readonly Reason[];
}

export interface FoundSizes {
  readonly target: TracedSize;
  /** The best first. */
  readonly sizes: readonly FoundSize[];
  /** Whether one of them comes near enough to be called this size. */
  readonly met: boolean;
  /** Why none does, and what would come nearest; or what keeps the pattern from being laid out at all. */
  readonly findings: readonly Finding[];
}

/** A side that is off by no more than so much of itself is near enough (a tenth of a mattress's drop or so). */
const NEAR = 0.05;
/** So many candidates are cut out on paper to compare their cloth. */
const CUT_OUT = 14;

/**
 * The best sizes of a pattern for a target: by nearness, patches on the ruler, whole motifs, counts, borders that close and
 * the cloth they take. Borders and sashing follow the design; no size of the pattern is changed.
 * @param most how many are answered
 */
export function findSizes(pattern: Pattern, target: Target, most = 8): FoundSizes {
  return toTheEnd(findSizesInSteps(pattern, target, most));
}

/** The same in steps: one for each size that is laid out and cut. */
export function* findSizesInSteps(pattern: Pattern, target: Target, most = 8): Steps<FoundSizes> {
  const { width, height } = target.size;
  const wished = { width: width.value, height: height.value };
  const { blocks, findings } = workBlocks(pattern);
  if (blocks.length < pattern.blocks.length) return { target: target.size, sizes: [], met: false, findings };
  const judged = candidates(pattern, blocks, wished)
    .map((candidate) => ({ candidate, reasons: judge(pattern, candidate, wished) }))
    .sort((a, b) => pointsOf(a.reasons) - pointsOf(b.reasons));
  const best = judged.slice(0, CUT_OUT);
  const cut: FoundSize[] = [];
  for (const [done, { candidate, reasons }] of best.entries()) {
    const { across, down, block } = candidate.size;
    yield {
      doing: `${across} by ${down} blocks of ${rulerOn(pattern.house.step).length(block)}`,
      done,
      of: best.length,
    };
    cut.push(...cutOut(pattern, candidate, reasons, wished));
  }
  const sizes = withCloth(cut, unitsOn(pattern.house.step))
    .sort((a, b) => a.points - b.points)
    .slice(0, most);
  const met = sizes.some(({ off }) => isNear(off.width, wished.width) && isNear(off.height, wished.height));
  return { target: target.size, sizes, met, findings: met ? [] : notMet(pattern, judged, sizes, wished) };
}

function isNear(off: number, side: number): boolean {
  return Math.abs(off) <= Math.max(side * NEAR, 1);
}

function pointsOf(reasons: readonly Reason[]): number {
  return reasons.reduce((sum, { points }) => sum + points, 0);
}

/** A candidate laid out and cut; nothing when it cannot be. */
function cutOut(
  pattern: Pattern,
  { size }: Candidate,
  reasons: readonly Reason[],
  target: Measure,
): readonly FoundSize[] {
  const worked = workOut({ ...pattern, sizes: [size], setting: { ...pattern.setting, single: [] } });
  const [one] = worked.sizes;
  return one === undefined ? [] : [foundIn(pattern, one, worked.findings, reasons, target)];
}

/** A size as it is answered, with what is known of it once it is worked out. */
export function foundIn(
  pattern: Pattern,
  one: WorkedSize,
  findings: readonly Finding[],
  reasons: readonly Reason[],
  target: Measure,
): FoundSize {
  const { across, down, block, borders } = one.size;
  const { finished } = one.quilt;
  const all = [...reasons, ...fitReasons(pattern, one, findings)];
  return {
    across,
    down,
    block,
    borders,
    finished,
    off: { width: finished.width.value - target.width, height: finished.height.value - target.height },
    yards: yardsOf(one),
    points: pointsOf(all),
    reasons: all,
  };
}

/** Whether pieced borders close, and whatever else does not fit. */
function fitReasons(pattern: Pattern, { quilt }: WorkedSize, findings: readonly Finding[]): readonly Reason[] {
  const pieced = pattern.borders.flatMap((border): Reason[] => {
    const closings = closingsOf(quilt, border.id, pattern.house);
    if (closings === null) return [];
    if (closings.closes) return [{ speaks: 'for', words: `${border.name} closes on all sides.`, points: 0 }];
    const way = bestClosing(closings, rulerOn(pattern.house.step).length);
    const words = `${border.name} does not close. ${way ?? ''}`.trim();
    return [{ speaks: 'against', words, points: closings.spacers.length > 0 ? 4 : 15 }];
  });
  const told = new Set(pattern.borders.map((_, i) => `borders[${i}]`));
  const others = findings.filter(({ level, where }) => level === 'stops' && !told.has(where.path));
  const [first] = others;
  return first === undefined ? pieced : [...pieced, { speaks: 'against', words: first.what, points: 30 }];
}

function yardsOf({ cloth }: WorkedSize): number {
  return cloth.needs.reduce((sum, { yards }) => sum + yards.value, cloth.backing.yards.value);
}

/** About so much cloth: to the eighth of a yard, or the tenth of a metre. */
export function clothText(yards: number, units: Units): string {
  const step = units === 'inches' ? 1 / 8 : METRE / 10;
  return yardsText(Math.round(yards / step) * step, units);
}

/** Cloth for the size of the quilt, compared with the thriftiest of them. */
function withCloth(found: readonly FoundSize[], units: Units): FoundSize[] {
  const share = ({ yards, finished }: FoundSize) => yards / (finished.width.value * finished.height.value);
  const least = Math.min(...found.map(share));
  return found.map((size) => {
    const more = share(size) / least - 1;
    const words = `It takes ${clothText(size.yards, units)} of cloth in all`;
    const reason: Reason =
      more < 0.05
        ? { speaks: 'for', words: `${words}, little for its size.`, points: 10 * more }
        : {
            speaks: 'against',
            words: `${words}, ${Math.round(more * 100)} % more than it might for its size.`,
            points: 10 * more,
          };
    return { ...size, points: size.points + reason.points, reasons: [...size.reasons, reason] };
  });
}

function notMet(
  pattern: Pattern,
  judged: readonly { readonly candidate: Candidate }[],
  sizes: readonly FoundSize[],
  target: Measure,
): readonly Finding[] {
  const say = rulerOn(pattern.house.step).length;
  const sized = (width: number, height: number) => `${say(width)} × ${say(height)}`;
  const wish = sized(target.width, target.height);
  const where = { path: 'sizes', on: 'quilt' };
  const [nearest] = [...sizes].sort((a, b) => distance(a.off) - distance(b.off));
  if (nearest === undefined) {
    const why =
      judged.length === 0
        ? 'no block of it can be cut on the ruler at any size tried'
        : 'none of those near it can be laid out';
    return [{ level: 'stops', what: `No size of this design comes to ${wish}: ${why}.`, where }];
  }
  const { finished, across, down, block } = nearest;
  const at = sized(finished.width.value, finished.height.value);
  const what = `No size of this design comes near ${wish}: the nearest is ${at}, ${across} by ${down} blocks of ${say(block)}.`;
  return [{ level: 'stops', what, where, mend: whyNot(pattern, nearest, target) }];
}

function distance(off: Measure): number {
  return Math.abs(off.width) + Math.abs(off.height);
}

/** What keeps the nearest size from coming nearer, and what would help. */
function whyNot({ borders }: Pattern, { across, down, off, block }: FoundSize, target: Measure): string {
  const bordered = borders.length > 0 ? ' with its borders' : '';
  if ((across === 1 && off.width > 0) || (down === 1 && off.height > 0))
    return `A single block${bordered} is larger than that already: use smaller blocks or narrower borders.`;
  const large = off.width < 0 && off.height < 0 && target.width * target.height > 4 * block * block;
  if (large && across * down > 1000) return 'More blocks than one quilt may have would be needed: use larger blocks.';
  return 'One block more or less is a large step here: change the width of a border, or the block.';
}
