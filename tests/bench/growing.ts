import { setOnPoint } from '../../src/shared/pattern/edits/index.ts';
import type { Pattern, Size } from '../../src/shared/pattern/schema.ts';
import type { WorkedOut } from '../../src/shared/workroom/workedOut.ts';
import { workOut } from '../../src/shared/workroom/workOut.ts';
import { demoPattern } from '../helpers/starters.ts';

/** Blocks across and down of the five sizes of a pattern that grows; the largest has 16,000 patches or a little more. */
export const shapes: readonly (readonly [number, number])[] = [
  [4, 5],
  [7, 9],
  [12, 14],
  [20, 22],
];

/** The demo pattern in one size after another, each with so many blocks across and down. */
export function inSizes(sizes: readonly (readonly [across: number, down: number])[]): Pattern {
  const pattern = demoPattern();
  const [first] = pattern.sizes;
  if (!first) throw new Error('The demo pattern has no size');
  const made = sizes.map(([across, down], i): Size => ({ ...first, id: `size-${i}`, name: `Size ${i}`, across, down }));
  return { ...pattern, sizes: made };
}

/** Patches in the last, largest size. */
function patches({ sizes, blocks }: WorkedOut): number {
  const each = new Map(blocks.map((block) => [block.id, block.piecing.drawing.patches.length]));
  const quilt = sizes.at(-1)?.quilt;
  if (!quilt) throw new Error('The largest size cannot be laid out');
  return quilt.blocks.reduce((sum, { block }) => sum + (each.get(block) ?? 0), 0) + quilt.strips.length;
}

/** The same sizes with the blocks on point. */
export function onPoint(pattern: Pattern): Pattern {
  return setOnPoint.apply(pattern, { fabric: pattern.fabrics[0]?.id ?? '' });
}

/** The nearest to square shape whose quilt has at least so many patches. */
export function shapeOf(wanted: number, set = (pattern: Pattern) => pattern): readonly [number, number] {
  for (let across = 2; ; across++)
    for (const down of [across, across + 1])
      if (patches(workOut(set(inSizes([[across, down]])))) >= wanted) return [across, down];
}
