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

/** What groups meet when they are cut from the same fabric. */
export interface Penalties {
  /** How little two groups may be: nothing, near, or a clash. */
  between(a: Group, b: Group): number;
  /** Tells of every group that a group meets. */
  around(group: Group, tell: (id: number, penalty: number) => void): void;
}

/** How little any two groups may be cut from the same fabric. */
export function penalties({ groups, touching, neighbours }: Wants): Penalties {
  const placeOf = new Map(groups.map(({ id, place }) => [id, place]));
  const inPlace = listed(groups.flatMap(({ id, place }) => (place === null ? [] : [[place, id] as const])));
  const beside = listed(both(neighbours));
  const touches = listed(both(touching.filter((pair) => pair.every((id) => (placeOf.get(id) ?? null) !== null))));
  const between = (a: number, placeA: number | null, b: number, placeB: number | null) => {
    if (placeA === null || placeB === null) return 0;
    if (placeA === placeB || touches.get(a)?.has(b)) return CLASH;
    return beside.get(placeA)?.has(placeB) ? 1 : 0;
  };
  return {
    between: (a, b) => between(a.id, a.place, b.id, b.place),
    around({ id, place }, tell) {
      if (place === null) return;
      const met = new Set([...(inPlace.get(place) ?? []), ...(touches.get(id) ?? [])]);
      for (const near of beside.get(place) ?? []) for (const other of inPlace.get(near) ?? []) met.add(other);
      met.delete(id);
      for (const other of met) tell(other, between(id, place, other, placeOf.get(other) ?? null));
    },
  };
}

function both(pairs: readonly (readonly [number, number])[]): readonly (readonly [number, number])[] {
  return pairs.flatMap(([a, b]) => [[a, b] as const, [b, a] as const]);
}

function listed(pairs: readonly (readonly [number, number])[]): ReadonlyMap<number, ReadonlySet<number>> {
  const found = new Map<number, Set<number>>();
  for (const [key, value] of pairs) {
    const own = found.get(key) ?? new Set();
    found.set(key, own.add(value));
  }
  return found;
}

/**
 * Puts groups into slots of their length so that no fabric comes twice into a block, nor into patches that touch across
 * blocks, and as seldom as can be into neighbouring blocks: first one after another where it hurts least, then by
 * exchanging two groups as long as that makes it better. The same question always gets the same answer.
 * @param slots one for each group, of the same lengths
 */
export function assign(groups: readonly Group[], slots: readonly Slot[], penalty: Penalties): Assigned {
  const order = groups.map((_, i) => i).sort((a, b) => byLength(groups[a] as Group, groups[b] as Group));
  const meeting = new Meeting(groups, slots, penalty);
  const free = new Set(slots.map((_, i) => i));
  for (const group of order) {
    const { length } = groups[group] as Group;
    let best = -1;
    for (const slot of free) {
      if (Math.abs((slots[slot] as Slot).length - length) >= 1e-9) continue;
      if (best < 0 || meeting.cost(group, slot) < meeting.cost(group, best)) best = slot;
    }
    free.delete(best);
    meeting.put(group, best);
  }
  for (let round = 0; round < ROUNDS && exchangeOnce(order, groups, meeting); round++);
  const pairs = meeting.total() / 2;
  return {
    slots: meeting.at.map((slot) => slots[slot] as Slot),
    clashes: Math.floor(pairs / CLASH),
    near: pairs % CLASH,
  };
}

/** Exchanges each group that meets something with the group of its length where that helps most; whether any was. */
function exchangeOnce(order: readonly number[], groups: readonly Group[], meeting: Meeting): boolean {
  let better = false;
  for (const a of order) {
    if (meeting.cost(a, meeting.at[a] as number) === 0) continue;
    let best = -1;
    let most = 0;
    for (const b of order) {
      if (b === a || Math.abs((groups[a] as Group).length - (groups[b] as Group).length) >= 1e-9) continue;
      const gain = meeting.gain(a, b);
      if (gain > most) [best, most] = [b, gain];
    }
    if (best < 0) continue;
    meeting.exchange(a, best);
    better = true;
  }
  return better;
}

/** Which group is in which slot, and what each group would meet in each fabric, kept up as groups are put and exchanged. */
class Meeting {
  readonly at: number[];
  private readonly groups: readonly Group[];
  private readonly penalty: Penalties;
  private readonly index: ReadonlyMap<number, number>;
  /** For each slot the place of its fabric in the table. */
  private readonly fabrics: readonly number[];
  private readonly many: number;
  private readonly costs: Int32Array;

  constructor(groups: readonly Group[], slots: readonly Slot[], penalty: Penalties) {
    this.groups = groups;
    this.index = new Map(groups.map(({ id }, i) => [id, i]));
    this.penalty = penalty;
    this.at = new Array<number>(groups.length).fill(-1);
    const known = new Map<number, number>();
    this.fabrics = slots.map(({ fabric }) => {
      const place = known.get(fabric) ?? known.size;
      known.set(fabric, place);
      return place;
    });
    this.many = known.size;
    this.costs = new Int32Array(groups.length * known.size);
  }

  /** What a group meets in the fabric of a slot, itself left out. */
  cost(group: number, slot: number): number {
    return this.costs[group * this.many + (this.fabrics[slot] as number)] as number;
  }

  put(group: number, slot: number): void {
    this.at[group] = slot;
    this.count(group, slot, 1);
  }

  /** By how much less is met once two groups have changed places. */
  gain(a: number, b: number): number {
    const [slotA, slotB] = [this.at[a] as number, this.at[b] as number];
    if (this.fabrics[slotA] === this.fabrics[slotB]) return 0;
    const each = this.penalty.between(this.groups[a] as Group, this.groups[b] as Group);
    return this.cost(a, slotA) + this.cost(b, slotB) - this.cost(a, slotB) - this.cost(b, slotA) + 2 * each;
  }

  exchange(a: number, b: number): void {
    const [slotA, slotB] = [this.at[a] as number, this.at[b] as number];
    this.count(a, slotA, -1);
    this.count(b, slotB, -1);
    this.put(a, slotB);
    this.put(b, slotA);
  }

  /** What all groups meet, each pair counted twice. */
  total(): number {
    return this.at.reduce((sum, slot, group) => sum + this.cost(group, slot), 0);
  }

  private count(group: number, slot: number, sign: number): void {
    const fabric = this.fabrics[slot] as number;
    this.penalty.around(this.groups[group] as Group, (id, penalty) => {
      const other = this.index.get(id);
      if (other === undefined) return;
      const at = other * this.many + fabric;
      this.costs[at] = (this.costs[at] as number) + sign * penalty;
    });
  }
}

function byLength(a: Group, b: Group): number {
  return b.length - a.length || a.id - b.id;
}
