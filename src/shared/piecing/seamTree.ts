import type { TradeShape } from './tradeUnit.ts';

/**
 * How the patches of a unit are sewn together when it is no unit of the trade: a tree of seams. Leaves are patches of the
 * unit's own drawing, and units of the trade that stand in it; vertices are that drawing's.
 */
export type SeamTree = SeamPatch | SeamUnit | SeamJoin;

interface SeamPatch {
  readonly kind: 'patch';
  readonly patch: number;
}

/** A unit of the trade inside the unit, at whatever slant: it is made by a method of its own and sewn in whole. */
export interface SeamUnit {
  readonly kind: 'unit';
  readonly shape: TradeShape;
  /** The patches it is made of, in no order that matters. */
  readonly patches: readonly number[];
}

/** Two parts sewn together along one seam. */
export interface SeamJoin {
  readonly kind: 'join';
  readonly parts: readonly [SeamTree, SeamTree];
  /** Every vertex along the seam, from its first stitch to its last. */
  readonly seam: readonly number[];
  readonly sewn: SeamKind;
  /** The rest of a partial seam that was left open before; it is finished once this seam is sewn. */
  readonly closing?: readonly number[];
}

/**
 * How a seam is sewn. 'full': straight from edge to edge. 'partial': straight, but only part of the way; a later join
 * finishes it. 'set-in': round an inside corner, stopping at it to turn. 'curved': along an arc.
 */
export type SeamKind = 'full' | 'partial' | 'set-in' | 'curved';

/** Every patch of the tree, in sewing order. */
export function patchesOf(tree: SeamTree): readonly number[] {
  if (tree.kind === 'join') return tree.parts.flatMap(patchesOf);
  return tree.kind === 'unit' ? tree.patches : [tree.patch];
}

/** Every join of the tree, in sewing order: what is sewn first comes first. Seams within its units are not among them. */
export function joinsOf(tree: SeamTree): readonly SeamJoin[] {
  return tree.kind === 'join' ? [...tree.parts.flatMap(joinsOf), tree] : [];
}

/** Every unit of the trade in the tree, in sewing order. */
export function unitsOf(tree: SeamTree): readonly SeamUnit[] {
  if (tree.kind === 'join') return tree.parts.flatMap(unitsOf);
  return tree.kind === 'unit' ? [tree] : [];
}

/** The patches of the tree that stand in none of its units, in sewing order. */
export function loosePatchesOf(tree: SeamTree): readonly number[] {
  if (tree.kind === 'join') return tree.parts.flatMap(loosePatchesOf);
  return tree.kind === 'patch' ? [tree.patch] : [];
}

/** The tree with another leaf for each leaf. */
export function mapLeaves(tree: SeamTree, leaf: (leaf: SeamPatch | SeamUnit) => SeamTree): SeamTree {
  if (tree.kind !== 'join') return leaf(tree);
  const [first, second] = tree.parts;
  return { ...tree, parts: [mapLeaves(first, leaf), mapLeaves(second, leaf)] };
}

/** The tree with another shape for each of its units. */
export function mapUnits(tree: SeamTree, made: (shape: TradeShape) => TradeShape): SeamTree {
  return mapLeaves(tree, (leaf) => (leaf.kind === 'unit' ? { ...leaf, shape: made(leaf.shape) } : leaf));
}

/** The tree with its patches and vertices numbered anew. */
export function renumberSeams(
  tree: SeamTree,
  patch: (index: number) => number,
  vertex: (index: number) => number = (index) => index,
): SeamTree {
  if (tree.kind === 'patch') return { kind: 'patch', patch: patch(tree.patch) };
  if (tree.kind === 'unit') return { ...tree, patches: tree.patches.map(patch) };
  const [first, second] = tree.parts;
  return {
    ...tree,
    parts: [renumberSeams(first, patch, vertex), renumberSeams(second, patch, vertex)],
    seam: tree.seam.map(vertex),
    ...(tree.closing === undefined ? {} : { closing: tree.closing.map(vertex) }),
  };
}
