import { useId, useMemo } from 'react';
import { cutsForOne, oneBlock } from '../../../shared/workroom/oneBlock.ts';
import type { SizedBlock, WorkedBlock } from '../../../shared/workroom/workedOut.ts';
import { useRuler, useWorked } from '../../state/hooks.tsx';
import { CutLines } from '../CutLines.tsx';
import { type ShownBlock, widthIn } from '../useShownBlock.ts';
import styles from './draw.module.css';

/** A single block in the size looked at; where that has none, at the recipe's usual size. Null for a moment at the start. */
export function useOneBlock(
  { choice, size, sized, recipe }: ShownBlock,
  block: WorkedBlock | undefined,
): SizedBlock | null {
  // The pattern the block was worked out from: a moment behind the one in hand, and its fabrics go with the block's.
  const pattern = useWorked()?.pattern;
  const finished = (sized === undefined || size === null ? recipe?.finished : widthIn(size, choice.id)) ?? 12;
  return useMemo(
    () => (pattern === undefined || block === undefined ? null : oneBlock(block, pattern, finished)),
    [block, pattern, finished],
  );
}

/** Everything that is cut for a single block. */
export function CutForOne({ block, one }: { readonly block: WorkedBlock; readonly one: SizedBlock }) {
  const id = useId();
  const ruler = useRuler();
  const cuts = useMemo(() => cutsForOne(one, block.fabricOf), [one, block]);
  return (
    <section className={styles.cutList} aria-labelledby={id}>
      <h2 id={id}>Cut for one block of {ruler.length(one.grid * block.piecing.drawing.width)}</h2>
      <CutLines cuts={cuts.map(({ cut }) => cut)} counts={cuts.map(({ count }) => count)} fabricOf={block.fabricOf} />
    </section>
  );
}
