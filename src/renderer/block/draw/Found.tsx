import { useMemo } from 'react';
import type { Finding } from '../../../shared/measure/finding.ts';
import { inchesText } from '../../../shared/measure/fraction.ts';
import { oneBlock } from '../../../shared/workroom/oneBlock.ts';
import type { WorkedBlock } from '../../../shared/workroom/workedOut.ts';
import { FindingLine } from '../../parts/FindingLine.tsx';
import { useIsWorking, useWorked } from '../../state/hooks.tsx';
import type { ShownBlock } from '../useShownBlock.ts';
import { Apart } from './Apart.tsx';
import { BlockCutList } from './BlockCutList.tsx';
import { DrawnUnits } from './DrawnUnits.tsx';
import styles from './draw.module.css';
import { Seams } from './Seams.tsx';
import type { DrawnBlock } from './useDrawn.ts';

interface FoundProps {
  readonly shown: ShownBlock;
  readonly drawn: DrawnBlock;
  readonly findings: readonly Finding[];
}

/** What the studio has found for sewing the drawing: how it comes apart, its units, and what is cut for one block. */
export function Found({ shown, drawn, findings }: FoundProps) {
  const working = useIsWorking();
  const { worked } = shown;
  return (
    <section className={styles.found} aria-label="How it is sewn" aria-busy={working}>
      {worked === undefined ? null : (
        <div className={styles.foundHead}>
          <Apart block={drawn.block} piecing={worked.piecing} colourOf={drawn.colourOf} />
          <Seams piecing={worked.piecing} />
        </div>
      )}
      {findings.length === 0 ? null : (
        <div className={styles.findings}>
          {findings.map((finding) => (
            <FindingLine key={`${finding.where.path} ${finding.what}`} finding={finding} />
          ))}
        </div>
      )}
      {worked === undefined ? null : <UnitsAndCuts shown={shown} block={worked} drawn={drawn} />}
    </section>
  );
}

function UnitsAndCuts({
  shown,
  block,
  drawn,
}: {
  readonly shown: ShownBlock;
  readonly block: WorkedBlock;
  readonly drawn: DrawnBlock;
}) {
  // The pattern the block was worked out from: a moment behind the one in hand, and its fabrics go with the block's.
  const pattern = useWorked()?.pattern;
  const finished = shown.size?.quilt.block.width ?? drawn.recipe.finished;
  const sized = useMemo(
    () => (pattern === undefined ? null : oneBlock(block, pattern, finished)),
    [block, pattern, finished],
  );
  if (sized === null) return null;
  return (
    <>
      <DrawnUnits block={block} sized={sized} />
      <section className={styles.cutList} aria-labelledby="one-block">
        <h3 id="one-block">Cut for one block of {inchesText(finished)}</h3>
        <BlockCutList block={block} sized={sized} />
      </section>
    </>
  );
}
