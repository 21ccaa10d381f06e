import type { Inches } from '../../measure/inches.ts';
import type { Value } from '../../recipe/schema.ts';
import { planStrips } from '../strips/planStrips.ts';
import { BLOCKS, fabricsOf, type Part, type Shortage, type Supply } from './allotment.ts';
import { type Assigned, assign, CLASH, type Penalties, type Slot } from './assign.ts';
import { serve } from './serve.ts';
import type { Group, Wants } from './wants.ts';

/** Strips of one value: pieces for blocks first, then what is joined from whole strips and their ends. */
export function allotStrips(value: Value, wants: Wants, supply: Supply, penalty: Penalties): Part {
  const have = supply.values[value];
  const groups = wants.groups.filter((group) => group.value === value);
  const fits = groups.filter(({ length }) => length <= supply.length + 1e-9);
  const { packs, least } = pack(fits, supply.length);
  const fabrics = fabricsOf(supply, value);
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
  return { packs, least: Math.max(0, Math.ceil(plan.bound - 1e-6)) };
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
