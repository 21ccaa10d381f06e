import type { Inches } from '../measure/inches.ts';
import { count, over, rounded, type Traced, times } from '../measure/traced.ts';
import type { Pattern } from '../pattern/schema.ts';
import type { Cut } from '../piecing/method.ts';
import { sizeBlock } from './sizeBlock.ts';
import type { SizedBlock, WorkedBlock } from './workedOut.ts';

/**
 * A single block at a finished width of its own, whether or not any size of the quilt takes it.
 * @param finished width of the block, inches
 */
export function oneBlock(block: WorkedBlock, pattern: Pattern, finished: Inches): SizedBlock {
  const { width, height } = block.piecing.drawing;
  const size = { width: finished, height: (finished * height) / width };
  return sizeBlock(block, pattern, { block: size, counts: { [block.id]: 1 } });
}

/** What is cut of one size and one cloth for a single block. */
export interface BlockCut {
  readonly cut: Cut;
  /** The pattern's fabric. */
  readonly fabric: string;
  readonly count: Traced;
}

/**
 * The cut list of a single block: pieces of one cloth, one size and one use together, the largest first, cloth by cloth in the
 * order it is met. Methods that make several units at once cut for whole batches, so that a block may leave units over.
 */
export function cutsForOne({ units }: SizedBlock, fabricOf: WorkedBlock['fabricOf']): readonly BlockCut[] {
  const found = new Map<string, BlockCut>();
  for (const { plan, perBlock } of units) {
    const batches = rounded(over(count(perBlock, 'in a block'), count(plan.yield, 'from a batch')), 1, 'up');
    for (const cut of plan.cuts) {
      const fabric = fabricOf[cut.role] ?? cut.role;
      const key = [fabric, cut.width.value.toFixed(4), cut.height.value.toFixed(4), cut.use, cut.stripSet ?? ''].join(
        '|',
      );
      const more = times(count(cut.count, 'for a batch'), batches);
      const known = found.get(key);
      found.set(
        key,
        known === undefined ? { cut, fabric, count: more } : { ...known, count: added(known.count, more) },
      );
    }
  }
  const cuts = [...found.values()];
  const order = [...new Set(cuts.map(({ fabric }) => fabric))];
  const area = ({ cut }: BlockCut) => cut.width.value * cut.height.value;
  return cuts.sort((a, b) => order.indexOf(a.fabric) - order.indexOf(b.fabric) || area(b) - area(a));
}

/** Two counts as one sum, however often something is added to it. */
function added(so: Traced, more: Traced): Traced {
  const parts = so.how.kind === 'sum' && so.how.op === '+' ? so.how.of : [so];
  return { ...so, value: so.value + more.value, how: { kind: 'sum', op: '+', of: [...parts, more] } };
}
