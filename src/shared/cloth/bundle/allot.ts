import type { Inches } from '../../measure/inches.ts';
import type { Value } from '../../recipe/schema.ts';
import { planStrips } from '../strips/planStrips.ts';
import { type Assigned, assign, CLASH, type Penalties, penalties, type Slot } from './assign.ts';
import { fillSquares, fitsSquare, leastSquares } from './squares.ts';
import type { Group, LongWant, Wants } from './wants.ts';

export const VALUES: readonly Value[] = ['light', 'medium', 'dark'];

/** The strips there are to cut from. */
export interface Supply {
  /** Inches of each strip that may be used. */
  readonly length: Inches;
  readonly values: Readonly<Record<Value, number>>;
  /** Set when they are squares, as wide as they are long. */
  readonly square?: true;
  /** How many strips of each value are a second one of a fabric that is there already. */
  readonly twice?: Readonly<Partial<Record<Value, number>>>;
}

/** One strip and what is cut from it. */
export interface AllottedStrip {
  /** Counted from 1 through the whole bundle: light, medium, dark. */
  readonly number: number;
  readonly value: Value;
  /** Strips with the same number are of one fabric. */
  readonly fabric: number;
  /** Groups of pieces for blocks, longest first. */
  readonly groups: readonly Group[];
  /** Inches that go into borders or the binding: the whole strip, or its end. */
  readonly long: readonly { readonly letter: string; readonly length: Inches }[];
  /** Inches left over; of a square none are counted. */
  readonly left: Inches;
  readonly square?: true;
}

/** How one value of the bundle is used. */
export interface ValueUse {
  readonly value: Value;
  readonly have: number;
  /** Strips that block pieces are cut from, and the least they could be cut from. */
  readonly forBlocks: number;
  readonly least: number;
  /** Whole strips for borders, binding and strip sets. */
  readonly forLong: number;
  readonly spare: number;
}

/** What a bundle cannot give. */
export interface Shortage {
  /** What cannot be cut: "Inner border, sides", or "blocks". */
  readonly words: string;
  readonly value: Value;
  /** Strips that would have to be there besides. */
  readonly strips: number;
  /** Set when no number of strips would do: what has to come from one strip is this long. */
  readonly tooLong?: Inches;
  readonly square?: true;
}

/** A bundle, strip by strip. */
export interface Allotment {
  readonly enough: boolean;
  readonly strips: readonly AllottedStrip[];
  readonly values: readonly ValueUse[];
  /** In the order in which things are served: the first to fail is the last here to be given up. */
  readonly short: readonly Shortage[];
  /** How often a fabric comes twice into a block or touches itself across blocks, all the same. */
  readonly clashes: number;
  /** How often it comes into two neighbouring blocks without touching. */
  readonly near: number;
}

/** What pieces of blocks are called among the things that cannot be cut. */
export const BLOCKS = 'blocks';

/** The shortest end of a strip that is worth joining into a border or the binding, inches (common practice). */
const SHORTEST_END = 8;

interface Known {
  readonly penalty: Penalties;
  readonly parts: Map<string, Part>;
}

/** What was worked out before for the same wants: whoever looks for the fewest strips changes one value at a time. */
const allKnown = new WeakMap<Wants, Known>();

function knownFor(wants: Wants): Known {
  const known = allKnown.get(wants) ?? { penalty: penalties(wants), parts: new Map() };
  allKnown.set(wants, known);
  return known;
}

/**
 * Allots a bundle strip by strip: pieces of blocks first, packed along the strips with the proof of how few will do; then
 * strip sets, borders and binding from whole strips and, when these run out, from the ends that are left. Light stays
 * light and dark stays dark.
 */
export function allot(wants: Wants, supply: Supply): Allotment {
  const known = knownFor(wants);
  const parts = VALUES.map((value) => {
    const key = `${supply.square ?? false} ${value} ${supply.length} ${supply.values[value]} ${supply.twice?.[value] ?? 0}`;
    const part = known.parts.get(key) ?? allotValue(value, wants, supply, known.penalty);
    known.parts.set(key, part);
    return part;
  });
  let before = 0;
  const strips = parts.flatMap((part) => {
    const first = before;
    before += Math.max(supply.values[part.use.value], part.strips.length);
    return part.strips.map((strip) => ({ ...strip, number: first + strip.number, fabric: first + strip.fabric }));
  });
  const short = parts.flatMap((part) => part.short);
  return {
    enough: short.length === 0,
    strips,
    values: parts.map(({ use }) => use).filter(({ have, forBlocks, forLong }) => have + forBlocks + forLong > 0),
    short,
    clashes: parts.reduce((sum, { assigned }) => sum + assigned.clashes, 0),
    near: parts.reduce((sum, { assigned }) => sum + assigned.near, 0),
  };
}

interface Part {
  readonly use: ValueUse;
  readonly strips: readonly AllottedStrip[];
  readonly short: readonly Shortage[];
  readonly assigned: Pick<Assigned, 'clashes' | 'near'>;
}

/** Squares hold pieces for blocks only; nothing is joined from them. */
function allotSquares(value: Value, wants: Wants, supply: Supply, penalty: Penalties): Part {
  const have = supply.values[value];
  const groups = wants.groups.filter((group) => group.value === value);
  const fits = groups.filter((group) => fitsSquare(group, supply.length));
  const fabrics = have - Math.min(have >> 1, supply.twice?.[value] ?? 0);
  const fabricOf = (square: number) => (fabrics > 0 ? square % fabrics : square) + 1;
  const apart = fillSquares(fits, supply.length, fabricOf, penalty, false);
  const tight = apart.squares.length > have ? fillSquares(fits, supply.length, fabricOf, penalty, true) : apart;
  const filled = tight.squares.length < apart.squares.length ? tight : apart;
  const used = filled.squares.length;
  const lost = groups.filter((group) => !fits.includes(group));
  const longest = Math.max(0, ...lost.map(({ length }) => length));
  const strips = Math.max(0, used - have);
  const short: Shortage[] = [];
  if (lost.length > 0) short.push({ words: BLOCKS, value, strips, tooLong: longest, square: true });
  else if (strips > 0) short.push({ words: BLOCKS, value, strips, square: true });
  return {
    use: {
      value,
      have,
      forBlocks: used,
      least: leastSquares(fits, supply.length),
      forLong: 0,
      spare: Math.max(0, have - used),
    },
    strips: filled.squares.map((own, i) => ({
      number: i + 1,
      value,
      fabric: fabricOf(i),
      groups: own,
      long: [],
      left: 0,
      square: true,
    })),
    short,
    assigned: filled,
  };
}

function allotValue(value: Value, wants: Wants, supply: Supply, penalty: Penalties): Part {
  if (supply.square) return allotSquares(value, wants, supply, penalty);
  const have = supply.values[value];
  const groups = wants.groups.filter((group) => group.value === value);
  const fits = groups.filter(({ length }) => length <= supply.length + 1e-9);
  const { packs, least } = pack(fits, supply.length);
  const fabrics = have - Math.min(have >> 1, supply.twice?.[value] ?? 0);
  const filling = fill(fits, packs, { length: supply.length, have, fabrics }, penalty);
  const { filled, assigned } = filling;
  const short: Shortage[] = [];
  const longest = Math.max(0, ...groups.map((group) => group.length));
  const missing = Math.max(0, filled.length - have);
  if (fits.length < groups.length) short.push({ words: BLOCKS, value, strips: missing, tooLong: longest });
  else if (missing > 0) short.push({ words: BLOCKS, value, strips: missing });
  const given = serve(
    wants.long.filter((one) => one.value === value),
    filled,
    have,
    supply.length,
    value,
  );
  const spare = Math.max(0, have - filled.length - given.whole);
  return {
    use: { value, have, forBlocks: filled.length, least, forLong: given.whole, spare },
    strips: given.strips,
    short: [...short, ...given.short],
    assigned,
  };
}

/** The lengths of the groups, packed into as few strips as the planner can, with few different strips. */
function pack(groups: readonly Group[], length: Inches): { packs: readonly (readonly number[])[]; least: number } {
  const lengths = [...new Set(groups.map((group) => group.length))].sort((a, b) => b - a);
  const kinds = lengths.map((width) => ({
    width,
    height: 1,
    count: groups.filter((group) => group.length === width).length,
    turns: false,
  }));
  const plan = planStrips(kinds, length);
  const packs = plan.strips.flatMap(({ laid, times }) => {
    const one = laid.flatMap(({ lie, count }) => new Array<number>(count).fill(lie.width)).sort((a, b) => b - a);
    return new Array<readonly number[]>(times).fill(one);
  });
  packs.sort((a, b) => (b[0] ?? 0) - (a[0] ?? 0));
  return { packs, least: Math.ceil(plan.bound - 1e-6) };
}

/** One value's strips, as many as there are and of how many different fabrics. */
interface Room {
  readonly length: Inches;
  readonly have: number;
  readonly fabrics: number;
}

interface Filling {
  readonly filled: readonly { readonly groups: readonly Group[]; readonly fabric: number; readonly left: Inches }[];
  readonly assigned: Pick<Assigned, 'clashes' | 'near'>;
}

/**
 * Strips with their block pieces: packed as tightly as can be, or where fabrics would then meet themselves, with each piece
 * in a strip that it may share. Strips beyond the different fabrics that there are repeat them from the first on.
 */
function fill(
  groups: readonly Group[],
  packs: readonly (readonly number[])[],
  room: Room,
  penalty: Penalties,
): Filling {
  const fabricOf = (strip: number) => (room.fabrics > 0 ? strip % room.fabrics : strip) + 1;
  const slots = packs.flatMap((lengths, strip) =>
    lengths.map((length): Slot => ({ strip, fabric: fabricOf(strip), length })),
  );
  const assigned = assign(groups, slots, penalty);
  const tight = packs.map((_, strip) => groups.filter((__, i) => assigned.slots[i]?.strip === strip));
  const done = (strips: readonly (readonly Group[])[], meeting: Filling['assigned']): Filling => ({
    assigned: meeting,
    filled: strips.map((own, strip) => ({
      groups: [...own].sort((a, b) => b.length - a.length || a.id - b.id),
      fabric: fabricOf(strip),
      left: room.length - own.reduce((sum, { length }) => sum + length, 0),
    })),
  });
  if (assigned.clashes === 0) return done(tight, assigned);
  const loose = apart(groups, room.length, fabricOf, penalty);
  const fewer = loose.clashes < assigned.clashes && loose.strips.length <= Math.max(room.have, packs.length);
  return fewer ? done(loose.strips, loose) : done(tight, assigned);
}

/** Longest first, each into the fullest strip in which it meets nothing it may not; a new strip where there is none. */
function apart(
  groups: readonly Group[],
  length: Inches,
  fabricOf: (strip: number) => number,
  penalty: Penalties,
): { readonly strips: readonly (readonly Group[])[]; readonly clashes: number; readonly near: number } {
  const strips: Group[][] = [];
  const total = { clashes: 0, near: 0 };
  const costIn = (group: Group, strip: number) => {
    const alike = strips.filter((_, other) => fabricOf(other) === fabricOf(strip)).flat();
    return alike.reduce((sum, other) => sum + penalty.between(group, other), 0);
  };
  for (const group of [...groups].sort((a, b) => b.length - a.length || a.id - b.id)) {
    let best = { strip: strips.length, cost: costIn(group, strips.length), left: length };
    strips.forEach((own, strip) => {
      const left = length - own.reduce((sum, one) => sum + one.length, 0) - group.length;
      const cost = costIn(group, strip);
      if (left < -1e-9 || cost >= CLASH) return;
      if (best.cost >= CLASH || best.strip === strips.length || left < best.left) best = { strip, cost, left };
    });
    strips[best.strip] = [...(strips[best.strip] ?? []), group];
    total.clashes += Math.floor(best.cost / CLASH);
    total.near += best.cost % CLASH;
  }
  return { strips, ...total };
}

interface Served {
  readonly strips: readonly AllottedStrip[];
  readonly short: readonly Shortage[];
  readonly whole: number;
}

/** Strips for what is joined: whole ones first, then the longest ends. */
function serve(
  wanted: readonly LongWant[],
  filled: readonly { readonly groups: readonly Group[]; readonly fabric: number; readonly left: Inches }[],
  have: number,
  length: Inches,
  value: Value,
): Served {
  const strips: AllottedStrip[] = filled.map(({ groups, fabric, left }, index) => {
    return { number: index + 1, value, fabric, groups, long: [], left };
  });
  const short: Shortage[] = [];
  for (const want of wanted) {
    const missing =
      want.strips === null ? join(want, strips, have, length, value) : takeWhole(want, strips, have, length, value);
    if (missing > 0) short.push({ words: want.words, value, strips: missing });
  }
  return { strips, short, whole: strips.length - filled.length };
}

/** Whole strips for strip sets; how many are missing. */
function takeWhole(want: LongWant, strips: AllottedStrip[], have: number, length: Inches, value: Value): number {
  let still = want.strips ?? 0;
  for (; still > 0 && strips.length < have; still--) strips.push(wholeStrip(want, strips.length + 1, length, value));
  return still;
}

/** Strips joined end to end until they reach; how many are missing. Each join takes `want.join` of what it joins. */
function join(want: LongWant, strips: AllottedStrip[], have: number, length: Inches, value: Value): number {
  let reached = -want.join;
  const take = (at: number) => {
    const strip = strips[at] as AllottedStrip;
    const first = reached < 0;
    const taken = Math.min(strip.left, want.reach - Math.max(0, reached) + (first ? 0 : want.join));
    strips[at] = { ...strip, long: [...strip.long, { letter: want.letter, length: taken }], left: strip.left - taken };
    reached = Math.max(0, reached) + taken - (first ? 0 : want.join);
  };
  while (reached < want.reach - 1e-6) {
    if (strips.length < have) {
      strips.push({ ...wholeStrip(want, strips.length + 1, length, value), long: [], left: length });
      take(strips.length - 1);
      continue;
    }
    const end = longestEnd(strips);
    if (end < 0) break;
    take(end);
  }
  const missing = (want.reach - Math.max(0, reached)) / Math.max(1e-6, length - want.join);
  return reached >= want.reach - 1e-6 ? 0 : Math.max(1, Math.ceil(missing - 1e-9));
}

function wholeStrip(want: LongWant, number: number, length: Inches, value: Value): AllottedStrip {
  return { number, value, fabric: number, groups: [], long: [{ letter: want.letter, length }], left: 0 };
}

function longestEnd(strips: readonly AllottedStrip[]): number {
  let best = -1;
  strips.forEach(({ left }, index) => {
    if (left >= SHORTEST_END && (best < 0 || left > (strips[best]?.left ?? 0))) best = index;
  });
  return best;
}
