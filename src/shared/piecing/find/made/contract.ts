import type { Drawing, Patch } from '../../../drawing/drawing.ts';
import { mapLeaves, type SeamTree, type SeamUnit } from '../../seamTree.ts';

/** A drawing in which units are single patches, with the leaf that stands for each of its patches. */
export interface Contracted {
  readonly drawing: Drawing;
  readonly leaves: readonly SeamTree[];
}

/** The drawing with the patches of each unit made into one; its vertices keep their numbers. */
export function contract(drawing: Drawing, units: readonly SeamUnit[]): Contracted {
  const taken = new Set(units.flatMap(({ patches }) => patches));
  const loose = drawing.patches.flatMap((_, patch) => (taken.has(patch) ? [] : [patch]));
  const patches = [
    ...loose.map((patch) => drawing.patches[patch] as Patch),
    ...units.map((unit): Patch => ({ role: '', outline: outlineRound(drawing, unit.patches) })),
  ];
  return {
    drawing: { ...drawing, patches },
    leaves: [...loose.map((patch) => ({ kind: 'patch', patch }) as const), ...units],
  };
}

/** The tree of a contracted drawing over the patches of the drawing itself. */
export function expand(tree: SeamTree, { leaves }: Contracted): SeamTree {
  return mapLeaves(tree, (leaf) => (leaf.kind === 'patch' ? (leaves[leaf.patch] as SeamTree) : leaf));
}

/** The way round patches that fill a rectangle: every edge that only one of them has. */
function outlineRound(drawing: Drawing, patches: readonly number[]): readonly number[] {
  const edges = patches.flatMap((patch) => {
    const { outline } = drawing.patches[patch] as Patch;
    return outline.map((a, i) => [a, outline[(i + 1) % outline.length] as number] as const);
  });
  const walked = new Set(edges.map(([a, b]) => `${a} ${b}`));
  const onward = new Map(edges.filter(([a, b]) => !walked.has(`${b} ${a}`)));
  const [start] = onward.keys();
  const outline: number[] = [];
  for (let at = start; at !== undefined && outline.length < onward.size; at = onward.get(at)) outline.push(at);
  return outline;
}
