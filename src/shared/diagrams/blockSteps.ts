import type { Inches } from '../measure/inches.ts';
import { likenessIn } from '../piecing/likeness.ts';
import type { BlockPart, Piecing, Ring, Rounds, Row, UnitKey, UnitLeaf } from '../piecing/piecing.ts';
import { childrenOf, isLeaf, isMadeByItself } from '../piecing/tree.ts';
import type { PressingPlan } from '../pressing/pressing.ts';
import { below } from './apart.ts';
import { apartFigure, type SewnBlock } from './blockParts.ts';
import type { Figure } from './figure.ts';
import type { FabricOf } from './marks.ts';
import { ringFigures } from './ringFigures.ts';
import { roundFigure } from './roundFigure.ts';

/** One step of sewing a block together, with its figure; the words are left to the writing. */
export interface BlockStep {
  /**
   * 'rows': units are sewn into rows. 'join': parts are sewn to one another. 'logs': logs are sewn about a core. 'ring': the
   * arms of a ring are sewn about a core, the first only part of the way.
   */
  readonly kind: 'rows' | 'join' | 'logs' | 'ring';
  /** What is being made, and its path in the tree. */
  readonly part: BlockPart;
  readonly path: string;
  /** How many of what is being made one block takes. */
  readonly times: number;
  /** Of a ring: its first arm sewn part of the way, the other three, the first seam finished. */
  readonly stage?: 'start' | 'round' | 'finish';
  /** Which logs, from 0, when they are logs. */
  readonly logs?: { readonly first: number; readonly last: number };
  readonly figure: Figure;
}

/**
 * Sewing a block together, step by step. A recipe that stands in the block is made first, each distinct one once however
 * often and however turned it is taken, and is then one piece like a unit. Rows are pulled apart with the pressing of
 * their seams, then joined; logs a round (four) at a time, the part just sewn in full tone.
 * @param grid finished inches of one grid unit
 * @param letters a letter to stand on every unit of a key
 */
export function blockStepFigures(
  piecing: Piecing,
  grid: Inches,
  fabricOf: FabricOf,
  pressing: PressingPlan,
  letters: Readonly<Record<UnitKey, string>> = {},
): readonly BlockStep[] {
  const block = { piecing, grid, fabricOf, pressing, letters };
  const made = madeFirst(piecing);
  return [
    ...made.flatMap(({ part, path, times }) => stepsOf(block, part, path, times)),
    ...stepsOf(block, piecing.root, '', 1),
  ];
}

interface Made {
  readonly part: BlockPart;
  readonly path: string;
  readonly times: number;
}

/** The distinct recipes within a block, innermost first. */
function madeFirst({ root, units }: Piecing): readonly Made[] {
  const likeness = likenessIn(units);
  const found = new Map<string, Made>();
  const look = (part: BlockPart, path: string): void => {
    childrenOf<UnitLeaf>(part).forEach((inner, i) => {
      look(inner, below(path, i));
    });
    if (path === '' || isLeaf<UnitLeaf>(part) || !isMadeByItself<UnitLeaf>(part)) return;
    const { key } = likeness(part);
    const known = found.get(key);
    found.set(key, known === undefined ? { part, path, times: 1 } : { ...known, times: known.times + 1 });
  };
  look(root, '');
  return [...found.values()];
}

/** Sewing one part, whose own recipes are made already. */
function stepsOf(block: SewnBlock, part: BlockPart, path: string, times: number): readonly BlockStep[] {
  if (isLeaf<UnitLeaf>(part)) return [];
  if (part.kind === 'row') return rowSteps(block, part, path, times);
  return part.kind === 'ring' ? ringSteps(block, part, path, times) : logSteps(block, part, path, times);
}

/** Steps for the children that are not yet whole: rows within rows, which the parent shows, are left to it. */
function innerSteps(block: SewnBlock, part: BlockPart, path: string, times: number): readonly BlockStep[] {
  return childrenOf<UnitLeaf>(part).flatMap((inner, i) => {
    if (isMadeByItself<UnitLeaf>(inner) || isPlainRow(inner)) return [];
    return stepsOf(block, inner, below(path, i), times);
  });
}

/** A row of units and of recipes that are made already. */
function isPlainRow(part: BlockPart): part is Row<UnitLeaf> {
  return part.kind === 'row' && part.name === undefined && part.parts.every((inner) => isMadeByItself<UnitLeaf>(inner));
}

function rowSteps(block: SewnBlock, row: Row<UnitLeaf>, path: string, times: number): readonly BlockStep[] {
  const within = innerSteps(block, row, path, times);
  const plainRows = new Set(row.parts.flatMap((part, i) => (isPlainRow(part) ? [below(path, i)] : [])));
  const apart = (at: string) => at === path || plainRows.has(at);
  const rows = (): BlockStep => {
    const figure = apartFigure(block, row, path, apart, (at) => plainRows.has(at), 'Units laid out in rows.');
    return { kind: 'rows', part: row, path, times, figure };
  };
  const only = (at: string) => at === path;
  const join: BlockStep = {
    kind: 'join',
    part: row,
    path,
    times,
    figure: apartFigure(block, row, path, only, only, joinAlt(row)),
  };
  return [...within, ...(plainRows.size > 0 ? [rows()] : []), join];
}

function joinAlt(row: Row<UnitLeaf>): string {
  const lying = row.along === 'across' ? 'side by side' : 'one below the other';
  return `${row.parts.length} parts ${lying}, with the way each seam between them is pressed.`;
}

const LOGS_A_ROUND = 4;

function logSteps(block: SewnBlock, rounds: Rounds<UnitLeaf>, path: string, times: number): readonly BlockStep[] {
  const core = isPlainRow(rounds.core) ? stepsOf(block, rounds.core, below(path, 0), times) : [];
  const steps: BlockStep[] = [];
  for (let first = 0; first < rounds.logs.length; first += LOGS_A_ROUND) {
    const last = Math.min(first + LOGS_A_ROUND, rounds.logs.length) - 1;
    const alt = `Logs ${first + 1} to ${last + 1} sewn on, with the way each seam is pressed.`;
    const figure = roundFigure(block, rounds, path, first, last, alt);
    steps.push({ kind: 'logs', part: rounds, path, times, logs: { first, last }, figure });
  }
  return [...core, ...innerSteps(block, rounds, path, times), ...steps];
}

function ringSteps(block: SewnBlock, ring: Ring<UnitLeaf>, path: string, times: number): readonly BlockStep[] {
  const within = childrenOf<UnitLeaf>(ring).flatMap((part, i) =>
    isMadeByItself<UnitLeaf>(part) ? [] : stepsOf(block, part, below(path, i), times),
  );
  const figures = ringFigures(block, ring, path);
  const stages = (['start', 'round', 'finish'] as const).map((stage): BlockStep => {
    return { kind: 'ring', part: ring, path, times, stage, figure: figures[stage] };
  });
  return [...within, ...stages];
}
