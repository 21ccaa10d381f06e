import type { Drawing } from '../../../shared/drawing/drawing.ts';
import type { Box } from '../../../shared/drawing/turn.ts';
import type { Finding } from '../../../shared/measure/finding.ts';
import type { Piecing } from '../../../shared/piecing/piecing.ts';
import { leavesOf } from '../../../shared/piecing/tree.ts';
import { insidePlaces } from '../../../shared/piecing/unitsInside.ts';
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
  // A unit inside a pieced one may lie at any slant: it is marked patch by patch, wherever it stands.
  const inside = insidePlaces(piecing, selection.unit).flat();
  return (
    <g transform={`scale(${scale})`}>
      <Basted
        d={[...boxes.map(({ box }) => boxPath(box)), ...inside.map((one) => patchPath(piecing.drawing, one))].join('')}
      />
    </g>
  );
}

function boxPath({ x, y, width, height }: Box): string {
  return `M${x} ${y}h${width}v${height}h${-width}Z`;
}

function Basted({ d }: { readonly d: string }) {
  return (
    <g>
      <path className={styles.under} d={d} />
      <path className={styles.basted} d={d} />
    </g>
  );
}

interface FindingPlacesProps {
  readonly findings: readonly Finding[];
  /** How far a box stands off what it is about, grid units. */
  readonly air: number;
}

/** Where findings are: a box just inside a part of the block, a ring round a place or a short edge. In grid units. */
export function FindingPlaces({ findings, air }: FindingPlacesProps) {
  return (
    <g>
      {findings.map(({ level, what, where: { box } }) => {
        if (box === undefined) return null;
        const off = Math.min(box.width, box.height) < 6 * air ? air : -air;
        const { x, y, width, height } = box;
        const round = { x: x - off, y: y - off, width: width + 2 * off, height: height + 2 * off, rx: air };
        return (
          <g key={`${what} ${x} ${y}`}>
            <rect className={styles.findingRim} {...round} />
            <rect className={styles.findingPlace} data-level={level} {...round} />
          </g>
        );
      })}
    </g>
  );
}
