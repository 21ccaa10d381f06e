import type { Box } from '../drawing/turn.ts';
import type { Log, Part } from './piecing.ts';

/** What every leaf of a piecing tree has. */
export interface AnyLeaf {
  readonly kind: string;
  readonly box: Box;
}

type Inner = 'row' | 'rounds';

/** Whether a part is a leaf of its tree. */
export function isLeaf<Leaf extends AnyLeaf>(part: Part<Leaf>): part is Leaf {
  return part.kind !== ('row' satisfies Inner) && part.kind !== ('rounds' satisfies Inner);
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
  const logs: Log<B>[] = part.logs.map((log) => ({ side: log.side, part: mapTree(log.part, leaf, box) }));
  return { ...part, core: mapTree(part.core, leaf, box), logs, box: box(part.box) };
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
