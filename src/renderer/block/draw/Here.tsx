import type { Drawing } from '../../../shared/drawing/drawing.ts';
import { patchAt } from '../../../shared/drawing/split.ts';
import type { Point } from '../../../shared/drawing/turn.ts';
import { type Act, isOfPlaces } from './acts.ts';
import styles from './draw.module.css';
import { patchPath } from './paths.ts';
import { boxOf } from './picking.ts';
import { type Sight, toScreen } from './sight.ts';
import type { SnapMark } from './snap.ts';

interface HereProps {
  readonly act: Act;
  readonly drawing: Drawing;
  readonly sight: Sight;
  /** The mark the pointer is drawn to. */
  readonly mark: SnapMark | null;
  /** Where the keys are, while it is they that are used. */
  readonly cursor: Point | null;
  readonly patch: number | null;
  /** Patches that are picked: they are stitched round already. */
  readonly picked: readonly number[];
  /** The first place given to the act in hand. */
  readonly first: Point | null;
  /** A box that is being drawn about patches. */
  readonly box: readonly [Point, Point] | null;
}

/** Where the hand is: the mark it is drawn to, or the patch it is over. In pixels. */
export function Here({ act, drawing, sight, mark, cursor, patch, picked, first, box }: HereProps) {
  const inGrid = `translate(${sight.x} ${sight.y}) scale(${sight.scale})`;
  if (isOfPlaces(act)) {
    const place = cursor ?? mark?.place;
    return place === undefined ? null : (
      <Target at={toScreen(sight, place)} kind={cursor === null ? mark?.kind : 'key'} />
    );
  }
  const joining = act === 'join' && first !== null ? patchAt(drawing, first) : null;
  const ringed = patch !== null && (cursor !== null || !picked.includes(patch)) ? patch : null;
  return (
    <g transform={inGrid}>
      {joining === null ? null : <PatchRing drawing={drawing} patch={joining} tone="begun" />}
      {ringed === null ? null : <PatchRing drawing={drawing} patch={ringed} tone={cursor === null ? 'over' : 'key'} />}
      {box === null ? null : <rect className={styles.box} {...boxOf(...box)} />}
    </g>
  );
}

interface RingProps {
  readonly drawing: Drawing;
  readonly patch: number;
  readonly tone: 'begun' | 'over' | 'key';
}

function PatchRing({ drawing, patch, tone }: RingProps) {
  if (patch >= drawing.patches.length) return null;
  const d = patchPath(drawing, patch);
  return (
    <>
      <path className={styles.ringRim} d={d} />
      <path className={styles.ring} data-tone={tone} d={d} />
    </>
  );
}

/** A ring for a corner, a cross for a grid point, a diamond for any other mark; rings within rings where the keys are. */
function Target({ at: { x, y }, kind }: { readonly at: Point; readonly kind: SnapMark['kind'] | 'key' | undefined }) {
  if (kind === 'key') {
    return (
      <g className={styles.target} data-key transform={`translate(${x} ${y})`}>
        <circle className={styles.targetRim} r={9} />
        <circle r={9} />
        <path className={styles.targetRim} d="M-15 0h8M7 0h8M0 -15v8M0 7v8" />
        <path d="M-15 0h8M7 0h8M0 -15v8M0 7v8" />
      </g>
    );
  }
  const shape = kind === 'corner' ? ROUND : kind === 'grid' ? CROSS : DIAMOND;
  return (
    <g className={styles.target} transform={`translate(${x} ${y})`}>
      <path className={styles.targetRim} d={shape} />
      <path d={shape} />
    </g>
  );
}

const ROUND = 'M-7 0a7 7 0 1 0 14 0a7 7 0 1 0 -14 0Z';
const CROSS = 'M-7 0h14M0 -7v14';
const DIAMOND = 'M0 -8l8 8l-8 8l-8 -8Z';
