import type { Group, Wants } from './wants.ts';

/** A place in a strip for a group of one length. */
export interface Slot {
  readonly strip: number;
  /** Which fabric the strip is: strips of one fabric have one number. */
  readonly fabric: number;
  readonly length: number;
}

/** Groups put into slots, and how often a fabric meets itself all the same. */
export interface Assigned {
  /** For each group of the list, its slot. */
  readonly slots: readonly Slot[];
  /** A fabric twice in a block, or in two patches that touch across two blocks. */
  readonly clashes: number;
  /** A fabric in two blocks that stand beside one another, not touching: avoided where it can be. */
  readonly near: number;
}

/** What a clash weighs against being merely near. */
export const CLASH = 1000;
/** Rounds of exchanging before the search gives up. */
const ROUNDS = 60;

/** How little two groups may be cut from the same fabric: nothing, near, or a clash; by their ids. */
export function penalties({ groups, touching, neighbours }: Wants): (a: Group, b: Group) => number {
  const touch = new Set(touching.flatMap(([a, b]) => [`${a} ${b}`, `${b} ${a}`]));
  const beside = new Set(neighbours.flatMap(([a, b]) => [`${a} ${b}`, `${b} ${a}`]));
  const known = new Map<number, number>();
  return (a, b) => {
    if (a.place === null || b.place === null) return 0;
    if (a.place === b.place) return CLASH;
    const key = Math.min(a.id, b.id) * groups.length + Math.max(a.id, b.id);
    const found = known.get(key);
    if (found !== undefined) return found;
    const penalty = touch.has(`${a.id} ${b.id}`) ? CLASH : beside.has(`${a.place} ${b.place}`) ? 1 : 0;
    known.set(key, penalty);
    return penalty;
  };
}

/**
 * Puts groups into slots of their length so that no fabric comes twice into a block, nor into patches that touch across
 * blocks, and as seldom as can be into neighbouring blocks: first one after another where it hurts least, then by
 * exchanging two groups as long as that makes it better. The same question always gets the same answer.
 * @param slots one for each group, of the same lengths
 */
export function assign(
  groups: readonly Group[],
  slots: readonly Slot[],
  penalty: (a: Group, b: Group) => number,
): Assigned {
  const order = groups.map((_, i) => i).sort((a, b) => byLength(groups[a] as Group, groups[b] as Group));
  const free = new Set(slots.map((_, i) => i));
  const at = new Array<number>(groups.length).fill(-1);
  const inFabric = new Map<number, Set<number>>();
  const fabricAt = (slot: number) => (slots[slot] as Slot).fabric;
  const costAt = (group: number, fabric: number, without = -1) => {
    let cost = 0;
    for (const other of inFabric.get(fabric) ?? [])
      if (other !== group && other !== without) cost += penalty(groups[group] as Group, groups[other] as Group);
    return cost;
  };
  const put = (group: number, slot: number) => {
    at[group] = slot;
    const inside = inFabric.get(fabricAt(slot)) ?? new Set();
    inFabric.set(fabricAt(slot), inside.add(group));
  };
  for (const group of order) {
    const { length } = groups[group] as Group;
    const open = [...free].filter((slot) => Math.abs((slots[slot] as Slot).length - length) < 1e-9);
    const best = open.reduce((a, b) => (costAt(group, fabricAt(b)) < costAt(group, fabricAt(a)) ? b : a));
    free.delete(best);
    put(group, best);
  }
  const swap = (a: number, b: number) => {
    const [slotA, slotB] = [at[a] as number, at[b] as number];
    inFabric.get(fabricAt(slotA))?.delete(a);
    inFabric.get(fabricAt(slotB))?.delete(b);
    put(a, slotB);
    put(b, slotA);
  };
  for (let round = 0, better = true; better && round < ROUNDS; round++) {
    better = false;
    for (const a of order) {
      const own = costAt(a, fabricAt(at[a] as number));
      if (own === 0) continue;
      const gainOf = (b: number) => {
        const [fa, fb] = [fabricAt(at[a] as number), fabricAt(at[b] as number)];
        if (fa === fb) return 0;
        return own + costAt(b, fb) - costAt(a, fb, b) - costAt(b, fa, a);
      };
      const alike = order.filter(
        (b) => b !== a && Math.abs((groups[a] as Group).length - (groups[b] as Group).length) < 1e-9,
      );
      const best = alike.reduce((x: number, b) => (x < 0 || gainOf(b) > gainOf(x) ? b : x), -1);
      if (best < 0 || gainOf(best) <= 0) continue;
      swap(a, best);
      better = true;
    }
  }
  let total = 0;
  groups.forEach((_, group) => {
    total += costAt(group, fabricAt(at[group] as number));
  });
  const pairs = total / 2;
  return {
    slots: at.map((slot) => slots[slot] as Slot),
    clashes: Math.floor(pairs / CLASH),
    near: pairs % CLASH,
  };
}

function byLength(a: Group, b: Group): number {
  return b.length - a.length || a.id - b.id;
}
