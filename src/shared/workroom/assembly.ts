import type { Pattern, Size } from '../pattern/schema.ts';
import { leavesOf } from '../piecing/tree.ts';
import type { QuiltLeaf } from '../quilt/quilt.ts';
import type { Assembly, WorkedBlock } from './workedOut.ts';
import { laySize, pressSize } from './workSize.ts';

type Way = 'rows' | 'columns';

/**
 * How the blocks are sewn together. Where the designer has not said it, rows and columns are both sewn on paper and this
 * decides, in this order: at more points seams nest; fewer lengths of sashing have to be joined from strips; rows, as is
 * usual (common practice). It is one way for all sizes, for the printed steps are the same.
 */
export function assemblyOf(pattern: Pattern, blocks: readonly WorkedBlock[]): Assembly {
  const { setting } = pattern;
  if (setting.kind === 'on-point')
    return { way: 'diagonal rows', pinned: false, why: 'On point, blocks are sewn into diagonal rows.' };
  if (setting.kind === 'strips') return { way: setting.run, pinned: true, why: `The strips are ${setting.run}.` };
  if (setting.sewn !== undefined) return { way: setting.sewn, pinned: true, why: `You have chosen ${setting.sewn}.` };
  const [rows, columns] = [tally(pattern, blocks, 'rows'), tally(pattern, blocks, 'columns')];
  if (rows === null || columns === null) return { way: 'rows', pinned: false, why: USUAL };
  if (rows.nests !== columns.nests) {
    const way = rows.nests > columns.nests ? 'rows' : 'columns';
    const [most, least] = [rows.nests, columns.nests].sort((a, b) => b - a);
    const why = `In ${way}, seams nest at ${most} points of ${rows.size}; the other way at ${least}.`;
    return { way, pinned: false, why };
  }
  if (rows.joins !== columns.joins) {
    const way = rows.joins < columns.joins ? 'rows' : 'columns';
    return { way, pinned: false, why: `In ${way}, less of the sashing has to be joined from strips.` };
  }
  return { way: 'rows', pinned: false, why: USUAL };
}

const USUAL = 'Columns would be no better.';

/** The pattern with the way of sewing written into its setting, as the layout reads it. */
export function asSewn(pattern: Pattern, { way }: Assembly): Pattern {
  const { setting } = pattern;
  if (setting.kind !== 'straight' || way === 'diagonal rows' || setting.sewn === way) return pattern;
  return { ...pattern, setting: { ...setting, sewn: way } };
}

interface Tally {
  /** The name of the size that was sewn on paper. */
  readonly size: string;
  readonly nests: number;
  /** Joins in lengths of sashing that are longer than the cloth is wide. */
  readonly joins: number;
}

/** What one way of sewing comes to in the smallest size that has both rows and columns; null where there is none. */
function tally(pattern: Pattern, blocks: readonly WorkedBlock[], way: Way): Tally | null {
  const size = smallest(pattern);
  if (size === null) return null;
  const sewn = asSewn(pattern, { way, pinned: false, why: '' });
  const laid = laySize(sewn, size, blocks);
  if (!laid.ok) return null;
  const { quilt } = laid.value;
  const sashes = leavesOf<QuiltLeaf>(quilt.root).filter((leaf) => leaf.kind === 'patch' && leaf.use === 'sashing');
  const joins = sashes.reduce((sum, { box }) => {
    return sum + Math.ceil(Math.max(box.width, box.height) / pattern.house.usableWidth) - 1;
  }, 0);
  return { size: size.name, nests: pressSize(laid.value).nests, joins };
}

function smallest({ sizes }: Pattern): Size | null {
  const both = sizes.filter(({ across, down }) => across > 1 && down > 1);
  const [first, ...others] = both;
  if (first === undefined) return null;
  return others.reduce((few, size) => (size.across * size.down < few.across * few.down ? size : few), first);
}
