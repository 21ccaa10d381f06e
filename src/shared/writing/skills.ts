import { toRuler } from '../measure/inches.ts';
import { CENTIMETRE, type Units } from '../measure/metric.ts';
import { count, type Traced } from '../measure/traced.ts';
import { NO_SEAMS, seamCensus, seamSkills, together } from '../piecing/census.ts';
import { unitPolygons } from '../piecing/unitShape.ts';
import type { Words } from './book.ts';
import type { Desk } from './desk.ts';
import { field, inSizes } from './words.ts';

/** What the maker will do and how fine it is, worked out from the construction itself. */
export function skills(desk: Desk): readonly Words[] {
  const methods = new Set<string>();
  for (const { blocks } of desk.sizes) {
    for (const { units } of blocks) {
      for (const { plan, method } of units) if (plan.stages.length > 0) methods.add(method.name);
    }
  }
  const seams = desk.blocks.map(({ piecing }) => seamCensus(piecing.root, piecing.units)).reduce(together, NO_SEAMS);
  const points = desk.sizes.map((size) => count(size.points, ''));
  return [
    ...[...methods].map((name) => [name]),
    ...seamSkills(seams).map((words) => [words]),
    ...(desk.pattern.binding.cut === undefined ? [] : [['Bias binding']]),
    ...(points.some((point) => point.value > 0) ? [['Points to match: ', ...inSizes(points, allNames(desk))]] : []),
    ['Smallest piece, finished: ', ...smallest(desk)],
  ];
}

/** Names stand behind the numbers here: their order is only told on a later page. */
function allNames({ sizes }: Desk): readonly string[] {
  return sizes.map(({ size }) => size.name);
}

/** Short words for the cover. */
export function coverSkills(desk: Desk): readonly string[] {
  return skills(desk)
    .filter((words) => words.length === 1)
    .map(([only]) => String(only));
}

/** The narrowest patch of the pattern, in its smallest size. */
function smallest(desk: Desk): Words {
  const sides = desk.sizes.flatMap(({ blocks }) =>
    blocks.flatMap(({ units, grid }) => units.map(({ unit }) => narrowestSide(unit) * grid)),
  );
  return [field(lengthOf(Math.min(...sides), desk.units))];
}

/** Told on a ruler’s sixteenths or millimetres, and no larger than it is: a curve’s or a diamond’s own width is on no ruler. */
function lengthOf(value: number, units: Units): Traced {
  return { value: toRuler(value, FINEST[units], 'down'), unit: 'inch', name: 'finished', how: { kind: 'given' } };
}

const FINEST: Readonly<Record<Units, number>> = { inches: 1 / 16, centimetres: CENTIMETRE / 10 };

/** The shorter side of the smallest patch's box, in grid units. */
function narrowestSide(unit: Parameters<typeof unitPolygons>[0]): number {
  const sides = unitPolygons(unit).map(({ corners }) => {
    const xs = corners.map(({ x }) => x);
    const ys = corners.map(({ y }) => y);
    return Math.min(Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys));
  });
  return Math.min(...sides);
}
