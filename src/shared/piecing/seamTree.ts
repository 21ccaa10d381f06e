/**
 * How the patches of a unit are sewn together when it is no unit of the trade: a tree of seams. Leaves are patches of the
 * unit's own drawing; vertices are that drawing's.
 */
export type SeamTree = SeamPatch | SeamJoin;

interface SeamPatch {
  readonly kind: 'patch';
  readonly patch: number;
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
  return tree.kind === 'patch' ? [tree.patch] : tree.parts.flatMap(patchesOf);
}

/** Every join of the tree, in sewing order: what is sewn first comes first. */
export function joinsOf(tree: SeamTree): readonly SeamJoin[] {
  return tree.kind === 'patch' ? [] : [...tree.parts.flatMap(joinsOf), tree];
}

/** The tree with its patches and vertices numbered anew. */
export function renumberSeams(
  tree: SeamTree,
  patch: (index: number) => number,
  vertex: (index: number) => number = (index) => index,
): SeamTree {
  if (tree.kind === 'patch') return { kind: 'patch', patch: patch(tree.patch) };
  const [first, second] = tree.parts;
  return {
    ...tree,
    parts: [renumberSeams(first, patch, vertex), renumberSeams(second, patch, vertex)],
    seam: tree.seam.map(vertex),
    ...(tree.closing === undefined ? {} : { closing: tree.closing.map(vertex) }),
  };
}
