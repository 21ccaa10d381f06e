import type { Point } from '../../drawing/turn.ts';
import { allowanceRound } from '../allowance/allowance.ts';
import { roleOf, type Work } from '../allowance/work.ts';
import { outlineOf } from './outline.ts';
import type { FoundationPlan, FoundationSection } from './sections.ts';

/** One section of a unit as it is printed at its true size to be sewn on. Inches, as the finished unit lies. */
export interface FoundationPaper {
  /** a, b, …; nothing when the unit is one section. */
  readonly letter: string;
  /** The finished section and, outside it, where its seam allowance ends. */
  readonly finished: readonly Point[];
  readonly cut: readonly Point[];
  /** What is laid and sewn on, in order. */
  readonly areas: readonly FoundationArea[];
}

export interface FoundationArea {
  /** The fabric's role; null for sections that were joined before and are laid on first. */
  readonly role: string | null;
  /** Its number in the section, or the letters of the sections that were joined. */
  readonly name: string;
  readonly corners: readonly Point[];
  /** The line along which it is sewn on; the first has none. */
  readonly seam: readonly [Point, Point] | null;
}

/** The papers of a unit, one for each section. */
export function papersOf(work: Work, plan: FoundationPlan): readonly FoundationPaper[] {
  return plan.sections.map((section, index) => {
    const base = section.base.flatMap((other) => allPatches(plan, other));
    const finished = outlineOf(work.drawing, new Set([...base, ...section.patches]));
    return {
      letter: plan.sections.length === 1 ? '' : letterOf(index),
      finished,
      cut: allowanceRound(finished, work.seam, 'blunted'),
      areas: areasOf(work, section, base),
    };
  });
}

/** a, b, … z, aa, …: small letters, for capital ones name blocks and pieces. */
export function letterOf(index: number): string {
  const last = String.fromCharCode(97 + (index % 26));
  return index < 26 ? last : letterOf(Math.floor(index / 26) - 1) + last;
}

/** Every patch on a section's paper that is its own; what was joined before has papers of its own. */
function allPatches(plan: FoundationPlan, index: number): readonly number[] {
  return (plan.sections[index] as FoundationSection).patches;
}

function areasOf(
  work: Work,
  { base, patches, seams }: FoundationSection,
  joined: readonly number[],
): readonly FoundationArea[] {
  const at = (vertex: number) => work.drawing.points[vertex] as Point;
  const ends = (seam: readonly number[] | undefined): readonly [Point, Point] | null =>
    seam === undefined ? null : [at(seam[0] as number), at(seam.at(-1) as number)];
  const laid = base.length === 0 ? 0 : 1;
  const own = patches.map((patch, i): FoundationArea => {
    return {
      role: roleOf(work, patch),
      name: String(i + 1 + laid),
      corners: outlineOf(work.drawing, new Set([patch])),
      seam: ends(seams[i - 1 + laid]),
    };
  });
  if (laid === 0) return own;
  const name = base.map(letterOf).join(' ');
  return [{ role: null, name, corners: outlineOf(work.drawing, new Set(joined)), seam: null }, ...own];
}
