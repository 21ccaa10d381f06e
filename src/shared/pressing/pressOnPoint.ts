import type { Part } from '../piecing/piecing.ts';
import { fromFrame } from '../quilt/onPoint/frame.ts';
import type { DiagonalLeaf, DiagonalRow, OnPointLeaf } from '../quilt/quilt.ts';
import type { Edged, SeamEnd } from './ends.ts';
import { addMeetings, type Meetings, meet, noMeetings } from './meet.ts';
import { type LieOf, press } from './press.ts';
import type { Press, PressedPart } from './pressing.ts';

/** How the diagonal rows of a setting on point are pressed, in the frame they lie in. */
export interface PressedOnPoint extends Readonly<Meetings> {
  readonly parts: readonly PressedPart[];
}

interface How {
  readonly edgesOf: (leaf: DiagonalLeaf) => Edged;
  readonly lieOf: LieOf<DiagonalLeaf>;
  readonly pullOf: (part: Part<DiagonalLeaf>) => number;
}

/**
 * The pressing of diagonal rows: the seams of one row all one way and those of the next the other way, so that rows nest, but
 * towards sashing where there is some; the seams between rows likewise (common practice).
 * @param path of the setting in the tree of the top; a row's own path follows it
 */
export function pressOnPoint({ rows, origin }: OnPointLeaf, path: string, how: How): PressedOnPoint {
  const parts: PressedPart[] = [];
  const tally = noMeetings();
  const pressed = rows.map((row, i) => pressRow(row, i, below(path, i), { ...how, origin }, parts, tally));
  const pulls = rows.map(({ kind }) => (kind === 'sashing' ? 2 : 1));
  const between = rows
    .slice(1)
    .map((_, i): Press => ((pulls[i + 1] as number) >= (pulls[i] as number) ? 'down' : 'up'));
  parts.unshift({ path, seams: between });
  pressed.slice(1).forEach((row, i) => {
    meet(
      (pressed[i] as PressedRow).bottom,
      row.top,
      (at) => fromFrame({ x: at, y: (rows[i + 1] as DiagonalRow).box.y }, origin),
      tally,
    );
  });
  return { parts, ...tally };
}

interface PressedRow {
  readonly top: readonly SeamEnd[];
  readonly bottom: readonly SeamEnd[];
}

function below(path: string, child: number): string {
  return path === '' ? String(child) : `${path}.${child}`;
}

function pressRow(
  { parts }: DiagonalRow,
  index: number,
  path: string,
  { origin, ...how }: How & Pick<OnPointLeaf, 'origin'>,
  into: PressedPart[],
  tally: Meetings,
): PressedRow {
  const usual: Press = index % 2 === 0 ? 'right' : 'left';
  const pulls = parts.map(how.pullOf);
  const seams = parts.slice(1).map((_, i): Press => {
    const pull = (pulls[i + 1] as number) - (pulls[i] as number);
    return pull === 0 ? usual : pull > 0 ? 'right' : 'left';
  });
  into.push({ path, seams });
  const top: SeamEnd[] = [];
  const bottom: SeamEnd[] = [];
  parts.forEach((part, i) => {
    const at = part.box.x;
    const before = seams[i - 1];
    if (before !== undefined) {
      top.push({ at, press: before });
      bottom.push({ at, press: before });
    }
    const inner = press<DiagonalLeaf>(part, how.edgesOf, how.lieOf, how.pullOf);
    addMeetings(tally, { ...inner.plan, stacked: inner.plan.stacked.map((spot) => fromFrame(spot, origin)) });
    into.push(...inner.plan.parts.map((one) => ({ ...one, path: under(below(path, i), one.path) })));
    top.push(...moved(inner.edged.ends.top, at));
    bottom.push(...moved(inner.edged.ends.bottom, at));
  });
  return { top, bottom };
}

/** The path of something inside a part, seen from the whole. */
function under(path: string, inner: string): string {
  return inner === '' ? path : `${path}.${inner}`;
}

function moved(ends: readonly SeamEnd[], by: number): readonly SeamEnd[] {
  return ends.map(({ at, press: way }) => ({ at: at + by, press: way }));
}
