import type { Inches } from '../../measure/inches.ts';
import type { Bundle } from '../../pattern/schema.ts';
import { fillSheets } from '../sheets/fillSheets.ts';
import { fitsSheet } from '../sheets/planSheets.ts';
import type { Kind } from '../strips/kinds.ts';
import { CLASH, type Penalties } from './assign.ts';
import type { LaidGroup } from './squareLaid.ts';
import type { Group } from './wants.ts';

/** Whether a bundle is of squares: as long as they are wide. */
export function isSquares({ strip, length }: Pick<Bundle, 'strip' | 'length'>): boolean {
  return Math.abs(strip - length) < 1e-9;
}

/** What one piece of a bundle is called. */
export type OneOf = 'strip' | 'square';

/** What a bundle is of. */
export function oneOf(bundle: Pick<Bundle, 'strip' | 'length'>): OneOf {
  return isSquares(bundle) ? 'square' : 'strip';
}

/** Squares and what is cut from each. */
export interface FilledSquares {
  readonly squares: readonly (readonly Group[])[];
  /** Where they lie on each square, as far as it was planned. */
  readonly laid: readonly (readonly LaidGroup[])[];
  readonly clashes: number;
  readonly near: number;
}

/** The pieces of some groups, equal ones together; a group's share of a batch is whole pieces. */
export function kindsOf(groups: readonly Group[]): readonly Kind[] {
  const kinds = new Map<string, { width: Inches; height: Inches; count: number; turns: true }>();
  for (const { length, across, count } of groups.flatMap(({ cuts }) => cuts)) {
    const key = `${Math.max(length, across)} ${Math.min(length, across)}`;
    const before = kinds.get(key) ?? { width: length, height: across, count: 0, turns: true };
    kinds.set(key, { ...before, count: before.count + Math.ceil(count - 1e-9) });
  }
  return [...kinds.values()];
}

/** Whether all pieces of a group can be cut from one square. */
export function fitsSquare(group: Group, side: Inches): boolean {
  return areOnOne([group], side);
}

function areOnOne(groups: readonly Group[], side: Inches): boolean {
  const kinds = kindsOf(groups);
  const area = kinds.reduce((sum, { width, height, count }) => sum + width * height * count, 0);
  const square = { width: side, height: side };
  if (area > side * side + 1e-6 || kinds.some((kind) => !fitsSheet(kind, square))) return false;
  return fillSheets(kinds, square).reduce((sum, { times }) => sum + times, 0) <= 1;
}

/**
 * Fills squares with groups, the largest first, each into the first square that still holds all of it by cuts from edge to edge and
 * in which it meets nothing that it may not; a new square where there is none.
 * @param mayMeet leaves what groups meet out of account, so as to do with fewer squares
 */
export function fillSquares(
  groups: readonly Group[],
  fabricOf: (square: number) => number,
  penalty: Penalties,
  mayMeet: boolean,
  holds: Holds,
): FilledSquares {
  const squares: Group[][] = [];
  let [clashes, near] = [0, 0];
  const costIn = (group: Group, square: number) => {
    let cost = 0;
    squares.forEach((own, other) => {
      if (fabricOf(other) === fabricOf(square)) for (const one of own) cost += penalty.between(group, one);
    });
    return cost;
  };
  for (const group of [...groups].sort((a, b) => areaOf(b) - areaOf(a) || a.id - b.id)) {
    const found = squares.findIndex(
      (own, square) => (mayMeet || costIn(group, square) < CLASH) && holds([...own, group]),
    );
    const square = found < 0 ? squares.length : found;
    const cost = costIn(group, square);
    clashes += Math.floor(cost / CLASH);
    near += cost % CLASH;
    squares[square] = [...(squares[square] ?? []), group];
  }
  return { squares, laid: [], clashes, near };
}

export function areaOf({ cuts }: Group): number {
  return cuts.reduce((sum, { length, across, count }) => sum + length * across * Math.ceil(count - 1e-9), 0);
}

/** Whether some groups can be cut from one square. */
export type Holds = (groups: readonly Group[]) => boolean;

/** Answers for squares of one side; asks once for what is alike, for squares are filled with few different pieces. */
export function holdsOn(side: Inches): Holds {
  return remembering((groups) => areOnOne(groups, side));
}

function remembering(asks: Holds): Holds {
  const known = new Map<string, boolean>();
  return (groups) => {
    const key = groups
      .map(({ cuts }) => cuts.map(({ length, across, count }) => `${length}x${across}x${count}`).join('+'))
      .sort()
      .join(' ');
    const before = known.get(key);
    if (before !== undefined) return before;
    const answer = asks(groups);
    known.set(key, answer);
    return answer;
  };
}
