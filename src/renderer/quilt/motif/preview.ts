import type { Figure } from '../../../shared/diagrams/figure.ts';
import { quiltFigure } from '../../../shared/diagrams/quiltFigure.ts';
import { darkCorner } from '../../../shared/drawing/darkCorner.ts';
import { unitsOn } from '../../../shared/measure/metric.ts';
import { takeMotif } from '../../../shared/pattern/edits/index.ts';
import type { DarkCorner, MotifTemplate } from '../../../shared/pattern/motifTemplate.ts';
import type { Pattern, Size } from '../../../shared/pattern/schema.ts';
import type { Value } from '../../../shared/recipe/schema.ts';
import type { WorkedBlock } from '../../../shared/workroom/workedOut.ts';
import { laySize } from '../../../shared/workroom/workSize.ts';

const DARKNESS: Readonly<Record<Value, number>> = { light: 0, medium: 0.5, dark: 1 };

/** Where the dark half of a block lies, by the values of the fabrics it is cut from; null when it has none. */
export function darkHalf(block: WorkedBlock, fabrics: Pattern['fabrics']): DarkCorner | null {
  const value = new Map(fabrics.map((fabric) => [fabric.id, fabric.value]));
  return darkCorner(block.piecing.drawing, (role) => DARKNESS[value.get(block.fabricOf[role] ?? '') ?? 'light']);
}

/** The blocks a template is used with: the chosen one first. Null when the pattern has too few. */
export function blocksFor(template: MotifTemplate, pattern: Pattern, first: string): readonly string[] | null {
  const others = pattern.blocks.map(({ id }) => id).filter((id) => id !== first);
  const letters = [first, ...others].slice(0, template.blocks);
  return letters.length < template.blocks ? null : letters;
}

/** So many blocks show what a setting does. */
const SHOWN = 8;

/** The setting a template would make of the pattern's own blocks, drawn small; null when it cannot be laid out. */
export function templateFigure(
  pattern: Pattern,
  blocks: readonly WorkedBlock[],
  size: Size,
  template: MotifTemplate,
  letters: readonly string[],
  dark: DarkCorner,
): Figure | null {
  const made = takeMotif.apply(pattern, { template, blocks: letters, dark });
  const { block } = size;
  const small: Size = {
    id: size.id,
    name: template.name,
    across: held(size.across),
    down: held(size.across),
    block,
    borders: {},
  };
  const laid = laySize({ ...made, borders: [], sizes: [small] }, small, blocks);
  if (!laid.ok) return null;
  const units = unitsOn(pattern.house.step);
  return quiltFigure(laid.value.quilt, blocks, { borders: false, edges: 'none', name: template.name, units });
}

/** Enough blocks for a setting to show, and as even or odd as the quilt has them. */
function held(count: number): number {
  const odd = count % 2;
  return Math.max(4 + odd, Math.min(SHOWN - odd, count));
}
