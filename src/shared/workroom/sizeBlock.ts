import type { Finding } from '../measure/finding.ts';
import type { Inches } from '../measure/inches.ts';
import { count, given, named, plus, type Traced, times } from '../measure/traced.ts';
import type { BlockChoice, Pattern } from '../pattern/schema.ts';
import { isHanded } from '../piecing/likeness.ts';
import type { Method, MethodPlan, Scale } from '../piecing/method.ts';
import { methodNamed, methodsFor, nameOf } from '../piecing/methods/index.ts';
import type { Unit } from '../piecing/piecing.ts';
import { leavesOf } from '../piecing/tree.ts';
import type { Quilt } from '../quilt/quilt.ts';
import { runsOf, type SizedBlock, type SizedUnit } from '../quilt/sized.ts';
import { oversizeOf } from './oversize.ts';
import type { WorkedBlock } from './workedOut.ts';

/** A block at the scale of one size: its units, how each is made, how many. */
export function sizeBlock(
  block: WorkedBlock,
  pattern: Pattern,
  quilt: Pick<Quilt, 'block' | 'counts'> & Partial<Pick<Quilt, 'measures' | 'reversed'>>,
): SizedBlock {
  const { drawing, root, units } = block.piecing;
  const { house } = pattern;
  const measure = quilt.measures?.[block.id] ?? quilt.block;
  const grid: Inches = measure.width / drawing.width;
  const times = quilt.counts[block.id] ?? 0;
  const scale: Scale = { grid, seam: house.seam, step: house.step, roleValue: valuesOf(block, pattern) };
  const choice = pattern.blocks.find(({ id }) => id === block.id);
  const inOne = new Map<string, number>();
  const add = (key: string, many: number) => inOne.set(key, (inOne.get(key) ?? 0) + many);
  const onSide = new Map<string, number>();
  for (const { unit, turn } of leavesOf(root)) {
    add(unit, 1);
    if (turn.quarters % 2 === 1) onSide.set(unit, (onSide.get(unit) ?? 0) + 1);
  }
  const made = units.map((unit) => {
    const own = { ...scale, oversize: oversizeOf(unit, choice, house) };
    return makeUnit(unit, own, methodOf(unit, choice, pattern));
  });
  // What a pieced unit is sewn from comes before it; how many of it there are is told by the tree alone.
  for (const { unit, plan } of made) {
    for (const inside of plan.takes ?? []) {
      add(inside.unit.key, inside.count * (inOne.get(unit.key) ?? 0));
      const turned = inside.count * (onSide.get(unit.key) ?? 0);
      onSide.set(inside.unit.key, (onSide.get(inside.unit.key) ?? 0) + turned);
    }
  }
  return {
    id: block.id,
    grid,
    count: times,
    // A unit inside one that is sewn another way, on paper say, is not made at all.
    units: made.flatMap((one) => {
      const perBlock = inOne.get(one.unit.key) ?? 0;
      const reversed = isHanded(one.unit) ? perBlock * (quilt.reversed?.[block.id] ?? 0) : 0;
      const perBlockOnSide = onSide.get(one.unit.key) ?? 0;
      return perBlock === 0 ? [] : [{ ...one, perBlockOnSide, ...countOf(one.plan, perBlock, times, reversed) }];
    }),
    unfinished: {
      width: unfinished(measure.width, house.seam),
      height: unfinished(measure.height, house.seam),
    },
  };
}

/** How light the fabric is that a role is cut from. */
function valuesOf(block: WorkedBlock, pattern: Pattern): NonNullable<Scale['roleValue']> {
  const values = new Map(pattern.fabrics.map(({ id, value }) => [id, value]));
  return (role) => values.get(block.fabricOf[role] ?? '');
}

function unfinished(finished: Inches, seam: Inches): Traced {
  return plus(given(finished, 'finished'), named(times(count(2, ''), given(seam, 'seam')), 'for two seams'));
}

type Counts = Pick<SizedUnit, 'perBlock' | 'needed' | 'reversed' | 'runs'>;

function makeUnit(
  unit: Unit,
  scale: Scale & { readonly oversize: Inches },
  method: Method,
): Omit<SizedUnit, keyof Counts | 'perBlockOnSide'> {
  const others = methodsFor(unit).filter(({ id }) => id !== method.id);
  const named = { method: nameOf(method), others: others.map(nameOf) };
  return { unit, ...named, plan: method.plan(unit, scale), oversize: scale.oversize };
}

/** @param reversed of all units, those that go into reversed blocks and are mirror images there */
function countOf(plan: MethodPlan, perBlock: number, blocks: number, reversed: number): Counts {
  const needed = perBlock * blocks;
  return { perBlock, needed, reversed, runs: runsOf(plan, needed, reversed) };
}

/**
 * The method of a unit: the block's choice for this very unit, its choice for the kind, the recipe's, the house's, else
 * the best the trade has. A name that makes no such unit is passed over here and told by `methodFindings`.
 */
function methodOf(unit: Unit, choice: BlockChoice | undefined, pattern: Pattern): Method {
  const named = wishes(unit, choice, pattern).map(({ id }) => methodNamed(id));
  const fit = named.find((method) => method?.makes(unit) === true);
  const [best] = methodsFor(unit);
  const method = fit ?? best;
  if (method === undefined || method === null) throw new RangeError(`No method makes the unit “${unit.key}”`);
  return method;
}

interface Wish {
  readonly id: string;
  readonly path: string;
}

function wishes(unit: Unit, choice: BlockChoice | undefined, pattern: Pattern): readonly Wish[] {
  const at = `blocks[${choice === undefined ? 0 : pattern.blocks.indexOf(choice)}]`;
  const all = [
    { id: choice?.methods[unit.key], path: `${at}.methods.${unit.key}` },
    { id: choice?.methods[unit.kind], path: `${at}.methods.${unit.kind}` },
    { id: unit.method, path: `${at}.recipe` },
    { id: pattern.house.methods[unit.kind], path: `house.methods.${unit.kind}` },
  ];
  return all.flatMap(({ id, path }) => (id === undefined ? [] : [{ id, path }]));
}

/** Wishes for methods that do not exist or do not make the unit, and wishes for units the block has not. */
export function methodFindings(block: WorkedBlock, pattern: Pattern): readonly Finding[] {
  const choice = pattern.blocks.find(({ id }) => id === block.id);
  const { units } = block.piecing;
  const wrong = units.flatMap((unit) =>
    wishes(unit, choice, pattern).flatMap(({ id, path }): Finding[] => {
      if (methodNamed(id)?.makes(unit) === true) return [];
      const can = methodsFor(unit).map((method) => `“${method.id}”`);
      const what = `“${id}” does not make the unit ${unit.key} of block ${block.id}.`;
      return [{ level: 'stops', what, where: { path, on: block.id }, mend: `It can be made by ${can.join(', ')}.` }];
    }),
  );
  const names = new Set<string>(units.flatMap((unit) => [unit.key, unit.kind]));
  const at = `blocks[${choice === undefined ? 0 : pattern.blocks.indexOf(choice)}]`;
  const strays = (['methods', 'oversize'] as const).flatMap((of) => {
    const stray = Object.keys(choice?.[of] ?? {}).filter((key) => !names.has(key));
    const what = of === 'methods' ? 'choose a method for' : 'cut larger';
    return stray.map(
      (key): Finding => ({
        level: 'note',
        what: `Block ${block.id} has no unit “${key}” to ${what}.`,
        where: { path: `${at}.${of}.${key}`, on: block.id },
      }),
    );
  });
  return [...wrong, ...strays];
}
