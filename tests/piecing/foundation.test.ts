import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Drawing, doubleArea, type Patch, patchPoints } from '../../src/shared/drawing/drawing.ts';
import type { Point } from '../../src/shared/drawing/turn.ts';
import { workOf } from '../../src/shared/piecing/allowance/work.ts';
import { laidPiece } from '../../src/shared/piecing/foundation/laidPiece.ts';
import { papersOf } from '../../src/shared/piecing/foundation/paper.ts';
import {
  canSewOnPaper,
  type FoundationPlan,
  type FoundationSections,
  foundationSections,
} from '../../src/shared/piecing/foundation/sections.ts';
import { lower } from '../../src/shared/piecing/lower.ts';
import type { Unit } from '../../src/shared/piecing/piecing.ts';
import { starter, starterBook, starterRecipes } from '../helpers/starters.ts';
import { slicedUnits } from './someUnits.ts';

type Pieced = Extract<Unit, { kind: 'pieced' }>;

function drawingOf(id: string): Drawing {
  const lowered = lower(starter(id), {}, starterBook(), id);
  if (!lowered.ok) throw new Error(id);
  return lowered.value.drawing;
}

function planOf(sections: FoundationSections): FoundationPlan {
  if (!sections.ok) throw new Error(sections.why.what);
  return sections.plan;
}

const sectionsIn = (id: string) => planOf(foundationSections(drawingOf(id))).sections;

/** Edges that a patch of one part shares with a patch of another, each as two vertices. */
function sharedEdges(drawing: Drawing, one: readonly number[], other: readonly number[]): readonly [number, number][] {
  const walked = new Set(
    other.flatMap((patch) => {
      const { outline } = drawing.patches[patch] as Patch;
      return outline.map((a, i) => `${a} ${outline[(i + 1) % outline.length]}`);
    }),
  );
  return one.flatMap((patch) => {
    const { outline } = drawing.patches[patch] as Patch;
    return outline.flatMap((a, i): [number, number][] => {
      const b = outline[(i + 1) % outline.length] as number;
      return walked.has(`${b} ${a}`) ? [[a, b]] : [];
    });
  });
}

/** Half a crossing: on which side of the line through two points a third lies, as twice an area. */
const turnOf = (a: Point, b: Point, c: Point) => (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);

const areaOf = (drawing: Drawing, part: readonly number[]) =>
  part.reduce((sum, patch) => sum + doubleArea(patchPoints(drawing, drawing.patches[patch] as Patch)) / 2, 0);

/** Twice the area of what a rubber band round some points holds (Andrew's monotone chain, 1979). */
function bandArea(points: readonly Point[]): number {
  const sorted = [...points].sort((p, q) => p.x - q.x || p.y - q.y);
  const half = (all: readonly Point[]) => {
    const chain: Point[] = [];
    for (const point of all) {
      while (chain.length > 1 && turnOf(chain.at(-2) as Point, chain.at(-1) as Point, point) <= 1e-12) chain.pop();
      chain.push(point);
    }
    return chain.slice(0, -1);
  };
  return doubleArea([...half(sorted), ...half([...sorted].reverse())]) / 2;
}

/**
 * Whether two parts can be sewn by one straight seam over the whole edge of both: what they share is one straight line, and
 * neither part nor both together have an inside corner.
 */
function isStraightSeam(drawing: Drawing, one: readonly number[], other: readonly number[]): boolean {
  const shared = sharedEdges(drawing, one, other);
  const [first] = shared;
  if (first === undefined) return false;
  const [a, b] = first.map((vertex) => drawing.points[vertex] as Point) as [Point, Point];
  const straight = shared.flat().every((vertex) => Math.abs(turnOf(a, b, drawing.points[vertex] as Point)) < 1e-6);
  return straight && [one, other, [...one, ...other]].every((part) => isConvex(drawing, part));
}

function isConvex(drawing: Drawing, part: readonly number[]): boolean {
  const points = part.flatMap((patch) => patchPoints(drawing, drawing.patches[patch] as Patch));
  return Math.abs(bandArea(points) - areaOf(drawing, part)) < 1e-6;
}

/** The fewest sections, by trying every way to part every set of patches in two; null when there is none. */
function fewestSections(drawing: Drawing): number | null {
  const members = (set: number) => drawing.patches.flatMap((_, patch) => ((set >> patch) & 1 ? [patch] : []));
  const known = new Map<number, { paper: number; joined: number }>();
  const best = (set: number): { paper: number; joined: number } => {
    const before = known.get(set);
    if (before !== undefined) return before;
    const found = { paper: Number.POSITIVE_INFINITY, joined: Number.POSITIVE_INFINITY };
    if (members(set).length === 1) found.paper = 1;
    for (let part = (set - 1) & set; part > 0; part = (part - 1) & set) {
      const rest = set ^ part;
      if (!isStraightSeam(drawing, members(part), members(rest))) continue;
      const [a, b] = [best(part), best(rest)];
      found.joined = Math.min(found.joined, Math.min(a.paper, a.joined) + Math.min(b.paper, b.joined));
      if (members(part).length === 1) found.paper = Math.min(found.paper, b.paper, b.joined + 1);
    }
    known.set(set, found);
    return found;
  };
  const { paper, joined } = best(2 ** drawing.patches.length - 1);
  const least = Math.min(paper, joined);
  return Number.isFinite(least) ? least : null;
}

/** Sews a plan on paper again: every seam must be straight and whole, and nothing be left over. */
function sewnAgain(drawing: Drawing, { sections, joins }: FoundationPlan): readonly number[] {
  const made = new Map<string, readonly number[]>();
  const key = (group: readonly number[]) => [...group].sort((a, b) => a - b).join(' ');
  const take = (group: readonly number[]): readonly number[] => {
    const part = made.get(key(group)) ?? section(group);
    made.delete(key(group));
    return part;
  };
  const section = (group: readonly number[]): readonly number[] => {
    const index = group.at(-1) as number;
    const { base, patches, seams } = sections[index] as FoundationPlan['sections'][number];
    expect(key(group)).toBe(key([...base, index]));
    const laid = base.length === 0 ? patches.slice(0, 1) : take(base);
    const added = base.length === 0 ? patches.slice(1) : patches;
    expect(seams).toHaveLength(added.length);
    const part = [...laid];
    added.forEach((patch, i) => {
      expect(isStraightSeam(drawing, part, [patch])).toBe(true);
      const ends = new Set(sharedEdges(drawing, part, [patch]).flat());
      expect(new Set(seams[i])).toEqual(ends);
      part.push(patch);
    });
    return part;
  };
  for (const { first, second } of joins) {
    const [a, b] = [take(first), take(second)];
    expect(isStraightSeam(drawing, a, b)).toBe(true);
    made.set(key([...first, ...second]), [...a, ...b]);
  }
  const all = sections.map((_, index) => index);
  const whole = made.get(key(all)) ?? section(all);
  made.delete(key(all));
  expect(made.size).toBe(0);
  return whole;
}

describe('sewing on paper', () => {
  it('takes every patch once, each along one straight line over the whole edge of what is there', () => {
    fc.assert(
      fc.property(slicedUnits, (unit) => {
        const { drawing } = unit as Pieced;
        const whole = sewnAgain(drawing, planOf(foundationSections(drawing)));
        expect([...whole].sort((a, b) => a - b)).toEqual(drawing.patches.map((_, index) => index));
      }),
    );
  });

  it('takes the fewest sections there can be', () => {
    fc.assert(
      fc.property(slicedUnits, (unit) => {
        const { drawing } = unit as Pieced;
        const { sections, fewest } = planOf(foundationSections(drawing));
        expect(fewest).toBe(true);
        expect(sections.length).toBe(fewestSections(drawing));
      }),
      { numRuns: 60 },
    );
  });

  it('can be done again for every starter recipe that can be sewn on paper', () => {
    for (const { id } of starterRecipes()) {
      const drawing = drawingOf(id);
      const found = foundationSections(drawing);
      expect(canSewOnPaper(drawing)).toBe(found.ok);
      if (found.ok) expect(sewnAgain(drawing, found.plan)).toHaveLength(drawing.patches.length);
    }
  });

  // Common practice: what is sewn round a middle is one section; rows of squares are one section each.
  it('is one section for geese, a square in a square, log cabins and pineapples', () => {
    for (const id of ['pair-of-geese', 'square-in-a-square', 'log-cabin', 'courthouse-steps', 'pineapple', 'economy']) {
      expect(sectionsIn(id), id).toHaveLength(1);
    }
  });

  it('is three sections for a nine-patch, two for an hourglass', () => {
    expect(sectionsIn('nine-patch')).toHaveLength(3);
    expect(sectionsIn('hourglass')).toHaveLength(2);
  });

  it('lays what was joined before down as the first piece of a section: the middle of a snail’s trail', () => {
    const sections = sectionsIn('snails-trail');
    expect(sections).toHaveLength(3);
    expect(sections[2]?.base).toEqual([0, 1]);
  });

  it('begins with the middle, not with what is sewn to it', () => {
    const drawing = drawingOf('pineapple');
    const [section] = sectionsIn('pineapple');
    const first = drawing.patches[section?.patches[0] as number] as Patch;
    expect(first.role).toBe('centre');
  });

  it('is refused for curves, and for seams that do not run from edge to edge, with the patches it is about', () => {
    const refused = (id: string) => {
      const found = foundationSections(drawingOf(id));
      if (found.ok) throw new Error(id);
      return found.why;
    };
    expect(refused('drunkards-path')).toMatchObject({ kind: 'curved' });
    expect(refused('eight-point-star')).toMatchObject({ kind: 'no-straight-seam' });
    expect(refused('bright-hopes')).toMatchObject({ kind: 'no-straight-seam', patches: [0, 1, 2, 3, 4] });
    for (const id of ['drunkards-path', 'spool']) expect(refused(id).what).toMatch(/^[A-Z].*\.$/);
  });
});

describe('the pieces for paper', () => {
  const seam = 0.25;
  const spare = 0.25;

  it('reach over their areas with a seam and some to spare on every side, once they are opened', () => {
    fc.assert(
      fc.property(slicedUnits, fc.double({ min: 0.4, max: 3, noNaN: true }), (unit, grid) => {
        const { drawing } = unit as Pieced;
        const work = workOf(unit, grid, { seam, points: 'blunted' });
        for (const { areas } of papersOf(work, planOf(foundationSections(drawing)))) {
          for (const area of areas) {
            const { width, depth, corner, along, away } = laidPiece(area, seam, spare);
            for (const { x, y } of area.corners) {
              const [dx, dy] = [x - corner.x, y - corner.y];
              const [u, v] = [dx * along.x + dy * along.y, dx * away.x + dy * away.y];
              const near = area.seam === null ? seam + spare : seam;
              expect(Math.min(u, width - u)).toBeGreaterThanOrEqual(seam + spare - 1e-9);
              expect(v).toBeGreaterThanOrEqual(near - 1e-9);
              expect(depth - v).toBeGreaterThanOrEqual(seam + spare - 1e-9);
            }
          }
        }
      }),
    );
  });
});
