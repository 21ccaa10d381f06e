import { type Inches, same } from '../../measure/inches.ts';
import { rulerOn } from '../../measure/ruler.ts';
import { blockAt, readMotif } from '../../pattern/motif.ts';
import type { Pattern, Size } from '../../pattern/schema.ts';
import type { Measure } from '../../quilt/quilt.ts';
import type { Candidate } from './candidates.ts';

/** Something that speaks for a size or against it. */
export interface Reason {
  readonly speaks: 'for' | 'against';
  /** One short sentence. */
  readonly words: string;
  /** How much it weighs: penalty points, 0 for what speaks for it. */
  readonly points: number;
}

type Say = (length: Inches) => string;

const GOOD = (words: string): Reason => ({ speaks: 'for', words, points: 0 });
const BAD = (words: string, points: number): Reason => ({ speaks: 'against', words, points });

/** What can be said of a candidate before it is cut: nearness, ruler, motif, counts, border. */
export function judge(pattern: Pattern, candidate: Candidate, target: Measure): readonly Reason[] {
  const say = rulerOn(pattern.house.step).length;
  return [
    nearness(candidate.finished, target, say),
    ruler(pattern, candidate, say),
    ...block(candidate, say),
    ...motif(pattern, candidate.size),
    ...border(pattern, candidate, say),
  ];
}

/** A point for each half per cent a side is off; a quilt that is too small weighs a little more. */
function nearness(finished: Measure, target: Measure, say: Say): Reason {
  const [wide, high] = [finished.width - target.width, finished.height - target.height];
  if (same(wide, 0) && same(high, 0)) return GOOD('It is just as large as asked for.');
  const weigh = (by: number, side: number) => (100 * Math.abs(by) * (by < 0 ? 1.3 : 1)) / side;
  const points = weigh(wide, target.width) + weigh(high, target.height);
  const parts = [
    ...(same(wide, 0) ? [] : [`${say(Math.abs(wide))} ${wide > 0 ? 'wider' : 'narrower'}`]),
    ...(same(high, 0) ? [] : [`${say(Math.abs(high))} ${high > 0 ? 'longer' : 'shorter'}`]),
  ];
  const words = `It is ${parts.join(' and ')} than asked for.`;
  return points < 4 ? { ...GOOD(words), points } : BAD(words, points);
}

function ruler({ house }: Pattern, { friendly }: Candidate, say: Say): Reason {
  const marks = say(house.step);
  return friendly
    ? GOOD(`Every patch falls on the ${marks} marks of the ruler.`)
    : BAD(`Some patches fall between the ${marks} marks of the ruler.`, 12);
}

function block({ usualBlock, size }: Candidate, say: Say): readonly Reason[] {
  if (usualBlock) return [GOOD(`It takes the blocks as they are, ${say(size.block)}.`)];
  return [BAD(`Its blocks are ${say(size.block)}, another size.`, 2)];
}

function border({ borders }: Pattern, { borderBy, size }: Candidate, say: Say): readonly Reason[] {
  const [changed] = Object.entries(size.borders);
  if (changed === undefined) return [];
  const [id, width] = changed;
  const name = borders.find((one) => one.id === id)?.name ?? id;
  const by = `${say(Math.abs(borderBy))} ${borderBy > 0 ? 'wider' : 'narrower'}`;
  return [BAD(`${name} is ${say(width)}, ${by} than designed.`, 1 + Math.abs(borderBy) * 0.5)];
}

/** Whole repeats of the motif, counts that a reflected motif needs, and corners that are alike. */
function motif(pattern: Pattern, size: Size): readonly Reason[] {
  const { setting } = pattern;
  const rows = readMotif(setting);
  const [wide, high] = [rows[0]?.length ?? 1, rows.length];
  const reasons: Reason[] = [];
  const both = setting.reflect === 'both';
  const odd = [
    ...((both || setting.reflect === 'across') && size.across % 2 === 1 ? ['across'] : []),
    ...((both || setting.reflect === 'down') && size.down % 2 === 1 ? ['down'] : []),
  ];
  if (setting.reflect !== undefined) {
    const words = `An odd number of blocks ${odd.join(' and ')} leaves a middle that is not reflected.`;
    reasons.push(
      odd.length === 0 ? GOOD('Even counts: the motif is reflected about the middle.') : BAD(words, 3 * odd.length),
    );
  } else if (wide > 1 || high > 1) {
    const whole = size.across % wide === 0 && size.down % high === 0;
    if (whole) reasons.push(GOOD('The motif repeats whole.'));
    else if (cornersAlike(pattern, size)) reasons.push(GOOD('All four corners have the same block.'));
    else reasons.push(BAD('The motif is cut off at an edge.', 3));
  }
  return reasons;
}

function cornersAlike(pattern: Pattern, size: Size): boolean {
  const at = blockAt({ setting: { ...pattern.setting, single: [] }, sizes: [size] });
  if (pattern.setting.kind === 'strips') return false;
  const [right, bottom] =
    pattern.setting.kind === 'on-point' ? [size.across - 1, 2 * size.down - 2] : [size.across - 1, size.down - 1];
  const corners = [0, bottom].flatMap((row) => [0, right].map((column) => at(size.id, column, row)?.name));
  return corners.every((name) => name === corners[0]);
}
