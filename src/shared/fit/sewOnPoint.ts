import type { Box } from '../drawing/turn.ts';
import { type Inches, longer, same } from '../measure/inches.ts';
import type { Part } from '../piecing/piecing.ts';
import { isLeaf, leavesOf } from '../piecing/tree.ts';
import { boxFromFrame } from '../quilt/onPoint/frame.ts';
import type { BlockLeaf, DiagonalLeaf, DiagonalRow, OnPointLeaf, PatchLeaf, TriangleLeaf } from '../quilt/quilt.ts';
import { plainSewn, type Sewn, type Stop } from './sewn.ts';
import { type Misfit, type SewnUp, sewUp } from './sewUp.ts';

/** Diagonal rows sewn together, with what does not agree; `triangles` are the misfits of the triangles at the edges. */
export interface SewnOnPoint extends SewnUp {
  readonly triangles: readonly Misfit[];
}

type Measure = (leaf: BlockLeaf | PatchLeaf) => Sewn;

interface Tally {
  readonly origin: OnPointLeaf['origin'];
  misfits: Misfit[];
  triangles: Misfit[];
  points: number;
  seams: number;
}

/** A diagonal row sewn: where seams meet its upper and lower edge, in the frame, as designed and as sewn. */
interface SewnRow {
  readonly top: readonly Stop[];
  readonly bottom: readonly Stop[];
}

/**
 * Sews blocks on point on paper: every row from its parts, row to row, and the triangles to what they lie beside. The setting is
 * trimmed straight once it is sewn, so triangles only have to reach far enough.
 * @param measure what a block or a plain piece measures as it is made
 * @param seam inches
 */
export function sewOnPoint(leaf: OnPointLeaf, measure: Measure, seam: Inches): SewnOnPoint {
  const tally: Tally = { origin: leaf.origin, misfits: [], triangles: [], points: 0, seams: 0 };
  const rows = leaf.rows.map((row) => sewRow(row, measure, seam, tally));
  rows.slice(1).forEach((row, i) => {
    tally.seams += 1;
    meetRows((rows[i] as SewnRow).bottom, row.top, (leaf.rows[i + 1] as DiagonalRow).box, tally);
  });
  for (const corner of leaf.corners) {
    tally.seams += 1;
    checkTriangle(corner, seam, tally);
  }
  const sewn = plainSewn(leaf.box.width, leaf.box.height, { width: leaf.box.width, height: leaf.box.height });
  return { sewn, ...tally };
}

/** A triangle at the edge, or a strip that the edge cuts off: not measured against the row, only against its own place. */
function isEnd(part: Part<DiagonalLeaf>): part is TriangleLeaf | PatchLeaf {
  if (!isLeaf<DiagonalLeaf>(part)) return false;
  return part.kind === 'triangle' || isCutOff(part);
}

function sewRow({ parts }: DiagonalRow, measure: Measure, seam: Inches, tally: Tally): SewnRow {
  const top: Stop[] = [];
  const bottom: Stop[] = [];
  let [at, high]: [Inches | null, Inches | null] = [null, null];
  parts.forEach((part, i) => {
    const design = part.box.x;
    if (i > 0) {
      tally.seams += 1;
      const stop = { design, sewn: at ?? design };
      top.push(stop);
      bottom.push(stop);
    }
    if (isEnd(part)) {
      if (part.kind === 'triangle') checkTriangle(part, seam, tally);
      // What follows an end on the left begins where the design says.
      if (i === 0) at = part.box.x + part.box.width;
      return;
    }
    if (leavesOf<DiagonalLeaf>(part).some(isCutOff)) return;
    const up = sewUp<DiagonalLeaf>(part, (leaf) => measure(leaf as BlockLeaf | PatchLeaf));
    add(tally, up);
    const start = at ?? design;
    top.push(...movedStops(up.sewn.edges.top, design, start));
    bottom.push(...movedStops(up.sewn.edges.bottom, design, start));
    at = start + up.sewn.width;
    if (high === null) high = up.sewn.height;
    else if (!same(high, up.sewn.height)) tally.misfits.push(misfit(part.box, high - up.sewn.height, 'length', tally));
  });
  return { top, bottom };
}

/** Whether the edge of the quilt cuts a strip off. */
function isCutOff(leaf: DiagonalLeaf): boolean {
  return leaf.kind === 'patch' && leaf.outline !== undefined;
}

function add(tally: Tally, up: SewnUp): void {
  tally.misfits.push(...up.misfits.map((one) => ({ ...one, box: boxFromFrame(one.box, tally.origin) })));
  tally.points += up.points;
  tally.seams += up.seams;
}

function movedStops(stops: readonly Stop[], design: Inches, sewn: Inches): readonly Stop[] {
  return stops.map((stop) => ({ design: stop.design + design, sewn: stop.sewn + sewn }));
}

/** Compares the seams that two neighbouring rows want to meet, from the first of them on. */
function meetRows(upper: readonly Stop[], lower: readonly Stop[], box: Box, tally: Tally): void {
  let first: Inches | null = null;
  let worst: Inches = 0;
  let j = 0;
  for (const stop of upper) {
    while (j < lower.length && longer(stop.design, (lower[j] as Stop).design)) j += 1;
    const other = lower[j];
    if (other === undefined || !same(stop.design, other.design)) continue;
    tally.points += 1;
    const apart = stop.sewn - other.sewn;
    first ??= apart;
    if (Math.abs(apart - first) > Math.abs(worst)) worst = apart - first;
  }
  if (!same(worst, 0)) tally.misfits.push(misfit(box, worst, 'point', tally));
}

function misfit(box: Box, by: Inches, kind: Misfit['kind'], { origin }: Tally): Misfit {
  return { kind, by, box: boxFromFrame(box, origin), side: 'bottom' };
}

/** Whether a triangle cut from its square reaches as far as it has to: its short sides, finished. */
function checkTriangle({ square, into, leg, box }: TriangleLeaf, seam: Inches, tally: Tally): void {
  const reach =
    into === 4 ? (square.value - seam * (2 + 2 * Math.SQRT2)) * Math.SQRT1_2 : square.value - seam * (2 + Math.SQRT2);
  if (longer(leg, reach)) tally.triangles.push(misfit(box, leg - reach, 'length', tally));
}
