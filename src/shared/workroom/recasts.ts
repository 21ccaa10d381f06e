import { allot } from '../cloth/bundle/allot.ts';
import { isBundled } from '../cloth/bundle/outside.ts';
import { type Fewest, fewestStrips } from '../cloth/bundle/recast.ts';
import { isEnough, supplyOf } from '../cloth/bundle/stress.ts';
import type { Bundle } from '../pattern/schema.ts';
import { wantsIn } from './bundles.ts';
import type { WorkedOut, WorkedSize } from './workedOut.ts';

/** Another bundle that one size could be cut from. */
export interface Recast {
  readonly kind: 'fewest' | 'count' | 'without';
  /** With 'without', the fabric that is bought by the yard instead. */
  readonly fabric?: string;
  /** Strips in all. */
  readonly strips: number;
  /** What of the bundle becomes another. */
  readonly change: Partial<Bundle>;
  /** Sizes that one such bundle is enough for, by id. */
  readonly enoughFor: readonly string[];
}

/** How many strips are sold together (common practice). */
const COUNTS = [20, 30, 40] as const;
/** How many squares are sold together (common practice). */
const SQUARES = [42] as const;

/**
 * Other bundles for one size: the fewest strips that do; counts that are sold, shared out among the values as the size wants
 * them; and, where the bundle is too small, each fabric that could come from yardage so that it does. Only those that are
 * enough for the size.
 */
export function recastsFor(worked: WorkedOut, size: WorkedSize): readonly Recast[] {
  const { bundle } = worked.pattern;
  if (bundle === undefined) return [];
  const wants = wantsIn(worked, size);
  const { square } = supplyOf(bundle);
  const fewest = wants === null ? null : fewestStrips(wants, bundle.length, square);
  const least = fewest === null ? 0 : total(fewest);
  const counts = fewest === null ? [] : (square ? SQUARES : COUNTS).filter((count) => count > least);
  const changes: Omit<Recast, 'enoughFor'>[] = [
    ...(fewest === null ? [] : [{ kind: 'fewest' as const, strips: least, change: { values: fewest } }]),
    ...counts.map((strips) => {
      return { kind: 'count' as const, strips, change: { values: sharedOut(fewest as Fewest, strips) } };
    }),
    ...(enoughIn(worked, size, bundle) ? [] : withoutOne(worked, bundle)),
  ];
  return changes
    .filter(({ change }) => !isThis(change, bundle) && enoughIn(worked, size, { ...bundle, ...change }))
    .map((one) => ({ ...one, enoughFor: sizesFor(worked, { ...bundle, ...one.change }) }));
}

function total({ light, medium, dark }: Fewest): number {
  return light + medium + dark;
}

function isThis({ values, fabrics }: Partial<Bundle>, bundle: Bundle): boolean {
  return fabrics === undefined && values !== undefined && JSON.stringify(values) === JSON.stringify(bundle.values);
}

/** So many strips among the values: what is wanted at the least, and the rest in the same shares, the largest first. */
export function sharedOut(fewest: Fewest, strips: number): Bundle['values'] {
  const [least, over] = [total(fewest), strips - total(fewest)];
  const more = (many: number) => many + (least === 0 ? 0 : Math.floor((over * many) / least));
  const values = { light: more(fewest.light), medium: more(fewest.medium), dark: more(fewest.dark) };
  const order = (['light', 'medium', 'dark'] as const).toSorted((a, b) => fewest[b] - fewest[a]);
  for (let rest = strips - total(values), i = 0; rest > 0; rest--, i++) values[order[i % 2] as keyof Fewest] += 1;
  return values;
}

function withoutOne({ pattern }: WorkedOut, bundle: Bundle): readonly Omit<Recast, 'enoughFor'>[] {
  const own = pattern.fabrics.filter(({ id }) => isBundled(id, bundle));
  return own.map(({ id }) => {
    const fabrics = own.filter((fabric) => fabric.id !== id).map((fabric) => fabric.id);
    const match = bundle.match.filter((fabric) => fabric !== id);
    return { kind: 'without' as const, fabric: id, strips: total(bundle.values), change: { fabrics, match } };
  });
}

function sizesFor(worked: WorkedOut, bundle: Bundle): readonly string[] {
  return worked.sizes.filter((size) => enoughIn(worked, size, bundle)).map(({ size }) => size.id);
}

function enoughIn(worked: WorkedOut, size: WorkedSize, bundle: Bundle): boolean {
  const wants = wantsIn(worked, size, bundle);
  return wants !== null && isEnough(allot(wants, supplyOf(bundle)));
}
