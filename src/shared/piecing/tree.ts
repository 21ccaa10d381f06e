import type { Box } from '../drawing/turn.ts';
import type { Log, Part } from './piecing.ts';

/** What every leaf of a piecing tree has. */
export interface AnyLeaf {
  readonly kind: string;
  readonly box: Box;
}

const INNER = ['row', 'rounds', 'ring'] as const satisfies readonly Part<never>['kind'][];

/** Whether a part is a leaf of its tree. */
export function isLeaf<Leaf extends AnyLeaf>(part: Part<Leaf>): part is Leaf {
  return !INNER.some((kind) => kind === part.kind);
}

/** The tree with another leaf for each leaf and another box for each box. */
export function mapTree<A extends AnyLeaf, B extends AnyLeaf>(
  part: Part<A>,
  leaf: (leaf: A) => B,
  box: (box: Box) => Box,
): Part<B> {
  if (isLeaf<A>(part)) return leaf(part);
  if (part.kind === 'row') {
    return { ...part, parts: part.parts.map((inner) => mapTree(inner, leaf, box)), box: box(part.box) };
  }
  const log = (one: Log<A>): Log<B> => ({ side: one.side, part: mapTree(one.part, leaf, box) });
  const core = mapTree(part.core, leaf, box);
  if (part.kind === 'ring') return { ...part, core, logs: mapFour(part.logs, log), box: box(part.box) };
  return { ...part, core, logs: part.logs.map(log), box: box(part.box) };
}

/** The four arms of a ring, each made into another. */
export function mapFour<A, B>([a, b, c, d]: readonly [A, A, A, A], made: (one: A) => B): readonly [B, B, B, B] {
  return [made(a), made(b), made(c), made(d)];
}

/** Every leaf, in sewing order. */
export function leavesOf<Leaf extends AnyLeaf>(part: Part<Leaf>): readonly Leaf[] {
  if (isLeaf<Leaf>(part)) return [part];
  if (part.kind === 'row') return part.parts.flatMap((inner) => leavesOf<Leaf>(inner));
  return [...leavesOf<Leaf>(part.core), ...part.logs.flatMap((log) => leavesOf<Leaf>(log.part))];
}

/** The direct children of an inner part, in sewing order; none for a leaf. */
export function childrenOf<Leaf extends AnyLeaf>(part: Part<Leaf>): readonly Part<Leaf>[] {
  if (isLeaf<Leaf>(part)) return [];
  return part.kind === 'row' ? part.parts : [part.core, ...part.logs.map((log) => log.part)];
}

/** Whether a part is made by itself before it is sewn into the rest: a leaf is, and so is a recipe that stands in another. */
export function isMadeByItself<Leaf extends AnyLeaf>(part: Part<Leaf>): boolean {
  return isLeaf<Leaf>(part) || part.name !== undefined;
}
