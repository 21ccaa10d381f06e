import { type Box, type Point, type Turn, UNTURNED } from '../drawing/turn.ts';
import type { Part, Ring, Rounds, Row } from '../piecing/piecing.ts';
import { aboutRing, type RingArm } from '../piecing/ring.ts';
import { type AnyLeaf, isLeaf } from '../piecing/tree.ts';
import type { Side } from '../recipe/schema.ts';
import { awayTo, type Edged, type SeamEnd, turnPress } from './ends.ts';
import { type Meetings, meet, noMeetings } from './meet.ts';
import type { Press, PressedPart, PressingPlan } from './pressing.ts';

/** A plan, and the whole as its neighbours will meet it. */
export interface Pressed {
  readonly plan: PressingPlan;
  readonly edged: Edged;
}

interface Tally extends Meetings {
  readonly parts: PressedPart[];
}

/**
 * Which way every seam of a tree is pressed, by the trade's usual rules (common practice): the seams of one row all one
 * way and those of the next row the other way, so that rows nest; the seams between rows all one way; logs and borders
 * away from the middle. Counts the points at which seams of two sides meet: nested when they lie to opposite sides,
 * stacked when they lie to the same side.
 * @param edgesOf how a leaf meets its neighbours
 * @param lieOf how parts that are made by themselves lie; left out, everything is pressed where it stands
 * @param pullOf how strongly a part draws the seams beside it, when some do: sashing does, so that its seams nest
 */
export function press<Leaf extends AnyLeaf>(
  root: Part<Leaf>,
  edgesOf: (leaf: Leaf) => Edged,
  lieOf?: LieOf<Leaf>,
  pullOf?: (part: Part<Leaf>) => number,
): Pressed {
  const plan: Tally = { parts: [], ...noMeetings() };
  const edged = pressPart(
    root,
    { path: '', index: 0, lie: UNTURNED },
    { edgesOf, tally: plan, ...(lieOf && { lieOf }), ...(pullOf && { pullOf }) },
  );
  return { plan, edged };
}

/**
 * How a part that is made by itself lies, seen from the way its likes are made; null for a part that is not. Likes are
 * pressed alike, whichever way they are turned into the block.
 */
export type LieOf<Leaf> = (part: Part<Leaf>) => Turn | null;

interface Pressing<Leaf> {
  readonly edgesOf: (leaf: Leaf) => Edged;
  readonly lieOf?: LieOf<Leaf>;
  readonly pullOf?: (part: Part<Leaf>) => number;
  readonly tally: Tally;
}

/** Where the pressing of a part begins: its path, its place among its siblings, and how what it belongs to lies. */
interface Here {
  readonly path: string;
  readonly index: number;
  readonly lie: Turn;
}

function pressPart<Leaf extends AnyLeaf>(part: Part<Leaf>, here: Here, pressing: Pressing<Leaf>): Edged {
  if (isLeaf<Leaf>(part)) return pressing.edgesOf(part);
  const own = pressing.lieOf?.(part) ?? null;
  const from = own === null ? here : { path: here.path, index: 0, lie: own };
  if (part.kind === 'row') return pressRow(part, from, pressing);
  return part.kind === 'ring' ? pressRing(part, from, pressing) : pressRounds(part, from, pressing);
}

function below(path: string, child: number): string {
  return path === '' ? String(child) : `${path}.${child}`;
}

function pressRow<Leaf extends AnyLeaf>(row: Row<Leaf>, { path, index, lie }: Here, pressing: Pressing<Leaf>): Edged {
  const { way, forwards } = wayOf(row.along, index, lie);
  const ways = pulledWays(row, way, pressing.pullOf);
  pressing.tally.parts.push({ path, seams: ways });
  const side: Side = row.along === 'across' ? 'right' : 'bottom';
  const last = row.parts.length - 1;
  const sewn = row.parts.map((part, i) =>
    pressPart(part, { path: below(path, i), index: forwards ? i : last - i, lie }, pressing),
  );
  return sewn.reduce((whole, part, i) => {
    const corner = seamStart((row.parts[i] as Part<Leaf>).box, side);
    return join(whole, part, { side, way: ways[i - 1] ?? way, corner }, pressing.tally);
  });
}

/** The way of every seam of a row: the row's, but towards the part that pulls more where two neighbours differ in that. */
function pulledWays<Leaf>(
  { parts, along }: Row<Leaf>,
  way: Press,
  pullOf: ((part: Part<Leaf>) => number) | undefined,
): readonly Press[] {
  if (pullOf === undefined) return parts.slice(1).map(() => way);
  const pulls = parts.map(pullOf);
  const [back, forth]: readonly [Press, Press] = along === 'across' ? ['left', 'right'] : ['up', 'down'];
  return parts.slice(1).map((_, i) => {
    const pull = (pulls[i + 1] ?? 0) - (pulls[i] ?? 0);
    return pull === 0 ? way : pull > 0 ? forth : back;
  });
}

/** The way the seams of a row lie, and whether its parts are counted from the left or top as its likes' are. */
function wayOf(
  along: Row<never>['along'],
  index: number,
  lie: Turn,
): { readonly way: Press; readonly forwards: boolean } {
  const unturned = (along === 'across') === (lie.quarters % 2 === 0);
  const first: Press = unturned ? 'right' : 'down';
  const forth = turnPress(first, lie);
  const back = turnPress(unturned ? 'left' : 'up', lie);
  return { way: index % 2 === 0 ? forth : back, forwards: forth === 'right' || forth === 'down' };
}

function pressRounds<Leaf extends AnyLeaf>(rounds: Rounds<Leaf>, { path, lie }: Here, pressing: Pressing<Leaf>): Edged {
  pressing.tally.parts.push({ path, seams: rounds.logs.map((log) => awayTo(log.side)) });
  let whole = pressPart(rounds.core, { path: below(path, 0), index: 0, lie }, pressing);
  rounds.logs.forEach((log, i) => {
    const strip = pressPart(log.part, { path: below(path, i + 1), index: 0, lie }, pressing);
    const seam = { side: log.side, way: awayTo(log.side), corner: seamStart(log.part.box, log.side) };
    whole = join(whole, strip, seam, pressing.tally);
  });
  return whole;
}

/** Every arm is pressed away from the core; its seam runs on beside the end of the arm before it. */
function pressRing<Leaf extends AnyLeaf>(ring: Ring<Leaf>, { path, lie }: Here, pressing: Pressing<Leaf>): Edged {
  const { tally } = pressing;
  tally.parts.push({ path, seams: ring.logs.map((log) => awayTo(log.side)) });
  const inner = (part: Part<Leaf>, i: number) => pressPart(part, { path: below(path, i), index: 0, lie }, pressing);
  const core = inner(ring.core, 0);
  const arms = aboutRing(ring, (part, i) => inner(part, i + 1));
  for (const { side, made, box, before } of arms) {
    const sewnTo = beside(core, before.made, before.side, awayTo(before.side));
    meetAcross(sewnTo, made, { side, way: awayTo(side), corner: seamStart(box, side) }, tally);
  }
  const outer = (side: Side) => {
    const { made, after } = arms.find((arm) => arm.side === side) as RingArm<Edged>;
    return beside(made, after.made, after.side, awayTo(after.side));
  };
  const [top, right, bottom, left] = [outer('top'), outer('right'), outer('bottom'), outer('left')];
  const ends = { top: top.ends.top, right: right.ends.right, bottom: bottom.ends.bottom, left: left.ends.left };
  return { width: top.width, height: left.height, ends };
}

const OPPOSITE: Readonly<Record<Side, Side>> = { top: 'bottom', bottom: 'top', left: 'right', right: 'left' };

/** A seam about to be sewn: on which side of the whole, which way it is pressed, and where it begins. */
interface Seam {
  readonly side: Side;
  readonly way: Press;
  readonly corner: Point;
}

/** The left or upper end of the seam between a whole and what is added to one side of it. */
function seamStart(added: Box, side: Side): Point {
  const x = side === 'left' ? added.x + added.width : added.x;
  const y = side === 'top' ? added.y + added.height : added.y;
  return { x, y };
}

function join(whole: Edged, added: Edged, seam: Seam, tally: Tally): Edged {
  meetAcross(whole, added, seam, tally);
  return beside(whole, added, seam.side, seam.way);
}

/** Counts what meets where `added` is sewn to one side of `whole`. */
function meetAcross(whole: Edged, added: Edged, { side, corner }: Seam, tally: Tally): void {
  const upright = side === 'left' || side === 'right';
  const spot = (at: number) => (upright ? { x: corner.x, y: corner.y + at } : { x: corner.x + at, y: corner.y });
  meet(whole.ends[side], added.ends[OPPOSITE[side]], spot, tally);
}

/** `added` on one side of `whole`, with the ends of the seam between them. */
function beside(whole: Edged, added: Edged, side: Side, way: Press): Edged {
  const upright = side === 'left' || side === 'right';
  const first = side === 'left' || side === 'top' ? added : whole;
  const second = first === added ? whole : added;
  const seam: SeamEnd = { at: upright ? first.width : first.height, press: way };
  const further = (ends: readonly SeamEnd[]) => ends.map((end) => ({ at: end.at + seam.at, press: end.press }));
  const both = (edge: Side) => [...first.ends[edge], seam, ...further(second.ends[edge])];
  if (upright) {
    const ends = { top: both('top'), bottom: both('bottom'), left: first.ends.left, right: second.ends.right };
    return { width: first.width + second.width, height: first.height, ends };
  }
  const ends = { left: both('left'), right: both('right'), top: first.ends.top, bottom: second.ends.bottom };
  return { width: first.width, height: first.height + second.height, ends };
}
