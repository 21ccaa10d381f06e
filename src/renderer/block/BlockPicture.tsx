import { useMemo } from 'react';
import { blockFigure } from '../../shared/diagrams/blockFigure.ts';
import { inksFor } from '../../shared/diagrams/hatches.ts';
import type { WorkedBlock } from '../../shared/workroom/workedOut.ts';
import { Stage } from '../parts/stage/Stage.tsx';
import { usePattern } from '../state/hooks.tsx';
import { BlockOverlay } from './BlockOverlay.tsx';
import styles from './block.module.css';
import { gridInches } from './grid.ts';
import { unitNumbers } from './unitNumbers.ts';
import type { ShownBlock } from './useShownBlock.ts';

interface BlockPictureProps {
  readonly shown: ShownBlock;
  readonly block: WorkedBlock;
}

/** The block as large as its place, every unit with its number. */
export function BlockPicture({ shown, block }: BlockPictureProps) {
  const { fabrics } = usePattern();
  const grid = gridInches(shown, block);
  const figure = useMemo(() => {
    const letters = unitNumbers(block.piecing.units);
    return blockFigure(block.piecing, grid, block.fabricOf, { letters, units: true, name: block.name });
  }, [block, grid]);
  const inks = useMemo(() => inksFor(fabrics), [fabrics]);
  return (
    <div className={styles.picture}>
      <Stage figure={figure} inks={inks}>
        <BlockOverlay shown={shown} block={block} grid={grid} />
      </Stage>
    </div>
  );
}
