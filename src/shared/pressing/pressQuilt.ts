import { UNTURNED } from '../drawing/turn.ts';
import type { Part } from '../piecing/piecing.ts';
import { isLeaf, leavesOf } from '../piecing/tree.ts';
import type { Quilt, QuiltLeaf } from '../quilt/quilt.ts';
import { type Edged, turnEdged, unseamed } from './ends.ts';
import { press } from './press.ts';
import type { PressingPlan } from './pressing.ts';

/**
 * The pressing of a whole top: rows of blocks to alternate sides, everything beside sashing towards the sashing, borders
 * away from the middle (common practice).
 * @param blocks how each block meets its neighbours at this size, by letter
 */
export function pressQuilt(quilt: Quilt, blocks: ReadonlyMap<string, Edged>): PressingPlan {
  const edgesOf = edgesOfLeaves(blocks);
  const lieOf = (part: Part<QuiltLeaf>) => (isSashing(part) ? UNTURNED : null);
  return press<QuiltLeaf>(quilt.root, edgesOf, lieOf, pullOf).plan;
}

function edgesOfLeaves(blocks: ReadonlyMap<string, Edged>): (leaf: QuiltLeaf) => Edged {
  const turned = new Map<string, Edged>();
  return (leaf) => {
    if (leaf.kind !== 'block') return unseamed(leaf.box.width, leaf.box.height);
    const key = `${leaf.block} ${leaf.turn.quarters} ${leaf.turn.mirrored}`;
    const edged = turned.get(key) ?? turnEdged(blocks.get(leaf.block) as Edged, leaf.turn);
    turned.set(key, edged);
    return edged;
  };
}

/** A sashing of several strips is made by itself, and every one alike. */
function isSashing(part: Part<QuiltLeaf>): boolean {
  return !isLeaf<QuiltLeaf>(part) && part.name === 'sashing';
}

/** Seams are pressed towards sashing; within a row of sashing away from the cornerstones. */
function pullOf(part: Part<QuiltLeaf>): number {
  if (isLeaf<QuiltLeaf>(part))
    return part.kind === 'patch' && part.use === 'sashing' ? 2 : part.kind === 'patch' ? 0 : 1;
  return leavesOf<QuiltLeaf>(part).some((leaf) => leaf.kind === 'block') ? 1 : 2;
}
