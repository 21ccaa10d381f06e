import { outlinePoints } from '../../drawing/curve.ts';
import type { Drawing } from '../../drawing/drawing.ts';
import { longer, same } from '../../measure/inches.ts';
import { minus, named, plus, type Traced } from '../../measure/traced.ts';
import type { Scale } from '../method.ts';
import type { Unit } from '../piecing.ts';
import { type SeamUnit, unitsOf } from '../seamTree.ts';
import { finishedLength, twoSeams, unfinishedLength } from './sums.ts';

type Pieced = Extract<Unit, { kind: 'pieced' }>;

/**
 * What the ruler takes from a unit and its edge has to make up for: what units that stand in it at a slant lost when they
 * were rounded down, all together, and what the whole gained when it was rounded up. Nothing at sizes the ruler has.
 */
export function roomToTrim(unit: Pieced, scale: Scale): readonly Traced[] {
  const gained = [unit.width, unit.height].flatMap((side) =>
    positive(minus(unfinishedLength(side, scale), exact(side, scale))),
  );
  const slanted = unitsOf(unit.seams).filter((inside) => isSlanted(unit.drawing, inside));
  const lost = slanted.flatMap(({ shape }) =>
    longestOf(
      [shape.width, shape.height].flatMap((side) => positive(minus(exact(side, scale), unfinishedLength(side, scale)))),
    ),
  );
  const [first, ...rest] = [...lost, ...longestOf(gained)];
  return first === undefined ? [] : [named(plus(first, ...rest), 'that the ruler took')];
}

function exact(side: number, scale: Scale): Traced {
  return plus(finishedLength(side, scale), twoSeams(scale));
}

function positive(length: Traced): readonly Traced[] {
  return longer(length.value, 0) ? [length] : [];
}

function longestOf(lengths: readonly Traced[]): readonly Traced[] {
  return [...lengths].sort((a, b) => b.value - a.value).slice(0, 1);
}

/** Whether a unit inside does not stand upright: its patches fill no upright box of its size. */
function isSlanted(drawing: Drawing, { shape, patches }: SeamUnit): boolean {
  const points = patches.flatMap((patch) =>
    outlinePoints(drawing, drawing.patches[patch] as Drawing['patches'][number]),
  );
  const side = (of: 'x' | 'y') => Math.max(...points.map((at) => at[of])) - Math.min(...points.map((at) => at[of]));
  return !same(side('x') * side('y'), shape.width * shape.height);
}
