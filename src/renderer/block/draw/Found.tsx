import { ToggleButton } from 'react-aria-components';
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
  /** The finding whose place is shown alone, and how to look at another. */
  readonly looked: Finding | null;
  readonly onLook: (finding: Finding | null) => void;
}

/** What the studio has found for sewing the drawing: how it comes apart, its units, and what is cut for one block. */
export function Found({ shown, drawn, findings, looked, onLook }: FoundProps) {
  const working = useIsWorking();
  const { worked } = shown;
  const one = useOneBlock(shown, worked);
  return (
    <section className={styles.found} aria-label="How it is sewn" aria-busy={working}>
      {worked === undefined ? null : (
        <FoundHead block={drawn.block} piecing={worked.piecing} colourOf={drawn.colourOf} />
      )}
      {findings.length === 0 ? null : <FindingLines findings={findings} looked={looked} onLook={onLook} />}
      {worked === undefined || one === null ? null : (
        <>
          <DrawnUnits shown={shown} block={worked} sized={one} />
          <CutForOne block={worked} one={one} />
        </>
      )}
    </section>
  );
}

/** More of one kind than this are counted, not told one by one. */
const MOST = 6;

function FindingLines({ findings, looked, onLook }: Pick<FoundProps, 'findings' | 'looked' | 'onLook'>) {
  const more = findings.length - MOST;
  return (
    <div className={styles.findings}>
      {findings.slice(0, MOST).map((finding) => {
        const key = `${finding.where.path} ${finding.what}`;
        return (
          <div key={key} className={styles.finding}>
            <FindingLine finding={finding} />
            {finding.where.box === undefined ? null : (
              <ToggleButton
                className={styles.show ?? ''}
                aria-label={`Show where: ${finding.what}`}
                isSelected={looked?.what === finding.what}
                onChange={(on) => onLook(on ? finding : null)}
              >
                Where
              </ToggleButton>
            )}
          </div>
        );
      })}
      {more > 0 ? <p className="quiet">{more} more like these; each has its mark on the drawing.</p> : null}
    </div>
  );
}
