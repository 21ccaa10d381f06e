import type { Inches } from '../../measure/inches.ts';
import { longer, onRuler, same } from '../../measure/inches.ts';
import { isMetric } from '../../measure/metric.ts';
import { blockCount } from '../../pattern/places.ts';
import type { Pattern, Size } from '../../pattern/schema.ts';
import { isRulerFriendly } from '../../piecing/rulerSizes.ts';
import { measureOf } from '../../quilt/find/measureOf.ts';
import { borderWidths } from '../../quilt/growing.ts';
import { MOST_BLOCKS } from '../../quilt/layOut.ts';
import type { Measure } from '../../quilt/quilt.ts';
import type { WorkedBlock } from '../workedOut.ts';

/** A size that might do: blocks across and down, their width, and a border that is wider or narrower than designed. */
export interface Candidate {
  readonly size: Size;
  readonly finished: Measure;
  /** Every patch of every block falls on the ruler. */
  readonly friendly: boolean;
  /** The block's width is one the pattern has already. */
  readonly usualBlock: boolean;
  /** By how much the outermost plain border differs from the design, inches. */
  readonly borderBy: Inches;
}

/** Blocks of the setting: those whose size a size of the pattern says. */
export function settingBlocks({ setting, borders }: Pattern, blocks: readonly WorkedBlock[]): readonly WorkedBlock[] {
  const inBorders = new Set(borders.flatMap(({ pieced }) => lettersIn([pieced?.units ?? '', pieced?.corner ?? ''])));
  const between = setting.kind === 'on-point' ? (setting.between ?? []) : [];
  const own = new Set(lettersIn([...setting.motif, ...between, ...setting.single.map(({ block }) => block)]));
  return blocks.filter(({ id }) => own.has(id) || !inBorders.has(id));
}

function lettersIn(rows: readonly string[]): readonly string[] {
  return rows.flatMap((row) => row.match(/[A-Za-z][A-Za-z0-9]*(?=(?::\S*)?(?:\s|$))/g) ?? []);
}

/** Block widths worth trying: those of the pattern, and round ones on its ruler near them, inches. */
function blockWidths({ sizes, house }: Pattern): readonly Inches[] {
  const own = sizes.map(({ block }) => block);
  const [least, most] = [Math.min(...own) * 0.6, Math.max(...own) * 1.6];
  // Half inches, or whole centimetres: what a pattern prints without a second thought.
  const round = isMetric(house.step) ? 10 / 25.4 : 0.5;
  const first = Math.max(1, Math.ceil(least / round));
  const near = Array.from({ length: Math.max(0, Math.floor(most / round) - first + 1) }, (_, i) => (first + i) * round);
  return [...own, ...near.slice(0, 120)].filter((width, i, all) => all.findIndex((one) => same(one, width)) === i);
}

/** Every candidate near a target, with the borders as designed and with the outermost plain one changed to come nearer. */
export function candidates(pattern: Pattern, blocks: readonly WorkedBlock[], target: Measure): readonly Candidate[] {
  const own = settingBlocks(pattern, blocks);
  const [first] = own;
  if (first === undefined) return [];
  const { width: gridWidth, height: gridHeight } = first.piecing.drawing;
  return blockWidths(pattern).flatMap((block) => {
    const measure = { width: block, height: (block * gridHeight) / gridWidth };
    const friendly = own.every(({ id, piecing }) => {
      const wide = spanned(pattern, id, block);
      return isRulerFriendly(piecing, wide, pattern.house.step);
    });
    const usualBlock = pattern.sizes.some((size) => same(size.block, block));
    if (!friendly && !usualBlock) return [];
    const finishes = (across: number, down: number) => measureOf(pattern, sizeOf(across, down, block), measure);
    const columns = nearest((many) => finishes(many, 1).width, target.width);
    const rows = nearest((many) => finishes(1, many).height, target.height);
    return columns.flatMap((across) =>
      rows.flatMap((down): readonly Candidate[] => {
        if (blockCount(pattern.setting, { across, down }) > MOST_BLOCKS) return [];
        const plain = sizeOf(across, down, block);
        const made = (size: Size, borderBy: Inches): Candidate => {
          return { size, finished: measureOf(pattern, size, measure), friendly, usualBlock, borderBy };
        };
        const asDesigned = made(plain, 0);
        const nearer = withBorder(pattern, plain, asDesigned.finished, target);
        return nearer === null ? [asDesigned] : [asDesigned, made(nearer.size, nearer.by)];
      }),
    );
  });
}

/** How wide a block finishes that fills several places: the sashing between them counted in, as designed. */
function spanned({ blocks, setting }: Pattern, id: string, place: Inches): Inches {
  const places = blocks.find((block) => block.id === id)?.places ?? 1;
  const sash = setting.sashing?.strips.reduce((sum, { width }) => sum + width, 0) ?? 0;
  return places * place + (places - 1) * sash;
}

function sizeOf(across: number, down: number, block: Inches): Size {
  return { id: 'found', name: 'Found', across, down, block, borders: {} };
}

const MOST_ACROSS = 200;

/** The two counts whose measure comes nearest, from below and from above. */
function nearest(measure: (many: number) => Inches, target: Inches): readonly number[] {
  const step = measure(2) - measure(1);
  const many = step > 0 ? 1 + (target - measure(1)) / step : 1;
  const least = Math.min(MOST_ACROSS, Math.max(1, Math.floor(many + 1e-6)));
  const next = Math.min(MOST_ACROSS, least + 1);
  return least === next ? [least] : [least, next];
}

/** The outermost plain border so wide that the quilt comes as near as it can; null where that changes nothing or too much. */
function withBorder(
  { borders, house }: Pattern,
  size: Size,
  finished: Measure,
  target: Measure,
): { readonly size: Size; readonly by: Inches } | null {
  const border = borders.findLast(({ pieced }) => pieced === undefined);
  if (border === undefined) return null;
  const { sides, ends } = borderWidths(border, size);
  if (!same(sides, ends)) return null;
  const wish = (target.width - finished.width + (target.height - finished.height)) / 4;
  const round = isMetric(house.step) ? 10 / 25.4 : onRuler(0.5, house.step) ? 0.5 : house.step;
  const width = Math.round((sides + wish) / round) * round;
  const by = width - sides;
  if (same(by, 0) || longer(1, width) || width > Math.max(12, sides) || width > 60) return null;
  return { size: { ...size, borders: { [border.id]: width } }, by };
}
