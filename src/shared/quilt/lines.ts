import { isLeaf, leavesOf } from '../piecing/tree.ts';
import type { QuiltLeaf, QuiltPart } from './quilt.ts';

/** What the setting makes, inside the borders, with its path in the tree of the top. */
export function centreOf(part: QuiltPart, path = ''): { readonly part: QuiltPart; readonly path: string } {
  if (isLeaf<QuiltLeaf>(part) || part.kind !== 'rounds') return { part, path };
  return centreOf(part.core, path === '' ? '0' : `${path}.0`);
}

/** Whether a part has a block in it, and not only sashing. */
export function holdsBlock(part: QuiltPart): boolean {
  return leavesOf<QuiltLeaf>(part).some((leaf) => leaf.kind === 'block');
}

/** Whether a setting is sewn of rows or columns that are sewn of blocks; else it is a single one, or on point. */
export function hasLines(part: QuiltPart): boolean {
  if (isLeaf<QuiltLeaf>(part) || part.kind !== 'row') return false;
  return part.parts.some((child) => !isLeaf<QuiltLeaf>(child) && holdsBlock(child));
}

/** How many rows (or columns) a straight setting or one of strips is sewn of; sashing between them is none. */
export function linesIn(root: QuiltPart, inColumns: boolean): number {
  const { part } = centreOf(root);
  if (isLeaf<QuiltLeaf>(part) || part.kind !== 'row' || part.along !== (inColumns ? 'across' : 'down')) return 1;
  return part.parts.filter((line) => !isSashing(line)).length;
}

function isSashing(part: QuiltPart): boolean {
  return leavesOf<QuiltLeaf>(part).every((leaf) => leaf.kind === 'patch' && leaf.use !== 'filler');
}
