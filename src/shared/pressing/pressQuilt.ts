import { UNTURNED } from '../drawing/turn.ts';
import type { Part } from '../piecing/piecing.ts';
import { childrenOf, isLeaf, leavesOf } from '../piecing/tree.ts';
import type { DiagonalLeaf, OnPointLeaf, Quilt, QuiltLeaf, QuiltPart } from '../quilt/quilt.ts';
import { cutEdged } from './cutEdged.ts';
import { type Edged, turnEdged, unseamed } from './ends.ts';
import { press } from './press.ts';
import type { PressingPlan } from './pressing.ts';
import { pressOnPoint } from './pressOnPoint.ts';

type AnyLeaf = QuiltLeaf | DiagonalLeaf;

/**
 * The pressing of a whole top: rows of blocks to alternate sides, everything beside sashing towards the sashing, borders
 * away from the middle (common practice). Seams of a setting on point are told in the frame of its rows.
 * @param blocks how each block meets its neighbours at this size, by letter
 */
export function pressQuilt(quilt: Quilt, blocks: ReadonlyMap<string, Edged>): PressingPlan {
  const edgesOf = edgesOfLeaves(blocks);
  const { plan } = press<QuiltLeaf>(quilt.root, edgesOf, lieOf, pullOf);
  return settingsOnPoint(quilt.root, '').reduce((whole, { leaf, path }): PressingPlan => {
    const own = pressOnPoint(leaf, path, { edgesOf, lieOf, pullOf });
    return {
      parts: [...whole.parts, ...own.parts],
      nests: whole.nests + own.nests,
      stacks: whole.stacks + own.stacks,
      open: whole.open + own.open,
      stacked: [...whole.stacked, ...own.stacked],
    };
  }, plan);
}

function edgesOfLeaves(blocks: ReadonlyMap<string, Edged>): (leaf: AnyLeaf) => Edged {
  const turned = new Map<string, Edged>();
  return (leaf) => {
    if (leaf.kind !== 'block') return unseamed(leaf.box.width, leaf.box.height);
    const key = `${leaf.block} ${leaf.turn.quarters} ${leaf.turn.mirrored} ${leaf.part?.from} ${leaf.part?.to}`;
    const known = turned.get(key);
    if (known !== undefined) return known;
    const whole = turnEdged(blocks.get(leaf.block) as Edged, leaf.turn);
    const edged = leaf.part === undefined ? whole : cutEdged(whole, leaf.part);
    turned.set(key, edged);
    return edged;
  };
}

interface Found {
  readonly leaf: OnPointLeaf;
  readonly path: string;
}

/** Every setting on point in a tree, with its path. */
function settingsOnPoint(part: QuiltPart, path: string): readonly Found[] {
  if (isLeaf<QuiltLeaf>(part)) return part.kind === 'on-point' ? [{ leaf: part, path }] : [];
  if (part.kind === 'row' && part.parts.every((child) => isLeaf<QuiltLeaf>(child) && child.kind === 'block')) return [];
  return childrenOf<QuiltLeaf>(part).flatMap((child, i) =>
    settingsOnPoint(child, path === '' ? `${i}` : `${path}.${i}`),
  );
}

/** A sashing of several strips is made by itself, and every one alike. */
function lieOf(part: Part<AnyLeaf>): typeof UNTURNED | null {
  return !isLeaf<AnyLeaf>(part) && part.name === 'sashing' ? UNTURNED : null;
}

/** Seams are pressed towards sashing; within a row of sashing away from the cornerstones. */
function pullOf(part: Part<AnyLeaf>): number {
  if (!isLeaf<AnyLeaf>(part)) return leavesOf<AnyLeaf>(part).some((leaf) => leaf.kind === 'block') ? 1 : 2;
  if (part.kind === 'patch') return part.use === 'sashing' ? 2 : 0;
  return part.kind === 'triangle' && part.use === 'edge-cornerstone' ? 0 : 1;
}
