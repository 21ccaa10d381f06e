import type { Inches } from '../measure/inches.ts';
import { CENTIMETRE, type Units } from '../measure/metric.ts';
import type { Pattern } from '../pattern/schema.ts';
import { isRulerFriendly } from '../piecing/rulerSizes.ts';
import { settingBlocks } from './find/candidates.ts';
import type { WorkedBlock } from './workedOut.ts';

/** What `setRuler` takes: the ruler, and for each size the nearest block whose patches all fall on its marks. */
export interface RulerChange {
  readonly units: Units;
  readonly blocks: Readonly<Record<string, Inches>>;
}

/** How far a block may grow or shrink to fall on the ruler, as a share of itself. */
const FURTHEST = 0.3;

/** Half centimetres or eighths for every patch come first, then the finer marks of the ruler. */
const MARKS: Readonly<Record<Units, readonly Inches[]>> = {
  inches: [1 / 4, 1 / 8],
  centimetres: [CENTIMETRE / 2, CENTIMETRE / 10],
};

const ROUND: Readonly<Record<Units, Inches>> = { inches: 1 / 2, centimetres: CENTIMETRE };

/** Finds the blocks of every size on another ruler; a size is left out for which there is none near. */
export function rulerChange(pattern: Pattern, blocks: readonly WorkedBlock[], units: Units): RulerChange {
  const own = settingBlocks(pattern, blocks);
  const found = pattern.sizes.flatMap(({ id, block }) => {
    const widths = widthsNear(block, ROUND[units]);
    const on = (mark: Inches) =>
      widths.find((width) => own.every(({ piecing }) => isRulerFriendly(piecing, width, mark)));
    const width = MARKS[units].map(on).find((one) => one !== undefined);
    return width === undefined ? [] : [[id, width] as const];
  });
  return { units, blocks: Object.fromEntries(found) };
}

/** Round widths, the nearest first. */
function widthsNear(block: Inches, round: Inches): readonly Inches[] {
  const [first, last] = [Math.ceil((block * (1 - FURTHEST)) / round), Math.floor((block * (1 + FURTHEST)) / round)];
  const all = Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => (first + i) * round);
  return all.sort((a, b) => Math.abs(a - block) - Math.abs(b - block));
}
