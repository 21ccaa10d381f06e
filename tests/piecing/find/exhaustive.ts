import type { Drawing } from '../../../src/shared/drawing/drawing.ts';
import { distinct } from '../../../src/shared/piecing/distinct.ts';
import { total, treeCost } from '../../../src/shared/piecing/find/cost.ts';
import { cutsOf, endsOf, partsBetween } from '../../../src/shared/piecing/find/cuts.ts';
import { boxOf, type Field, fieldOf } from '../../../src/shared/piecing/find/field.ts';
import type { Along, Region } from '../../../src/shared/piecing/find/fieldPatch.ts';
import { sewnFrom, unitsIn } from '../../../src/shared/piecing/find/made/choose.ts';
import { pinsOf } from '../../../src/shared/piecing/find/pins.ts';
import { planCost } from '../../../src/shared/piecing/find/planCost.ts';
import { recognise } from '../../../src/shared/piecing/find/recognise.ts';
import { ringsIn } from '../../../src/shared/piecing/find/ringAbout.ts';
import type { BlockPart, Log, Ring, Unit, UnitLeaf } from '../../../src/shared/piecing/piecing.ts';
import type { LooseLeaf } from '../../../src/shared/piecing/sub.ts';

/** Beyond so many plans a drawing is too large to look at every one. */
const MOST_PLANS = 60_000;

/** The cheapest of all plans of a drawing of rectangles and units of the trade; null when there are too many to look at. */
export function cheapestOfAll(drawing: Drawing): number | null {
  const all = new AllPlans(fieldOf(drawing));
  const plans = all.of(all.field.whole);
  if (plans === null) return null;
  const units = [...all.units.values()];
  return Math.min(...plans.map((plan) => planCost(plan, units)));
}

class AllPlans {
  readonly field: Field;
  readonly units = new Map<string, Unit>();
  readonly #known = new Map<string, readonly BlockPart[] | null>();

  constructor(field: Field) {
    this.field = field;
  }

  /** Every plan of a rectangle, rows within rows of the same direction left out; null when there are too many. */
  of(region: Region): readonly BlockPart[] | null {
    const key = Object.values(region).join(' ');
    const known = this.#known.get(key);
    if (known !== undefined) return known;
    const ways = [
      this.#unit(region),
      this.#rows(region, 'across'),
      this.#rows(region, 'down'),
      this.#rounds(region),
      this.#rings(region),
    ];
    const plans = ways.some((way) => way === null) ? null : ways.flatMap((way) => way ?? []);
    const kept = plans !== null && plans.length > MOST_PLANS ? null : plans;
    this.#known.set(key, kept);
    return kept;
  }

  #named(loose: LooseLeaf): UnitLeaf {
    const { unit, leaf } = distinct(loose);
    this.units.set(unit.key, unit);
    return leaf;
  }

  #unit(region: Region): readonly BlockPart[] {
    const leaf = recognise(this.field, region, this.field.inside(region));
    return leaf === null ? [] : [this.#named(leaf)];
  }

  #cuts(region: Region, along: Along): readonly number[] {
    return cutsOf(this.field, region, along, pinsOf(this.field, []));
  }

  #rows(region: Region, along: Along): readonly BlockPart[] | null {
    const cuts = this.#cuts(region, along);
    const [start, end] = endsOf(region, along);
    const box = boxOf(this.field, region);
    const rows: BlockPart[] = [];
    for (let choice = 1; choice < 1 << cuts.length; choice += 1) {
      const lines = cuts.filter((_, i) => (choice >> i) % 2 === 1);
      const parts = partsBetween(region, along, [start, ...lines, end]).map((part) => this.of(part));
      const other = parts.map(
        (plans) => plans?.filter((plan) => !(plan.kind === 'row' && plan.along === along)) ?? null,
      );
      const every = together(other);
      if (every === null) return null;
      for (const chosen of every) rows.push({ kind: 'row', along, parts: chosen, box });
      if (rows.length > MOST_PLANS) return null;
    }
    return rows;
  }

  #rounds(region: Region): readonly BlockPart[] | null {
    const box = boxOf(this.field, region);
    const [uprights, levels] = [this.#cuts(region, 'across'), this.#cuts(region, 'down')];
    const sides = [
      ...levels.slice(0, 1).map((at) => ['top', { ...region, bottom: at }, { ...region, top: at }] as const),
      ...levels.slice(-1).map((at) => ['bottom', { ...region, top: at }, { ...region, bottom: at }] as const),
      ...uprights.slice(0, 1).map((at) => ['left', { ...region, right: at }, { ...region, left: at }] as const),
      ...uprights.slice(-1).map((at) => ['right', { ...region, left: at }, { ...region, right: at }] as const),
    ];
    const plans: BlockPart[] = [];
    for (const [side, strip, rest] of sides) {
      if (this.field.count(strip) !== 1) continue;
      const leaf = recognise(this.field, strip, this.field.inside(strip));
      const inner = this.of(rest);
      if (inner === null) return null;
      if (leaf === null || leaf.shape.kind !== 'plain') continue;
      const log: Log<UnitLeaf> = { side, part: this.#named({ ...leaf, shape: { ...leaf.shape, kind: 'log' } }) };
      for (const core of inner) {
        if (core.kind === 'rounds') plans.push({ ...core, logs: [...core.logs, log], box });
        else plans.push({ kind: 'rounds', core, logs: [log], box });
      }
    }
    return plans;
  }

  #rings(region: Region): readonly BlockPart[] | null {
    const box = boxOf(this.field, region);
    const plans: BlockPart[] = [];
    for (const { core, arms } of ringsIn(this.field, region)) {
      const every = together([core, ...arms.map((arm) => arm.region)].map((part) => this.of(part)));
      if (every === null) return null;
      for (const [middle, ...made] of every) {
        const logs = made.map((part, i) => ({ side: (arms[i] as (typeof arms)[number]).side, part }));
        plans.push({ kind: 'ring', core: middle as BlockPart, logs: logs as unknown as Ring<UnitLeaf>['logs'], box });
      }
    }
    return plans;
  }
}

/** One of each, in every way; null when any has too many or all together are. */
function together(each: readonly (readonly BlockPart[] | null)[]): readonly (readonly BlockPart[])[] | null {
  let ways: readonly (readonly BlockPart[])[] = [[]];
  for (const plans of each) {
    if (plans === null || ways.length * plans.length > MOST_PLANS) return null;
    ways = ways.flatMap((way) => plans.map((plan) => [...way, plan]));
  }
  return ways;
}

/** The cheapest way to sew a drawing when every set of units of the trade in it that do not overlap is tried. */
export function leastOfAllChoices(drawing: Drawing): number {
  const units = unitsIn(drawing);
  const costs = Array.from({ length: 1 << units.length }, (_, choice) => {
    const taken = units.filter((_, i) => (choice >> i) % 2 === 1);
    const patches = taken.flatMap((unit) => unit.patches);
    return new Set(patches).size < patches.length ? Infinity : total(treeCost(sewnFrom(drawing, taken)));
  });
  return Math.min(...costs);
}
