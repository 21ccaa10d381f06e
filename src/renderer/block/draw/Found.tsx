import type { Finding } from '../../../shared/measure/finding.ts';
import { FindingLine } from '../../parts/FindingLine.tsx';
import { useIsWorking } from '../../state/hooks.tsx';
import type { ShownBlock } from '../useShownBlock.ts';
import { CutForOne, useOneBlock } from './CutForOne.tsx';
import { DrawnUnits } from './DrawnUnits.tsx';
import styles from './draw.module.css';
import { FoundHead } from './FoundHead.tsx';
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
  const one = useOneBlock(shown, worked);
  return (
    <section className={styles.found} aria-label="How it is sewn" aria-busy={working}>
      {worked === undefined ? null : (
        <FoundHead block={drawn.block} piecing={worked.piecing} colourOf={drawn.colourOf} />
      )}
      {findings.length === 0 ? null : <FindingLines findings={findings} />}
      {worked === undefined || one === null ? null : (
        <>
          <DrawnUnits block={worked} sized={one} />
          <CutForOne block={worked} one={one} />
        </>
      )}
    </section>
  );
}

/** More of one kind than this are counted, not told one by one. */
const MOST = 6;

function FindingLines({ findings }: { readonly findings: readonly Finding[] }) {
  const more = findings.length - MOST;
  return (
    <div className={styles.findings}>
      {findings.slice(0, MOST).map((finding) => (
        <FindingLine key={`${finding.where.path} ${finding.what}`} finding={finding} />
      ))}
      {more > 0 ? <p className="quiet">{more} more like these; each has its mark on the drawing.</p> : null}
    </div>
  );
}
