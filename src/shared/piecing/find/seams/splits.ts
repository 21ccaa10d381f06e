import { inner, isInner, type Mesh, middleOf, type PatchSet, piecesOf, rimOf } from './mesh.ts';

/** A part split in two along one path from rim to rim. */
export interface Split {
  readonly path: readonly number[];
  /** Corners on the way: none for a seam sewn from edge to edge. */
  readonly bends: number;
  /** Whether any of it is an arc. */
  readonly curved: boolean;
  readonly parts: readonly [PatchSet, PatchSet];
}

/**
 * Every way to split a part along a path with so many corners, the one to prefer first: straight before curved, then
 * the two sides as equal as can be, then by place.
 */
export function splitsOf(mesh: Mesh, part: PatchSet, bends: number): readonly Split[] {
  const rim = rimOf(mesh, part);
  const found = new Map<string, Split>();
  for (const start of rim) {
    for (const path of pathsFrom(mesh, part, rim, start, bends)) {
      // Every path is found from both of its ends.
      if ((path[0] as number) > (path.at(-1) as number)) continue;
      const key = path.join(' ');
      if (found.has(key)) continue;
      const [one, other, ...more] = piecesOf(mesh, part, [path]);
      if (one === undefined || other === undefined || more.length > 0) continue;
      const curved = path.some((vertex, i) => i > 0 && mesh.isCurved(path[i - 1] as number, vertex));
      found.set(key, { path, bends, curved, parts: [one, other] });
    }
  }
  return [...found.values()].sort((a, b) => inOrder(mesh, a, b));
}

function inOrder(mesh: Mesh, a: Split, b: Split): number {
  const [p, q] = [middleOf(mesh, a.path), middleOf(mesh, b.path)];
  return Number(a.curved) - Number(b.curved) || smaller(b) - smaller(a) || p.y - q.y || p.x - q.x;
}

function smaller({ parts: [one, other] }: Split): number {
  return Math.min(one.size, other.size);
}

/** Paths over inner edges from one vertex of the rim to any other, with exactly so many corners. */
function* pathsFrom(
  mesh: Mesh,
  part: PatchSet,
  rim: ReadonlySet<number>,
  start: number,
  bends: number,
): Generator<readonly number[]> {
  const open: { path: readonly number[]; bends: number }[] = inner(mesh, part, start).map((to) => ({
    path: [start, to],
    bends: 0,
  }));
  for (let now = open.pop(); now !== undefined; now = open.pop()) {
    const [before, here] = now.path.slice(-2) as [number, number];
    if (rim.has(here)) {
      if (now.bends === bends) yield now.path;
      continue;
    }
    const straight = mesh.onward(before, here);
    // Once no more corners are allowed, only straight on.
    const ends = now.bends < bends ? mesh.next(here) : straight === undefined ? [] : [straight];
    for (const to of ends) {
      if (now.path.includes(to) || !isInner(mesh, part, here, to)) continue;
      const turned = now.bends + (straight === to ? 0 : 1);
      if (turned <= bends) open.push({ path: [...now.path, to], bends: turned });
    }
  }
}
