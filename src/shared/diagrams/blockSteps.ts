import type { Inches } from '../measure/inches.ts';
import type { BlockPart, Piecing, Ring, Rounds, Row, UnitLeaf } from '../piecing/piecing.ts';
import { childrenOf, isLeaf, leavesOf } from '../piecing/tree.ts';
import type { PressingPlan } from '../pressing/pressing.ts';
import { below } from './apart.ts';
import { apartFigure, type SewnBlock } from './blockParts.ts';
import type { Figure } from './figure.ts';
import type { FabricOf } from './marks.ts';
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
  /** Which logs, from 0, when they are logs. */
  readonly logs?: { readonly first: number; readonly last: number };
  readonly figure: Figure;
}

/**
 * Sewing a block together, step by step: inner parts first, each distinct one once; rows pulled apart with the pressing of
 * their seams, then the rows joined; logs a round (four) at a time, the part just sewn in full tone.
 * @param grid finished inches of one grid unit
 */
export function blockStepFigures(
  piecing: Piecing,
  grid: Inches,
  fabricOf: FabricOf,
  pressing: PressingPlan,
): readonly BlockStep[] {
  return stepsOf({ piecing, grid, fabricOf, pressing }, piecing.root, '', new Set());
}

function stepsOf(block: SewnBlock, part: BlockPart, path: string, told: Set<string>): readonly BlockStep[] {
  if (isLeaf<UnitLeaf>(part)) return [];
  const likeness = likenessOf(part);
  if (told.has(likeness)) return [];
  told.add(likeness);
  if (part.kind === 'row') return rowSteps(block, part, path, told);
  return part.kind === 'ring' ? ringSteps(block, part, path, told) : logSteps(block, part, path, told);
}

/** What a part is made of, wherever it stands: two alike are told once. */
function likenessOf(part: BlockPart): string {
  const { x, y } = part.box;
  const leaf = ({ unit, turn, box }: UnitLeaf) => `${unit}|${turn.quarters}${turn.mirrored}|${box.x - x},${box.y - y}`;
  return leavesOf<UnitLeaf>(part).map(leaf).join(';');
}

/** A row of units alone. */
function isPlainRow(part: BlockPart): part is Row<UnitLeaf> {
  return part.kind === 'row' && part.parts.every((inner) => isLeaf<UnitLeaf>(inner));
}

function rowSteps(block: SewnBlock, row: Row<UnitLeaf>, path: string, told: Set<string>): readonly BlockStep[] {
  const within = row.parts.flatMap((part, i) => (isPlainRow(part) ? [] : stepsOf(block, part, below(path, i), told)));
  const plainRows = new Set(row.parts.flatMap((part, i) => (isPlainRow(part) ? [below(path, i)] : [])));
  const rowsFigure = () =>
    apartFigure(
      block,
      row,
      path,
      (at) => at === path || plainRows.has(at),
      (at) => plainRows.has(at),
      'Units laid out in rows.',
    );
  const joined = apartFigure(
    block,
    row,
    path,
    (at) => at === path,
    (at) => at === path,
    joinAlt(row),
  );
  const rows: BlockStep[] = plainRows.size > 0 ? [{ kind: 'rows', part: row, path, figure: rowsFigure() }] : [];
  return [...within, ...rows, { kind: 'join', part: row, path, figure: joined }];
}

function joinAlt(row: Row<UnitLeaf>): string {
  const lying = row.along === 'across' ? 'side by side' : 'one below the other';
  return `${row.parts.length} parts ${lying}, with the way each seam between them is pressed.`;
}

const LOGS_A_ROUND = 4;

function logSteps(block: SewnBlock, rounds: Rounds<UnitLeaf>, path: string, told: Set<string>): readonly BlockStep[] {
  const within = childrenOf<UnitLeaf>(rounds).flatMap((part, i) => stepsOf(block, part, below(path, i), told));
  const steps: BlockStep[] = [];
  for (let first = 0; first < rounds.logs.length; first += LOGS_A_ROUND) {
    const last = Math.min(first + LOGS_A_ROUND, rounds.logs.length) - 1;
    const alt = `Logs ${first + 1} to ${last + 1} sewn on, with the way each seam is pressed.`;
    const figure = roundFigure(block, rounds, path, first, last, alt);
    steps.push({ kind: 'logs', part: rounds, path, logs: { first, last }, figure });
  }
  return [...within, ...steps];
}

function ringSteps(block: SewnBlock, ring: Ring<UnitLeaf>, path: string, told: Set<string>): readonly BlockStep[] {
  const within = childrenOf<UnitLeaf>(ring).flatMap((part, i) => stepsOf(block, part, below(path, i), told));
  const alt = 'Four parts sewn about a middle in the order of their numbers, the first with a partial seam.';
  return [...within, { kind: 'ring', part: ring, path, figure: roundFigure(block, ring, path, 0, 3, alt) }];
}
