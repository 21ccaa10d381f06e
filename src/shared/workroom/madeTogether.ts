import { cutKey, type Letters } from '../cloth/letters.ts';
import type { Run, SizedBlock, SizedUnit } from '../quilt/sized.ts';

/**
 * The blocks of one size with their units made together: units that are cut from the same pieces share batches, whichever block
 * they are for, so that no more is cut than whole batches for all of them. Two units that are each other in the mirror share
 * them too where the pieces serve both; where pieces are cut for one hand, each hand has batches of its own.
 * @param letters pieces of one letter are cut alike, in every size
 */
export function madeTogether(blocks: readonly SizedBlock[], letters: Letters): readonly SizedBlock[] {
  const made = new Map<string, number>();
  const after = (key: string, run: Run): Run => {
    const before = made.get(key) ?? 0;
    made.set(key, before + run.needed);
    return { ...run, before };
  };
  return blocks.map((block) => ({
    ...block,
    units: block.units.map((sized): SizedUnit => {
      // What is made one by one leaves nothing over.
      if (sized.plan.yield === 1) return sized;
      const pieces = piecesKey(block, sized, letters);
      return { ...sized, runs: sized.runs.map((run) => after(`${pieces} ${handOf(sized, run)}`, run)) };
    }),
  }));
}

function piecesKey({ id }: SizedBlock, { unit, plan, method }: SizedUnit, letters: Letters): string {
  const cuts = plan.cuts.map((cut, i) => `${letters[cutKey(id, unit.key, i)]} ${cut.count} ${cut.patches}`);
  return `${method.id} ${plan.yield} ${cuts.sort().join(', ')}`;
}

function handOf({ plan: { hand } }: SizedUnit, { mirrored }: Run): string {
  if (hand === undefined) return '';
  return mirrored === (hand === 'rising') ? 'falling' : 'rising';
}
