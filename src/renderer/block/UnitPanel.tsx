import { type ReactNode, useMemo } from 'react';
import { inksFor } from '../../shared/diagrams/hatches.ts';
import { unitFigure } from '../../shared/diagrams/unitFigure.ts';
import { unitName } from '../../shared/piecing/unitNames.ts';
import { finishedSize } from '../../shared/workroom/finishedSize.ts';
import type { SizedUnit, WorkedBlock } from '../../shared/workroom/workedOut.ts';
import { PanelPart, SidePanel } from '../app/SidePanel.tsx';
import { BackTo } from '../parts/BackTo.tsx';
import { Figure } from '../parts/figure/Figure.tsx';
import { Why } from '../parts/Why.tsx';
import { usePattern, useRuler } from '../state/hooks.tsx';
import styles from './block.module.css';
import { gridInches } from './grid.ts';
import { MethodPrices } from './MethodPrices.tsx';
import { unitNumbers } from './unitNumbers.ts';
import type { ShownBlock } from './useShownBlock.ts';

interface UnitPanelProps {
  readonly shown: ShownBlock;
  readonly block: WorkedBlock;
  readonly made: SizedUnit;
  readonly onBack: () => void;
  /** What stands below the ways of making it. */
  readonly children?: ReactNode;
}

/** One unit: what it measures, and the ways it can be made with what each of them costs. */
export function UnitPanel({ shown, block, made, onBack, children }: UnitPanelProps) {
  const { fabrics } = usePattern();
  const ruler = useRuler();
  const grid = gridInches(shown, block);
  const { unit, plan } = made;
  const figure = useMemo(() => {
    const size = finishedSize(unit, grid);
    const measures = { width: ruler.traced(size.width), height: ruler.traced(size.height) };
    return unitFigure(unit, grid, block.fabricOf, { measures });
  }, [unit, grid, block, ruler]);
  const inks = useMemo(() => inksFor(fabrics), [fabrics]);
  const finished = finishedSize(unit, grid);
  const { width, height } = plan.unfinished;
  return (
    <SidePanel
      title={unitName(unit)}
      kind={`Block ${block.id}, unit ${unitNumbers(block.piecing.units)[unit.key] ?? ''}`}
    >
      <BackTo onPress={onBack}>Block {block.id}</BackTo>
      <div className={styles.panelPicture}>
        <Figure figure={figure} inks={inks} />
      </div>
      <dl className={styles.sizes}>
        <dt>Finished</dt>
        <dd>
          <Why traced={finished.width} /> × <Why traced={finished.height} />
        </dd>
        <dt>Unfinished</dt>
        <dd>
          <Why traced={width} /> × <Why traced={height} />
          {plan.trimmed ? ', trimmed' : ''}
        </dd>
      </dl>
      <PanelPart title="Made by">
        <MethodPrices shown={shown} block={block} made={made} grid={grid} />
      </PanelPart>
      {children}
    </SidePanel>
  );
}
