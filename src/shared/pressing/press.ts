import { longer, same } from '../measure/inches.ts';
import type { Part, Rounds, Row } from '../piecing/piecing.ts';
import { type AnyLeaf, isLeaf } from '../piecing/tree.ts';
import type { Side } from '../recipe/schema.ts';
import { awayTo, type Edged, type SeamEnd } from './ends.ts';
import type { Press, PressedPart, PressingPlan } from './pressing.ts';

/** A plan, and the whole as its neighbours will meet it. */
export interface Pressed {
  readonly plan: PressingPlan;
  readonly edged: Edged;
}

interface Tally {
  parts: PressedPart[];
  nests: number;
  stacks: number;
}

/**
 * Which way every seam of a tree is pressed, by the trade's usual rules (common practice): the seams of one row all one
 * way and those of the next row the other way, so that rows nest; the seams between rows all one way; logs and borders
 * away from the middle. Counts the points at which seams of two sides meet: nested when they lie to opposite sides,
 * stacked when they lie to the same side.
 * @param edgesOf how a leaf meets its neighbours
 */
export function press<Leaf extends AnyLeaf>(root: Part<Leaf>, edgesOf: (leaf: Leaf) => Edged): Pressed {
  const tally: Tally = { parts: [], nests: 0, stacks: 0 };
  const edged = pressPart(root, '', 0, edgesOf, tally);
  return { plan: tally, edged };
}

type EdgesOf<Leaf> = (leaf: Leaf) => Edged;

function pressPart<Leaf extends AnyLeaf>(
  part: Part<Leaf>,
  path: string,
  index: number,
  edgesOf: EdgesOf<Leaf>,
  tally: Tally,
): Edged {
  if (isLeaf<Leaf>(part)) return edgesOf(part);
  return part.kind === 'row' ? pressRow(part, path, index, edgesOf, tally) : pressRounds(part, path, edgesOf, tally);
}

function below(path: string, child: number): string {
  return path === '' ? String(child) : `${path}.${child}`;
}

function pressRow<Leaf extends AnyLeaf>(
  row: Row<Leaf>,
  path: string,
  index: number,
  edgesOf: EdgesOf<Leaf>,
  tally: Tally,
): Edged {
  const [one, other]: [Press, Press] = row.along === 'across' ? ['right', 'left'] : ['down', 'up'];
  const way = index % 2 === 0 ? one : other;
  tally.parts.push({ path, seams: row.parts.slice(1).map(() => way) });
  const side: Side = row.along === 'across' ? 'right' : 'bottom';
  const sewn = row.parts.map((part, i) => pressPart(part, below(path, i), i, edgesOf, tally));
  return sewn.reduce((whole, part) => join(whole, part, side, way, tally));
}

function pressRounds<Leaf extends AnyLeaf>(
  rounds: Rounds<Leaf>,
  path: string,
  edgesOf: EdgesOf<Leaf>,
  tally: Tally,
): Edged {
  tally.parts.push({ path, seams: rounds.logs.map((log) => awayTo(log.side)) });
  let whole = pressPart(rounds.core, below(path, 0), 0, edgesOf, tally);
  rounds.logs.forEach((log, i) => {
    const strip = pressPart(log.part, below(path, i + 1), 0, edgesOf, tally);
    whole = join(whole, strip, log.side, awayTo(log.side), tally);
  });
  return whole;
}

const OPPOSITE: Readonly<Record<Side, Side>> = { top: 'bottom', bottom: 'top', left: 'right', right: 'left' };

function join(whole: Edged, added: Edged, side: Side, way: Press, tally: Tally): Edged {
  meet(whole.ends[side], added.ends[OPPOSITE[side]], tally);
  const first = side === 'left' || side === 'top' ? added : whole;
  const second = first === added ? whole : added;
  const across = side === 'left' || side === 'right';
  const seam: SeamEnd = { at: across ? first.width : first.height, press: way };
  const further = (ends: readonly SeamEnd[]) => ends.map((end) => ({ at: end.at + seam.at, press: end.press }));
  const both = (edge: Side) => [...first.ends[edge], seam, ...further(second.ends[edge])];
  if (across) {
    const ends = { top: both('top'), bottom: both('bottom'), left: first.ends.left, right: second.ends.right };
    return { width: first.width + second.width, height: first.height, ends };
  }
  const ends = { left: both('left'), right: both('right'), top: first.ends.top, bottom: second.ends.bottom };
  return { width: first.width, height: first.height + second.height, ends };
}

function meet(a: readonly SeamEnd[], b: readonly SeamEnd[], tally: Tally): void {
  let j = 0;
  for (const end of a) {
    while (j < b.length && longer(end.at, (b[j] as SeamEnd).at)) j += 1;
    const other = b[j];
    if (other === undefined || !same(end.at, other.at) || end.press === 'open' || other.press === 'open') continue;
    if (end.press === other.press) tally.stacks += 1;
    else tally.nests += 1;
  }
}
