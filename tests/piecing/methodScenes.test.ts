import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { flatCorners } from '../../src/shared/drawing/curve.ts';
import { doubleArea } from '../../src/shared/drawing/drawing.ts';
import type { Point } from '../../src/shared/drawing/turn.ts';
import type { Traced } from '../../src/shared/measure/traced.ts';
import type { Method, MethodPlan, Scale } from '../../src/shared/piecing/method.ts';
import { methodNamed, methodsFor } from '../../src/shared/piecing/methods/index.ts';
import { exactly } from '../../src/shared/piecing/methods/sums.ts';
import type { Unit } from '../../src/shared/piecing/piecing.ts';
import type { Cloth, Scene, SceneLine } from '../../src/shared/piecing/scene.ts';
import { unitPolygons } from '../../src/shared/piecing/unitShape.ts';
import { fourPatch, hst, QUARTER, ruledScales, scales, units } from './someUnits.ts';

const NEAR = 1e-9;

function always(
  at: fc.Arbitrary<Scale>,
  check: (plan: MethodPlan, scale: Scale, unit: Unit, one: Method) => void,
): void {
  const property = fc.property(units, at, (unit, scale) => {
    for (const one of methodsFor(unit)) check(one.plan(unit, scale), scale, unit, one);
  });
  fc.assert(property);
}

const scenesOf = (plan: MethodPlan): readonly Scene[] => plan.stages.map(({ scene }) => scene);
const sceneOf = (plan: MethodPlan, stage: number): Scene => plan.stages[stage]?.scene as Scene;
const lastScene = (plan: MethodPlan): Scene => plan.stages.at(-1)?.scene as Scene;
const linesOf = (scene: Scene, kind: SceneLine['kind']) => scene.lines.filter((line) => line.kind === kind);

const at = (x: number, y: number): Point => ({ x, y });

/** By how much a length grew when it was rounded to the ruler. */
const gained = (length: Traced) => length.value - exactly(length);

/** Whether a spot lies in a piece of any shape; a hair outside still counts. */
const covers = (corners: readonly Point[], spot: Point) =>
  [-1e-6, 1e-6].some((x) => [-1e-6, 1e-6].some((y) => within(corners, at(spot.x + x, spot.y + y))));

/** What is seen at a spot: the topmost piece there. */
const seenAt = (scene: Scene, point: Point): Cloth | undefined =>
  [...scene.cloth].reverse().find(({ corners }) => within(corners, point));

/** How far apart two parallel lines lie; null when they are not parallel. */
function apart(one: Pick<SceneLine, 'from' | 'to'>, other: Pick<SceneLine, 'from' | 'to'>): number | null {
  const along = { x: one.to.x - one.from.x, y: one.to.y - one.from.y };
  const length = Math.hypot(along.x, along.y);
  const away = ({ x, y }: Point) => Math.abs(along.x * (y - one.from.y) - along.y * (x - one.from.x)) / length;
  return Math.abs(away(other.from) - away(other.to)) > NEAR ? null : away(other.from);
}

const edgesOf = ({ corners }: Cloth) =>
  corners.map((from, i) => ({ from, to: corners[(i + 1) % corners.length] as Point }));

/** The unit's own outline in its last scene: the trimming lines, or everything. */
function outline(scene: Scene): { x: number; y: number; width: number; height: number } {
  const cuts = linesOf(scene, 'cut').flatMap(({ from, to }) => [from, to]);
  if (cuts.length === 0) return { x: 0, y: 0, width: scene.width, height: scene.height };
  const xs = cuts.map(({ x }) => x);
  const ys = cuts.map(({ y }) => y);
  const [x, y] = [Math.min(...xs), Math.min(...ys)];
  return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y };
}

describe('what the maker has in front of her', () => {
  it('lies inside the scene, cloth and lines and arrows, and is said in words too', () => {
    always(scales, (plan) => {
      for (const { cloth, lines, arrows, width, height, alt } of scenesOf(plan)) {
        const ends = [...lines, ...arrows].flatMap(({ from, to }) => [from, to]);
        for (const { x, y } of [...cloth.flatMap(({ corners }) => corners), ...ends]) {
          expect(x >= -NEAR && y >= -NEAR && x <= width + NEAR && y <= height + NEAR).toBe(true);
        }
        expect(alt).toMatch(/^[A-Z].*\.$/);
      }
    });
  });

  it('takes two to five stages, six on paper, or none for what is only cut; a unit of its own seams what it takes', () => {
    always(scales, ({ stages }, _scale, unit, one) => {
      const cutOnly = unit.kind === 'plain' || unit.kind === 'log';
      const most = one.id === 'foundation' ? 6 : unit.kind === 'pieced' ? unit.drawing.patches.length + 1 : 5;
      expect(cutOnly ? stages.length === 0 : stages.length >= 2 && stages.length <= Math.max(2, most)).toBe(true);
    });
  });

  it('begins with exactly the pieces that were cut', () => {
    always(scales, (plan, _scale, _unit, one) => {
      // Strips are cut longer than the piece that is shown, and a template's piece from more than its shape.
      if (plan.stages.length === 0 || one.id.endsWith('-strips') || plan.templates !== undefined) return;
      const cut = plan.cuts.reduce((sum, { count, width, height }) => sum + count * width.value * height.value, 0);
      const shown = (plan.stages[0]?.scene.cloth ?? []).reduce(
        (sum, { corners }) => sum + Math.abs(doubleArea(corners)) / 2,
        0,
      );
      expect(shown).toBeCloseTo(cut, 8);
    });
  });

  it('is sewn a seam from the drawn line, or, without one, a seam from a cut or a raw edge', () => {
    always(scales, (plan, { seam }, _unit, one) => {
      for (const scene of scenesOf(plan)) {
        const marked = linesOf(scene, 'marked');
        const cloth = [...linesOf(scene, 'cut'), ...scene.cloth.flatMap(edgesOf)];
        const guides = marked.length > 0 && one.id !== 'hst-four' ? marked : cloth;
        // Paper is sewn on its printed lines.
        const away = one.id === 'foundation' ? 0 : seam;
        for (const sewn of linesOf(scene, 'sewn')) {
          expect(guides.some((guide) => Math.abs((apart(sewn, guide) ?? 9) - away) < 1e-7)).toBe(true);
        }
      }
    });
  });

  it('is sewn on both sides of every drawn line that is sewn beside', () => {
    for (const id of ['hst-two', 'hst-eight']) {
      const scene = (methodNamed(id) as Method).plan(hst(3), { grid: 1, ...QUARTER }).stages[1]?.scene as Scene;
      expect(linesOf(scene, 'sewn')).toHaveLength(2 * linesOf(scene, 'marked').length);
    }
  });

  it('is trimmed to the printed size, and has cloth all the way round to be trimmed', () => {
    always(scales, (plan, _scale, unit) => {
      if (!plan.trimmed) return;
      const scene = lastScene(plan);
      const { x, y, width, height } = outline(scene);
      expect(width).toBeCloseTo(plan.unfinished.width.value, 8);
      expect(height).toBeCloseTo(plan.unfinished.height.value, 8);
      // The blunted point of a thin template may lack a sliver of its own seam allowance at the edge.
      if ((plan.templates ?? []).length > 0) return;
      // Pieces of a unit of its own that are cut to their size end where the unit does before it is rounded to the ruler.
      const rounded =
        unit.kind === 'pieced' ? Math.max(...[plan.unfinished.width, plan.unfinished.height].map(gained)) : 0;
      const inset = Math.max(0, rounded / 2) + 1e-6;
      for (let part = 0; part <= 1; part += 1 / 64) {
        const rim = [at(part, 0), at(part, 1), at(0, part), at(1, part)].map((share) =>
          at(x + inset + share.x * (width - 2 * inset), y + inset + share.y * (height - 2 * inset)),
        );
        expect(rim.every((spot) => scene.cloth.some(({ corners }) => covers(corners, spot)))).toBe(true);
      }
    });
  });

  it('measures what it should when nothing is trimmed and everything is on the ruler', () => {
    always(ruledScales, (plan, { seam }, unit) => {
      if (plan.trimmed || plan.stages.length === 0) return;
      // A blunted point at the edge may stick out where its two sides run nearly alike: a seam along a side that leans out
      // of the edge by 45° at most reaches √2 seams out of it, at either end.
      const ears = unit.kind === 'pieced' ? 2 * (Math.SQRT2 - 1) * seam : 0;
      for (const of of ['width', 'height'] as const) {
        const more = lastScene(plan)[of] - plan.unfinished[of].value;
        expect(more > -NEAR && more < ears + NEAR).toBe(true);
      }
    });
  });

  it('shows, inside its seams, the very unit that was drawn', () => {
    const spots = fc.array(
      fc.tuple(fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true })),
      {
        minLength: 12,
        maxLength: 12,
      },
    );
    const property = fc.property(units, ruledScales, spots, (unit, scale, places) => {
      const patches = unitPolygons(unit);
      for (const one of methodsFor(unit)) {
        const plan = one.plan(unit, scale);
        if (plan.stages.length === 0) continue;
        const scene = lastScene(plan);
        const { x, y } = outline(scene);
        for (const [across, down] of places) {
          const drawn = { x: across * unit.width, y: down * unit.height };
          // Squares rounded up to the ruler move the seams of a goose, which keeps only its point, by less than 1/25; a middle
          // on its point rounded to the nearest eighth moves them by less than 1/22.
          const moved = one.id === 'geese-four' || one.id === 'square-in-square-triangles';
          const curved = unit.kind === 'quarter-circle' || (unit.kind === 'pieced' && unit.drawing.arcs !== undefined);
          const slack = moved ? 0.046 / scale.grid : curved ? 0.02 * unit.width : 1e-6;
          if (nearSeam(drawn, unit, slack)) continue;
          const spot = { x: x + scale.seam + drawn.x * scale.grid, y: y + scale.seam + drawn.y * scale.grid };
          const patch = patches.find(({ corners }) => within(flatCorners(corners), drawn));
          expect(seenAt(scene, spot)).toMatchObject({ role: patch?.role, side: 'right' });
        }
      }
    });
    fc.assert(property);
  });

  it('is a half-square triangle with its seam from corner to corner of the trimmed square', () => {
    always(scales, (plan, _scale, unit) => {
      if (unit.kind !== 'hst') return;
      const scene = lastScene(plan);
      const { x, y, width, height } = outline(scene);
      const rising = { from: { x, y: y + height }, to: { x: x + width, y } };
      const seams = edgesOf(scene.cloth.at(-1) as Cloth).map((edge) => apart(rising, edge));
      expect(seams.some((distance) => distance !== null && distance < NEAR)).toBe(true);
    });
  });

  it('is a goose whose point lies a seam below the top edge it is trimmed to', () => {
    always(scales, (plan, { seam }, _unit, one) => {
      if (one.id !== 'geese-four') return;
      const scene = lastScene(plan);
      const [goose, sky] = scene.cloth;
      // The sky's long side runs at 45 degrees from its lowest corner to the goose's middle.
      const low = sky?.corners.reduce((a, b) => (b.y > a.y ? b : a)) as Point;
      const middle = goose?.corners[1]?.x as number;
      expect(low.y - (middle - low.x) - outline(scene).y).toBeCloseTo(seam, 8);
      // And the sky stands at least as high as that edge.
      const top = Math.min(...(sky?.corners ?? []).map(({ y }) => y));
      expect(top).toBeLessThanOrEqual(outline(scene).y + NEAR);
    });
  });

  it('is a large triangle with two small ones pressed out a seam from its long side, raw edges level', () => {
    always(scales, (plan, { seam }, _unit, one) => {
      if (one.id !== 'geese-four') return;
      const [half, ...skies] = sceneOf(plan, 2).cloth as readonly [Cloth, Cloth, Cloth];
      const long = { from: half.corners[0] as Point, to: half.corners[1] as Point };
      for (const sky of skies) {
        expect(edgesOf(sky).some((edge) => Math.abs((apart(long, edge) ?? 0) - seam) < NEAR)).toBe(true);
      }
      const xs = (piece: Cloth) => piece.corners.map(({ x }) => x);
      const ys = (piece: Cloth) => piece.corners.map(({ y }) => y);
      expect(Math.min(...skies.flatMap(xs))).toBeCloseTo(Math.min(...xs(half)), 8);
      expect(Math.max(...skies.flatMap(ys))).toBeCloseTo(Math.max(...ys(half)), 8);
    });
  });

  it('points its press arrow at the darker fabric', () => {
    for (const light of ['a', 'b']) {
      const scale: Scale = { grid: 1, ...QUARTER, roleValue: (role) => (role === light ? 'light' : 'dark') };
      const scene = (methodNamed('hst-two') as Method).plan(hst(3), scale).stages[3]?.scene as Scene;
      const tip = scene.arrows[0]?.to as Point;
      expect(seenAt(scene, tip)?.role).toBe(light === 'a' ? 'b' : 'a');
    }
  });

  it('presses a four-patch clockwise about its middle, so that every one nests with every other', () => {
    for (const one of methodsFor(fourPatch(4))) {
      const scene = lastScene(one.plan(fourPatch(4), { grid: 1, ...QUARTER }));
      const [cx, cy] = [scene.width / 2, scene.height / 2];
      expect(scene.arrows).toHaveLength(4);
      for (const { from, to } of scene.arrows) {
        const around = (from.x - cx) * (to.y - from.y) - (from.y - cy) * (to.x - from.x);
        expect(around).toBeGreaterThan(0);
      }
    }
  });
});

/** Whether a spot lies in a patch of any shape: it is on the inner side of an odd number of edges to its right. */
function within(corners: readonly Point[], { x, y }: Point): boolean {
  const crossings = corners.filter((a, i) => {
    const b = corners[(i + 1) % corners.length] as Point;
    return a.y > y !== b.y > y && x < ((b.x - a.x) * (y - a.y)) / (b.y - a.y) + a.x;
  });
  return crossings.length % 2 === 1;
}

function nearSeam({ x, y }: Point, unit: Unit, slack: number): boolean {
  return unitPolygons(unit).some((patch) =>
    flatCorners(patch.corners).some((a, i, corners) => {
      const b = corners[(i + 1) % corners.length] as Point;
      const length = Math.hypot(b.x - a.x, b.y - a.y);
      return Math.abs((b.x - a.x) * (y - a.y) - (b.y - a.y) * (x - a.x)) / length < slack;
    }),
  );
}
