import type { Finding, Level } from '../../shared/measure/finding.ts';
import type { WorkedOut } from '../../shared/workroom/workedOut.ts';
import { lowerFirst } from '../parts/words.ts';

/** The truth about fit in one line, and where a click on it goes. */
export interface Fit {
  readonly level: Level | 'fits';
  readonly words: string;
  /** The finding the line speaks of. */
  readonly first?: Finding;
  /** Everything found, what stops first. */
  readonly all: readonly Finding[];
}

const RANK: Readonly<Record<Level, number>> = { stops: 0, look: 1, note: 2 };

/** Every finding once, what stops publishing first, the pattern's order otherwise. */
export function allFindings(worked: WorkedOut): readonly Finding[] {
  const seen = new Map<string, Finding>();
  for (const finding of [...worked.findings, ...worked.sizes.flatMap(({ findings }) => findings)]) {
    const key = [finding.level, finding.where.path, finding.where.size ?? '', finding.what].join('\n');
    if (!seen.has(key)) seen.set(key, finding);
  }
  return [...seen.values()].toSorted((a, b) => RANK[a.level] - RANK[b.level]);
}

/** How one size fits: its own findings and those that concern every size. */
export function sizeLevel(worked: WorkedOut, size: { readonly id: string; readonly name: string }): Level | 'fits' {
  const laid = worked.sizes.some((one) => one.size.id === size.id);
  if (!laid) return 'stops';
  const about = allFindings(worked).filter(
    ({ where }) => where.size === undefined || where.size === size.name || where.size === size.id,
  );
  return about.find(({ level }) => level !== 'note')?.level ?? 'fits';
}

function sizesWords(fitting: number, all: number): string {
  if (all === 1) return fitting === 1 ? 'Fits.' : 'Does not fit yet.';
  if (fitting === all) return all === 2 ? 'Fits in both sizes.' : `Fits in all ${all} sizes.`;
  return fitting === 0 ? `Fits in none of ${all} sizes.` : `Fits in ${fitting} of ${all} sizes.`;
}

/** The line at the foot of the window. */
export function fitOf(worked: WorkedOut): Fit {
  const all = allFindings(worked);
  const { sizes } = worked.pattern;
  const fitting = sizes.filter((size) => sizeLevel(worked, size) !== 'stops').length;
  const [first] = all;
  const words = sizesWords(fitting, sizes.length);
  if (first === undefined || first.level === 'note') return { level: 'fits', words, all };
  return { level: first.level, words: `${words} ${said(first)}`, first, all };
}

/** The finding as a short clause: with its size in front unless the sentence names it. */
function said(finding: Finding): string {
  const { size } = finding.where;
  return size === undefined || finding.what.includes(size) ? finding.what : `${size}: ${lowerFirst(finding.what)}`;
}
