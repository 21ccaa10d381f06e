import { useMemo, useState } from 'react';
import type { Finding } from '../../../shared/measure/finding.ts';
import { useSelection, useStudioState } from '../../state/hooks.tsx';
import type { ShownBlock } from '../useShownBlock.ts';
import { Acts } from './Acts.tsx';
import { Brushes } from './Brushes.tsx';
import styles from './draw.module.css';
import { Found } from './Found.tsx';
import { Mat } from './Mat.tsx';
import { Repeating } from './Repeating.tsx';
import type { DrawnBlock } from './useDrawn.ts';
import { useDrawnFindings } from './useDrawnFindings.ts';

interface DrawTableProps {
  readonly shown: ShownBlock;
  readonly drawn: DrawnBlock;
}

/** A block that is drawn freely: the acts, the drawing on its mat, and what is found for sewing it. */
export function DrawTable({ shown, drawn }: DrawTableProps) {
  const findings = useDrawnFindings(shown, drawn);
  const pointed = useStudioState((state) => state.pointed);
  const [selection] = useSelection();
  const [looked, lookAt] = useState<Finding | null>(null);
  const placed = useMemo(() => placedFindings(findings, looked ?? pointed), [findings, looked, pointed]);
  const piecing = shown.worked?.piecing;
  return (
    <div className={styles.table}>
      <div className={styles.tools}>
        <Acts />
        <Repeating drawing={drawn.drawing} />
        <Brushes drawn={drawn} />
      </div>
      <Mat drawn={drawn} piecing={piecing} findings={selection.kind === 'unit' ? [] : placed} />
      <Found shown={shown} drawn={drawn} findings={findings} looked={looked} onLook={lookAt} />
    </div>
  );
}

/** The findings that have a place on the drawing; while the designer looks at one of them, that one alone. */
function placedFindings(findings: readonly Finding[], looked: Finding | null): readonly Finding[] {
  const placed = findings.filter(({ where, level }) => where.box !== undefined && level !== 'note');
  const only = findings.find(({ what, where }) => what === looked?.what && where.path === looked.where.path);
  return only === undefined ? placed : [only];
}
