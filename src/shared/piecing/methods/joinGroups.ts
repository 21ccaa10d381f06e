import { flatCorners } from '../../drawing/curve.ts';
import type { Drawing } from '../../drawing/drawing.ts';
import { patchPolygon } from '../../drawing/polygons.ts';
import type { Point } from '../../drawing/turn.ts';
import type { Part } from '../allowance/work.ts';
import { joinsOf, patchesOf, type SeamJoin, type SeamTree } from '../seamTree.ts';
import { type JoinOrder, orderOf } from './joinOrder.ts';

/**
 * What is sewn in one stage: one join, or several straight ones of which each adds to what the one before made. Where a unit
 * has several of the same thing, turned as may be, one is shown and all are made one after another.
 */
export interface JoinGroup {
  readonly steps: readonly JoinStep[];
  readonly times: number;
}

/** One join: what was made before, and what is added to it. */
export interface JoinStep extends JoinOrder {
  readonly join: SeamJoin;
}

/** More than this is too much for one figure. */
const IN_ONE_STAGE = 4;

/** The different joins of a tree in sewing order, a few to a stage. */
export function joinGroups(drawing: Drawing, tree: SeamTree): readonly JoinGroup[] {
  const groups: { steps: JoinStep[]; times: number }[] = [];
  for (const { join, times } of differentJoins(drawing, tree)) {
    const last = groups.at(-1);
    const before = last?.steps.at(-1);
    const step: JoinStep = { join, ...orderOf(join) };
    const goesOn =
      before !== undefined &&
      isAll(step.first, before) &&
      last?.times === times &&
      last.steps.length < IN_ONE_STAGE &&
      [before.join, join].every(({ sewn, closing }) => sewn === 'full' && closing === undefined);
    if (goesOn) last?.steps.push(step);
    else groups.push({ steps: [step], times });
  }
  return groups;
}

/** Whether a part is what the step before made. */
function isAll(part: Part, { first, added }: JoinStep): boolean {
  return part.size === first.size + added.size && [...part].every((patch) => first.has(patch) || added.has(patch));
}

function differentJoins(
  drawing: Drawing,
  tree: SeamTree,
): readonly { readonly join: SeamJoin; readonly times: number }[] {
  const found = new Map<string, { join: SeamJoin; times: number }>();
  for (const join of joinsOf(tree)) {
    const key = likeness(drawing, join);
    const known = found.get(key);
    if (known === undefined) found.set(key, { join, times: 1 });
    else known.times += 1;
  }
  return [...found.values()];
}

/** Equal for joins of the same patches lying the same way about their seam, whichever of its ends is sewn first. */
function likeness(drawing: Drawing, join: SeamJoin): string {
  const [start, end] = [join.seam[0] as number, join.seam.at(-1) as number];
  const [a, b] = [drawing.points[start] as Point, drawing.points[end] as Point];
  const [first] = [seenFrom(drawing, join, a, b), seenFrom(drawing, join, b, a)].sort();
  return `${join.sewn} ${first}`;
}

/** Every patch of a join by its corners, as they lie for who looks from one end of the seam to the other. */
function seenFrom(drawing: Drawing, join: SeamJoin, from: Point, to: Point): string {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const [ux, uy] = [(to.x - from.x) / length, (to.y - from.y) / length];
  const patches = patchesOf(join).map((index) => {
    const { corners, role } = patchPolygon(drawing, drawing.patches[index] as Drawing['patches'][number]);
    const spots = flatCorners(corners, 4).map(({ x, y }) => {
      const [dx, dy] = [x - from.x, y - from.y];
      return `${rounded(dx * ux + dy * uy)},${rounded(dy * ux - dx * uy)}`;
    });
    return `${role} ${[...new Set(spots)].sort().join(' ')}`;
  });
  return patches.sort().join('; ');
}

/** By a number that leaves no length of a drawn grid halfway between two. */
function rounded(value: number): string {
  return String(Math.round((value * 1000) / Math.PI) + 0);
}
