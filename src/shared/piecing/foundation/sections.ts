import { type Drawing, doubleArea, type Patch, patchPoints } from '../../drawing/drawing.ts';
import { type Cut, cutsOf, type Region, type Regions, regionOf } from './cuts.ts';

/**
 * Sewing a drawing on paper. A section is a chain: its first patch is laid on, or a part that was joined from other sections
 * before, and each next patch is added along one straight line that covers the whole edge of what is already there.
 * Sections are then sewn to one another by straight seams.
 */
export interface FoundationPlan {
  /** In the order they are lettered: those that are sewn to each other first come first. */
  readonly sections: readonly FoundationSection[];
  /** How the sections are joined, in sewing order; those of a section's base come before the section is begun. */
  readonly joins: readonly FoundationJoin[];
  /** Whether fewer sections are known not to do. */
  readonly fewest: boolean;
}

export interface FoundationSection {
  /** Sections that are joined first, and then laid on as one piece: most sections have none and begin with a patch. */
  readonly base: readonly number[];
  /** The drawing's patches in the order they are laid and sewn on. */
  readonly patches: readonly number[];
  /** For every patch that is sewn on, the vertices along its line, from one end to the other. */
  readonly seams: readonly (readonly number[])[];
}

/** Two groups of sections, each joined already, sewn to each other. */
export interface FoundationJoin {
  readonly first: readonly number[];
  readonly second: readonly number[];
  /** The vertices along the seam. */
  readonly seam: readonly number[];
}

export type FoundationSections =
  | { readonly ok: true; readonly plan: FoundationPlan }
  | { readonly ok: false; readonly why: FoundationRefusal };

/** Why a drawing cannot be sewn on paper, and which patches it is about. */
export interface FoundationRefusal {
  readonly kind: 'curved' | 'no-straight-seam';
  /** A whole sentence. */
  readonly what: string;
  readonly patches: readonly number[];
}

/** Up to so many patches the sections are the fewest there can be, however many parts have to be looked at. */
const FEW_PATCHES = 12;
/** Of more patches so many parts are looked at; beyond that it is the first good choice each time. */
const MOST_PARTS = 500;

/**
 * The sections of a drawing that is to be sewn on paper, or why it cannot be. They are the fewest there can be for up to
 * twelve patches, and for more as long as the search stays small; beyond that each part is cut where the larger side is
 * a section of its own, or else most evenly.
 *
 * Sewn by straight seams alone, everything on the way is convex: a part with an inside corner could only be filled round that
 * corner. So each seam cuts a part across along one line, and a section is a part from which patch after patch can be cut
 * off; whichever is cut off first, the rest stays a section.
 */
export function foundationSections(drawing: Drawing): FoundationSections {
  const curved = drawing.arcs ?? [];
  if (curved.length > 0) {
    const ends = new Set(curved.flatMap(({ a, b }) => [a, b]));
    const patches = drawing.patches.flatMap(({ outline }, index) =>
      outline.filter((vertex) => ends.has(vertex)).length > 1 ? [index] : [],
    );
    return refusal('curved', 'It has a curved seam, and paper is sewn along straight lines only.', patches);
  }
  const search = new Search(drawing);
  const tree = search.best(search.regions.whole);
  if (tree === null) {
    const stuck = search.stuck();
    const what = `No straight seam from edge to edge parts these ${stuck.length} patches, so they cannot be sewn on paper.`;
    return refusal('no-straight-seam', what, stuck);
  }
  return { ok: true, plan: planOf(tree, search.isExact()) };
}

/**
 * Whether a drawing can be sewn on paper at all: much quicker than finding its sections. Any seam that parts a whole will do to
 * begin with, since a plan for the whole holds one for each of its parts.
 */
export function canSewOnPaper(drawing: Drawing): boolean {
  if ((drawing.arcs ?? []).length > 0) return false;
  const regions = regionOf(drawing);
  const open = [regions.whole];
  for (let part = open.pop(); part !== undefined; part = open.pop()) {
    if (part.patches.length === 1) continue;
    const [cut] = cutsOf(regions, part);
    if (cut === undefined) return false;
    open.push(...cut.parts);
  }
  return true;
}

function refusal(kind: FoundationRefusal['kind'], what: string, patches: readonly number[]): FoundationSections {
  return { ok: false, why: { kind, what, patches } };
}

/** Sections, and sections joined in twos. */
type Tree = Section | Joined;

interface Section {
  readonly kind: 'section';
  readonly base: Joined | null;
  readonly patches: readonly number[];
  readonly seams: readonly (readonly number[])[];
  readonly sections: number;
}

interface Joined {
  readonly kind: 'joined';
  readonly parts: readonly [Tree, Tree];
  readonly seam: readonly number[];
  readonly sections: number;
}

class Search {
  readonly regions: Regions;
  readonly #known = new Map<string, Tree | null>();
  readonly #most: number;
  #stuck: readonly number[] = [];
  #exact = true;

  constructor(drawing: Drawing) {
    this.regions = regionOf(drawing);
    this.#most = drawing.patches.length <= FEW_PATCHES ? Number.POSITIVE_INFINITY : MOST_PARTS;
  }

  /** The patches that no straight seam parts, where the search could not go on. */
  stuck(): readonly number[] {
    return this.#stuck;
  }

  isExact(): boolean {
    return this.#exact;
  }

  /** The fewest sections for a part; null when it cannot be sewn on paper at all. */
  best(part: Region): Tree | null {
    const known = this.#known.get(part.key);
    if (known !== undefined) return known;
    const found = this.#bestAnew(part);
    this.#known.set(part.key, found);
    return found;
  }

  #bestAnew(part: Region): Tree | null {
    const chain = chainOf(this.regions, part);
    if (chain !== null) return chain;
    const cuts = cutsOf(this.regions, part);
    if (cuts.length === 0) {
      if (this.#stuck.length === 0) this.#stuck = part.patches;
      return null;
    }
    if (this.#known.size >= this.#most) {
      this.#exact = false;
      return this.#promising(cuts);
    }
    return this.#fewest(cuts);
  }

  #fewest(cuts: readonly Cut[]): Tree | null {
    let best: Tree | null = null;
    for (const cut of cuts) {
      const tree = this.#made(cut);
      // A plan for a whole holds one for each of its parts: what a part cannot, the whole cannot.
      if (tree === null) return null;
      if (best === null || tree.sections < best.sections) best = tree;
      // Two are the fewest there can be of what is no chain by itself.
      if (best.sections === 2) break;
    }
    return best;
  }

  /** The cut that leaves the largest section on one side; of equal ones the one that comes first. */
  #promising(cuts: readonly Cut[]): Tree | null {
    const [first] = cuts;
    if (first !== undefined && singleOf(this.regions, first) !== null) return this.#made(first);
    const [largest] = [...cuts].sort((a, b) => this.#largestSection(b) - this.#largestSection(a));
    return largest === undefined ? null : this.#made(largest);
  }

  #largestSection({ parts }: Cut): number {
    return Math.max(...parts.map((part) => (chainOf(this.regions, part) === null ? 0 : part.patches.length)));
  }

  /** A single patch is added to the paper of the rest, or to a new one on which the rest is laid; else both are joined. */
  #made(cut: Cut): Tree | null {
    const { parts, seam } = cut;
    const single = singleOf(this.regions, cut);
    if (single !== null) {
      const rest = this.best(single.rest);
      return rest === null ? null : added(rest, single.patch, seam);
    }
    const [first, second] = [this.best(parts[0]), this.best(parts[1])];
    if (first === null || second === null) return null;
    return { kind: 'joined', parts: [first, second], seam, sections: first.sections + second.sections };
  }
}

/** The one patch that a cut cuts off, and the rest; null when both sides have several. Of two patches the larger one stays. */
function singleOf(
  { drawing }: Regions,
  { parts: [one, other] }: Cut,
): { readonly patch: number; readonly rest: Region } | null {
  const size = ({ patches }: Region) =>
    doubleArea(patchPoints(drawing, drawing.patches[patches[0] as number] as Patch));
  const bothSingle = one.patches.length === 1 && other.patches.length === 1;
  const off = bothSingle ? size(other) <= size(one) : other.patches.length === 1;
  const [single, rest] = off ? [other, one] : [one, other];
  return single.patches.length === 1 ? { patch: single.patches[0] as number, rest } : null;
}

function added(rest: Tree, patch: number, seam: readonly number[]): Section {
  if (rest.kind === 'joined') {
    return { kind: 'section', base: rest, patches: [patch], seams: [seam], sections: rest.sections + 1 };
  }
  return { ...rest, patches: [...rest.patches, patch], seams: [...rest.seams, seam] };
}

/** A part as one section that begins with a patch; null when patches cannot be cut off one by one. */
function chainOf(regions: Regions, part: Region): Section | null {
  const cuts: { readonly patch: number; readonly seam: readonly number[] }[] = [];
  let rest = part;
  while (rest.patches.length > 1) {
    // Whichever is cut off first, the rest stays a chain; the longest seams are sewn last.
    const [off] = cutsOf(regions, rest);
    const single = off === undefined ? null : singleOf(regions, off);
    if (off === undefined || single === null) return null;
    cuts.unshift({ patch: single.patch, seam: off.seam });
    rest = single.rest;
  }
  const patches = [rest.patches[0] as number, ...cuts.map(({ patch }) => patch)];
  return { kind: 'section', base: null, patches, seams: cuts.map(({ seam }) => seam), sections: 1 };
}

function planOf(tree: Tree, fewest: boolean): FoundationPlan {
  const sections: FoundationSection[] = [];
  const joins: FoundationJoin[] = [];
  const take = (part: Tree): readonly number[] => {
    if (part.kind === 'section') {
      const base = part.base === null ? [] : take(part.base);
      const [seam] = part.seams;
      const alone = base.length > 0 && part.patches.length === 1 && seam !== undefined;
      sections.push(
        alone ? { base: [], patches: part.patches, seams: [] } : { base, patches: part.patches, seams: part.seams },
      );
      // A single patch is sewn to joined sections as it is: nothing is gained by laying them on one more paper.
      if (alone) joins.push({ first: base, second: [sections.length - 1], seam });
      return [...base, sections.length - 1];
    }
    const [first, second] = [take(part.parts[0]), take(part.parts[1])];
    joins.push({ first, second, seam: part.seam });
    return [...first, ...second];
  };
  take(tree);
  return { sections, joins, fewest };
}
