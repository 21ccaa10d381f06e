import type { Point } from '../drawing/turn.ts';
import { longer, same } from '../measure/inches.ts';
import type { Part } from '../piecing/piecing.ts';
import { fromFrame } from '../quilt/onPoint/frame.ts';
import type { DiagonalLeaf, DiagonalRow, OnPointLeaf } from '../quilt/quilt.ts';
import type { Edged, SeamEnd } from './ends.ts';
import { type LieOf, press } from './press.ts';
import type { Press, PressedPart } from './pressing.ts';

/** How the diagonal rows of a setting on point are pressed, in the frame they lie in. */
export interface PressedOnPoint {
  readonly parts: readonly PressedPart[];
  readonly nests: number;
  readonly stacks: number;
  /** In the quilt, finished inches. */
  readonly stacked: readonly Point[];
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
  const tally = { nests: 0, stacks: 0, stacked: [] as Point[] };
  const pressed = rows.map((row, i) => pressRow(row, i, below(path, i), how, parts, tally));
  const pulls = rows.map(({ kind }) => (kind === 'sashing' ? 2 : 1));
  const between = rows
    .slice(1)
    .map((_, i): Press => ((pulls[i + 1] as number) >= (pulls[i] as number) ? 'down' : 'up'));
  parts.unshift({ path, seams: between });
  pressed.slice(1).forEach((row, i) => {
    meet(
      (pressed[i] as PressedRow).bottom,
      row.top,
      (at) => {
        tally.stacked.push(fromFrame({ x: at, y: (rows[i + 1] as DiagonalRow).box.y }, origin));
      },
      tally,
    );
  });
  return { parts, ...tally };
}

interface PressedRow {
  readonly top: readonly SeamEnd[];
  readonly bottom: readonly SeamEnd[];
}

interface Counted {
  nests: number;
  stacks: number;
  readonly stacked: Point[];
}

function below(path: string, child: number): string {
  return path === '' ? String(child) : `${path}.${child}`;
}

function pressRow(
  { parts }: DiagonalRow,
  index: number,
  path: string,
  how: How,
  into: PressedPart[],
  tally: Counted,
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
    tally.nests += inner.plan.nests;
    tally.stacks += inner.plan.stacks;
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

function meet(a: readonly SeamEnd[], b: readonly SeamEnd[], stack: (at: number) => void, tally: Counted): void {
  let j = 0;
  for (const end of a) {
    while (j < b.length && longer(end.at, (b[j] as SeamEnd).at)) j += 1;
    const other = b[j];
    if (other === undefined || !same(end.at, other.at)) continue;
    if (end.press === other.press) {
      tally.stacks += 1;
      stack(end.at);
    } else tally.nests += 1;
  }
}
