import type { Drawing } from '../../../drawing/drawing.ts';
import { distance, MEANT } from '../../../drawing/near.ts';
import type { Point } from '../../../drawing/turn.ts';
import type { SeamKind, SeamTree } from '../../seamTree.ts';
import { type Mesh, meshOf, type PatchSet, rimOf } from './mesh.ts';
import { ringOf, type SeamRing } from './rings.ts';
import { type Split, splitsOf } from './splits.ts';

/** A seam the designer wants sewn last of its part: from one place to another. */
export type PinnedSeam = readonly [Point, Point];

/** Parts looked at before the search takes the first choice each time: set-in seams by the dozen can be sewn in any order. */
const MOST_PARTS = 80;
/** Patches of a part in which seams with two corners are looked for beside those with one. */
const FEW_PATCHES = 20;

/**
 * How the patches of a drawing are sewn together when seams may run at any angle: straight full seams wherever there are
 * any, then curved ones, then partial seams about a core, and set-in seams only where nothing else will do.
 */
export function seamsFor(drawing: Drawing, pinned: readonly PinnedSeam[] = []): SeamTree {
  const search = new Search(meshOf(drawing), pinned);
  return search.solve(new Set(drawing.patches.map((_, index) => index))).tree;
}

interface Solved {
  readonly tree: SeamTree;
  /** How hard it is: partial seams, set-in seams and the corners these are turned at, weighed. */
  readonly hard: number;
}

const HARD: Readonly<Record<SeamKind, number>> = { full: 0, curved: 0, partial: 1, 'set-in': 5 };

class Search {
  readonly #mesh: Mesh;
  readonly #pinned: readonly PinnedSeam[];
  readonly #known = new Map<string, Solved>();
  readonly #easy = new Map<string, boolean>();

  constructor(mesh: Mesh, pinned: readonly PinnedSeam[]) {
    this.#mesh = mesh;
    this.#pinned = pinned;
  }

  solve(part: PatchSet): Solved {
    const [only] = part;
    if (part.size === 1 && only !== undefined) return { tree: { kind: 'patch', patch: only }, hard: 0 };
    const key = keyOf(part);
    const known = this.#known.get(key);
    if (known !== undefined) return known;
    const solved = this.#solveAnew(part);
    this.#known.set(key, solved);
    return solved;
  }

  #solveAnew(part: PatchSet): Solved {
    const full = splitsOf(this.#mesh, part, 0);
    const [first] = full;
    if (first !== undefined) return this.#joined(full.find((split) => this.#isPinned(split)) ?? first);
    const ring = ringOf(this.#mesh, part);
    if (ring !== null) return this.#ring(ring);
    const once = splitsOf(this.#mesh, part, 1);
    const twice = once.length === 0 || part.size <= FEW_PATCHES ? splitsOf(this.#mesh, part, 2) : [];
    const splits = this.#worthwhile([...once, ...twice]);
    return splits.length > 0 ? this.#easiest(splits) : this.#joined(this.#lastResort(part));
  }

  #isPinned({ path }: Split): boolean {
    const { points } = this.#mesh.drawing;
    const [start, end] = [points[path[0] as number] as Point, points[path.at(-1) as number] as Point];
    const near = (a: Point, b: Point) => distance(a, b) < MEANT;
    return this.#pinned.some(([a, b]) => (near(a, start) && near(b, end)) || (near(a, end) && near(b, start)));
  }

  #joined(split: Split): Solved {
    const [one, other] = split.parts.map((part) => this.solve(part)) as [Solved, Solved];
    const sewn: SeamKind = split.bends > 0 ? 'set-in' : split.curved ? 'curved' : 'full';
    const tree: SeamTree = { kind: 'join', parts: [one.tree, other.tree], seam: split.path, sewn };
    return { tree, hard: one.hard + other.hard + HARD[sewn] + 4 * split.bends };
  }

  /**
   * The set-in seams worth looking at, the best first. A place where edges meet and none runs straight on has to be the
   * corner of some set-in seam; a corner anywhere else is one too many. After that, it is best to set in what is itself sewn
   * by full seams alone, the larger the better.
   */
  #worthwhile(splits: readonly Split[]): readonly Split[] {
    const spare = new Map(
      splits.map((split) => {
        const corners = cornersOf(this.#mesh, split.path);
        return [split, corners.filter((corner) => this.#runsThrough(corner)).length] as const;
      }),
    );
    const least = Math.min(...spare.values());
    const marks = splits.flatMap((split) => {
      if (spare.get(split) !== least) return [];
      return [{ split, easy: Math.max(...split.parts.map((part) => (this.#isEasy(part) ? part.size : 0))) }];
    });
    marks.sort((a, b) => a.split.bends - b.split.bends || b.easy - a.easy);
    return marks.map(({ split }) => split);
  }

  /** Whether some edge runs straight on through a vertex. */
  #runsThrough(vertex: number): boolean {
    const ends = this.#mesh.next(vertex);
    return ends.some((from) => this.#mesh.onward(from, vertex) !== undefined);
  }

  /** Whether full seams alone sew a part. */
  #isEasy(part: PatchSet): boolean {
    if (part.size === 1) return true;
    const key = keyOf(part);
    const known = this.#easy.get(key);
    if (known !== undefined) return known;
    const [first] = splitsOf(this.#mesh, part, 0);
    const easy = first?.parts.every((side) => this.#isEasy(side)) === true;
    this.#easy.set(key, easy);
    return easy;
  }

  /** Of several set-in seams the one that leaves the fewest to come; the first one once the search has grown large. */
  #easiest(splits: readonly Split[]): Solved {
    let best = this.#joined(splits[0] as Split);
    for (const split of splits.slice(1)) {
      if (this.#known.size > MOST_PARTS) break;
      const next = this.#joined(split);
      if (next.hard < best.hard) best = next;
    }
    return best;
  }

  /** The first arm is sewn part of the way, the others one after another, and the last one closes the first seam. */
  #ring({ core, arms }: SeamRing): Solved {
    const middle = this.solve(core);
    let { tree, hard } = middle;
    arms.forEach(({ part, seam, entry }, i) => {
      const arm = this.solve(part);
      const parts: readonly [SeamTree, SeamTree] = [tree, arm.tree];
      const first = arms[0] as SeamRing['arms'][number];
      if (i === 0) tree = { kind: 'join', parts, seam: seam.slice(entry), sewn: 'partial' };
      else if (i < arms.length - 1) tree = { kind: 'join', parts, seam, sewn: 'full' };
      else tree = { kind: 'join', parts, seam, sewn: 'full', closing: first.seam.slice(0, first.entry + 1) };
      hard += arm.hard;
    });
    return { tree, hard: hard + HARD.partial };
  }

  /** One patch at the rim set into all the rest: the one that shares the shortest way with it. */
  #lastResort(part: PatchSet): Split {
    const splits = [...part].flatMap((patch) => this.#without(part, patch) ?? []);
    const [first] = splits.sort((a, b) => a.bends - b.bends);
    if (first === undefined) throw new RangeError('A part of a drawing has no patch that can be taken off');
    return first;
  }

  /** A patch taken off, when it meets the rest along one unbroken way and leaves the rest in one piece. */
  #without(part: PatchSet, patch: number): Split | null {
    const rest = new Set([...part].filter((other) => other !== patch));
    const path = sharedWay(this.#mesh, rest, patch);
    if (path === null || !hangsTogether(this.#mesh, rest)) return null;
    return { path, bends: path.length, curved: false, parts: [rest, new Set([patch])] };
  }
}

/** The edges a patch shares with others, as one path; null when they are none or not one path. */
function sharedWay(mesh: Mesh, rest: PatchSet, patch: number): readonly number[] | null {
  const { outline } = mesh.drawing.patches[patch] as Drawing['patches'][number];
  const shared = outline.map((a, i) => {
    const beyond = mesh.owner(outline[(i + 1) % outline.length] as number, a);
    return beyond !== undefined && rest.has(beyond);
  });
  const starts = shared.flatMap((is, i) => (is && !shared[(i + shared.length - 1) % shared.length] ? [i] : []));
  const [start, ...more] = starts;
  if (start === undefined || more.length > 0) return null;
  let end = start;
  while (shared[end % shared.length]) end += 1;
  return Array.from({ length: end - start + 1 }, (_, i) => outline[(start + i) % outline.length] as number);
}

function hangsTogether(mesh: Mesh, part: PatchSet): boolean {
  const [first] = part;
  if (first === undefined) return false;
  const met = new Set([first]);
  for (const patch of met) {
    const { outline } = mesh.drawing.patches[patch] as Drawing['patches'][number];
    outline.forEach((a, i) => {
      const beyond = mesh.owner(outline[(i + 1) % outline.length] as number, a);
      if (beyond !== undefined && part.has(beyond)) met.add(beyond);
    });
  }
  return met.size === part.size && rimOf(mesh, part).size > 0;
}

/** The vertices of a path at which it turns. */
function cornersOf(mesh: Mesh, path: readonly number[]): readonly number[] {
  return path.slice(1, -1).filter((vertex, i) => mesh.onward(path[i] as number, vertex) !== path[i + 2]);
}

function keyOf(part: PatchSet): string {
  return [...part].sort((a, b) => a - b).join(' ');
}
