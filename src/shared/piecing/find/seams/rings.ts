import { inner, isInner, type Mesh, type PatchSet, piecesOf, rimOf } from './mesh.ts';

/** Seams that run into one another about a core: each begins at the rim and ends on the next. */
export interface SeamRing {
  readonly core: PatchSet;
  readonly arms: readonly SeamArm[];
}

/** One arm: its inner seam from the rim to the next arm's seam, and where the seam of the arm before it comes in. */
interface SeamArm {
  readonly part: PatchSet;
  readonly seam: readonly number[];
  readonly entry: number;
}

/** A ring of more arms than this is sewn by set-in seams instead; the trade makes rings of three to six. */
const MOST_ARMS = 6;

/** The ring of a part with the fewest arms; null when it has none. */
export function ringOf(mesh: Mesh, part: PatchSet): SeamRing | null {
  const rays = raysOf(mesh, part);
  for (let arms = 3; arms <= MOST_ARMS; arms += 1) {
    for (const first of rays) {
      const found = closed(mesh, part, rays, [{ ray: first, entry: 0, end: 0 }], arms);
      if (found !== null) return found;
    }
  }
  return null;
}

type Ray = readonly number[];

/** Straight ways inwards from the rim, as far as they run on. */
function raysOf(mesh: Mesh, part: PatchSet): readonly Ray[] {
  const rim = rimOf(mesh, part);
  return [...rim].flatMap((start) =>
    inner(mesh, part, start).flatMap((to) => {
      const ray = [start, to];
      for (let on: number | undefined = to; on !== undefined && !rim.has(on); ) {
        const [before, here] = ray.slice(-2) as [number, number];
        const straight = mesh.onward(before, here);
        on = straight !== undefined && isInner(mesh, part, here, straight) ? straight : undefined;
        if (on !== undefined) ray.push(on);
      }
      const curved = ray.some((vertex, i) => i > 0 && mesh.isCurved(ray[i - 1] as number, vertex));
      return curved || ray.length < 3 || rim.has(ray.at(-1) as number) ? [] : [ray];
    }),
  );
}

/** A ray in a chain: where the one before it comes in, and where it ends on the next, as places on the ray. */
interface Link {
  readonly ray: Ray;
  readonly entry: number;
  readonly end: number;
}

/** The chain made longer until it closes on its first ray with so many arms; null when it does not. */
function closed(
  mesh: Mesh,
  part: PatchSet,
  rays: readonly Ray[],
  chain: readonly Link[],
  arms: number,
): SeamRing | null {
  const last = chain.at(-1) as Link;
  for (let end = last.entry + 1; end < last.ray.length; end += 1) {
    const corner = last.ray[end] as number;
    const ended = [...chain.slice(0, -1), { ...last, end }];
    for (const ray of rays) {
      const entry = ray.indexOf(corner);
      // The next seam runs on past the corner; were it to begin or end there, the two would only meet.
      if (entry < 1 || entry === ray.length - 1 || ray === last.ray) continue;
      if (chain.length === arms) {
        const ring = ray === chain[0]?.ray ? around(mesh, part, ended, entry) : null;
        if (ring !== null) return ring;
      } else if (!chain.some((link) => link.ray === ray)) {
        const ring = closed(mesh, part, rays, [...ended, { ray, entry, end: 0 }], arms);
        if (ring !== null) return ring;
      }
    }
  }
  return null;
}

/** The ring whose first ray is entered there, when it really has a core inside and an arm behind each seam. */
function around(mesh: Mesh, part: PatchSet, links: readonly Link[], entry: number): SeamRing | null {
  const [first, ...rest] = links as readonly [Link, ...Link[]];
  if (entry >= first.end) return null;
  const chain = [{ ...first, entry }, ...rest];
  const seams = chain.map(({ ray, end }) => ray.slice(0, end + 1));
  const pieces = piecesOf(mesh, part, seams);
  if (pieces.length !== chain.length + 1) return null;
  const rim = rimOf(mesh, part);
  const sides = seams.map((seam) => sidesOf(mesh, pieces, seam));
  const core = pieces.find((piece) => sides.every((two) => two.includes(piece)));
  if (
    core === undefined ||
    [...rimOf(mesh, core)].some((vertex) => rim.has(vertex) && touches(mesh, part, core, vertex))
  )
    return null;
  const arms = chain.map((link, i) => ({
    part: (sides[i] ?? []).find((piece) => piece !== core) ?? core,
    seam: seams[i] as readonly number[],
    entry: link.entry,
  }));
  return new Set(arms.map((arm) => arm.part)).size === arms.length ? { core, arms } : null;
}

/** The pieces on both sides of the last edge of a seam. */
function sidesOf(mesh: Mesh, pieces: readonly PatchSet[], seam: readonly number[]): readonly PatchSet[] {
  const [a, b] = seam.slice(-2) as [number, number];
  const owners = [mesh.owner(a, b), mesh.owner(b, a)];
  return pieces.filter((piece) => owners.some((owner) => owner !== undefined && piece.has(owner)));
}

/** Whether the core has an edge on the rim of the part at a vertex. */
function touches(mesh: Mesh, part: PatchSet, core: PatchSet, vertex: number): boolean {
  return mesh.next(vertex).some((to) => {
    const owners = [mesh.owner(vertex, to), mesh.owner(to, vertex)];
    const inCore = owners.some((owner) => owner !== undefined && core.has(owner));
    return inCore && owners.some((owner) => owner === undefined || !part.has(owner));
  });
}
