import type { Drawing } from '../../../shared/drawing/drawing.ts';
import type { Box } from '../../../shared/drawing/turn.ts';
import type { Finding } from '../../../shared/measure/finding.ts';
import type { Piecing } from '../../../shared/piecing/piecing.ts';
import { leavesOf } from '../../../shared/piecing/tree.ts';
import type { Selection } from '../../state/selection.ts';
import styles from './draw.module.css';
import { linePath, patchPath } from './paths.ts';

interface ChosenProps {
  readonly drawing: Drawing;
  readonly piecing: Piecing | undefined;
  readonly selection: Selection;
}

/** What is picked, stitched round. In grid units. */
export function Chosen({ drawing, piecing, selection }: ChosenProps) {
  if (selection.kind === 'patches') {
    const d = selection.patches.flatMap((patch) => (patch < drawing.patches.length ? [patchPath(drawing, patch)] : []));
    return <Basted d={d.join('')} />;
  }
  if (selection.kind === 'seam') return <Basted d={linePath(selection.seam)} />;
  if (selection.kind !== 'unit' || piecing === undefined) return null;
  const scale = drawing.width / piecing.drawing.width;
  const boxes = leavesOf(piecing.root).filter(({ unit }) => unit === selection.unit);
  return <Basted d={boxes.map(({ box }) => boxPath(box, scale)).join('')} />;
}

function boxPath({ x, y, width, height }: Box, scale: number): string {
  return `M${x * scale} ${y * scale}h${width * scale}v${height * scale}h${-width * scale}Z`;
}

function Basted({ d }: { readonly d: string }) {
  return (
    <g>
      <path className={styles.under} d={d} />
      <path className={styles.basted} d={d} />
    </g>
  );
}

/** Where findings are, each with a box round its place. In grid units. */
export function FindingPlaces({ findings, air }: { readonly findings: readonly Finding[]; readonly air: number }) {
  return (
    <g>
      {findings.map(({ level, what, where: { box } }) => {
        if (box === undefined) return null;
        const { x, y, width, height } = box;
        const round = { x: x - air, y: y - air, width: width + 2 * air, height: height + 2 * air };
        return (
          <rect key={`${what} ${x} ${y}`} className={styles.findingPlace} data-level={level} rx={air} {...round} />
        );
      })}
    </g>
  );
}
