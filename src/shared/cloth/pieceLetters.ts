import type { Piecing } from '../piecing/piecing.ts';
import { leavesOf } from '../piecing/tree.ts';
import type { TopPiece } from '../quilt/quilt.ts';
import type { SizedBlock } from '../quilt/sized.ts';
import { pairOf } from './borderPieces.ts';
import { borderKey, cutKey, type Letters, patchKey, triangleKey } from './letters.ts';

/**
 * For every patch of a block's drawing, the letters of the pieces it may be cut from: mostly one. Two where a unit takes two
 * pieces of one role, because a patch does not say which of them became it. Empty for a patch that nothing is cut for.
 */
export function patchLetters(
  { id, units }: SizedBlock,
  { drawing, root }: Piecing,
  letters: Letters,
): readonly (readonly string[])[] {
  const found = drawing.patches.map(() => new Set<string>());
  const cutsOf = new Map(units.map(({ unit, plan }) => [unit.key, plan.cuts]));
  for (const leaf of leavesOf(root)) {
    (cutsOf.get(leaf.unit) ?? []).forEach((cut, index) => {
      const letter = letters[cutKey(id, leaf.unit, index)];
      if (letter === undefined) return;
      for (const patch of leaf.patches) if (drawing.patches[patch]?.role === cut.role) found[patch]?.add(letter);
    });
  }
  return found.map((own) => [...own]);
}

/** The letter of a plain piece of the top: a border strip, sashing, a cornerstone, a triangle at the edge. Null for a block. */
export function letterOfPiece(piece: TopPiece, letters: Letters): string | null {
  if (piece.kind === 'strip') return letters[borderKey(piece.border, pairOf(piece))] ?? null;
  if (piece.kind === 'patch') return letters[patchKey(piece)] ?? null;
  return piece.kind === 'triangle' ? (letters[triangleKey(piece.use)] ?? null) : null;
}
