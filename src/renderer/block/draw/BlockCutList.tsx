import { useMemo } from 'react';
import { cutsForOne } from '../../../shared/workroom/oneBlock.ts';
import type { SizedBlock, WorkedBlock } from '../../../shared/workroom/workedOut.ts';
import { CutLines } from '../CutLines.tsx';

/** Everything that is cut for a single block. */
export function BlockCutList({ block, sized }: { readonly block: WorkedBlock; readonly sized: SizedBlock }) {
  const cuts = useMemo(() => cutsForOne(sized, block.fabricOf), [sized, block]);
  return (
    <CutLines cuts={cuts.map(({ cut }) => cut)} counts={cuts.map(({ count }) => count)} fabricOf={block.fabricOf} />
  );
}
