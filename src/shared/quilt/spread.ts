/** Things that stand side by side: for each, the places of those it touches. */
export type Touching = readonly (readonly number[])[];

/**
 * Spreads a number of fabrics over places so that as few equal ones as can be lie side by side and all come about equally often:
 * place by place, those with most neighbours first, each gets the fabric that its neighbours have least, then the one used
 * least so far; where that leaves a choice, the seed decides. A last round exchanges places as long as clumps go away.
 * The same seed gives the same spread.
 * @returns for each place the number of its fabric, from 0
 */
export function spread(places: Touching, fabrics: number, seed: number): readonly number[] {
  const chance = chanceFrom(seed);
  const given = new Array<number>(places.length).fill(-1);
  const used = new Array<number>(fabrics).fill(0);
  const order = places.map((_, place) => ({ place, many: places[place]?.length ?? 0, at: chance() }));
  order.sort((a, b) => b.many - a.many || a.at - b.at);
  for (const { place } of order) {
    const touched = countsAround(places, given, place, fabrics);
    const choices = touched.map((near, fabric) => ({ fabric, near, often: used[fabric] as number, at: chance() }));
    choices.sort((a, b) => a.near - b.near || a.often - b.often || a.at - b.at);
    const best = choices[0]?.fabric ?? 0;
    given[place] = best;
    used[best] = (used[best] as number) + 1;
  }
  const tries = { left: TRIES };
  for (let round = 0; round < ROUNDS && exchangeOnce(places, given, tries); round++);
  return given;
}

/** Pairs of equal fabrics side by side. */
export function clumps(places: Touching, given: readonly number[]): number {
  let found = 0;
  places.forEach((near, place) => {
    for (const other of near) if (other > place && given[other] === given[place]) found += 1;
  });
  return found;
}

const ROUNDS = 40;

/** Exchanges that are tried at the most: where clumps must be, no search ends them. */
const TRIES = 1_000_000;

function countsAround(places: Touching, given: readonly number[], place: number, fabrics: number): number[] {
  const counts = new Array<number>(fabrics).fill(0);
  for (const other of places[place] ?? []) {
    const fabric = given[other] as number;
    if (fabric >= 0) counts[fabric] = (counts[fabric] as number) + 1;
  }
  return counts;
}

/** Exchanges the fabrics of two places wherever that breaks up a clump; whether any was. */
function exchangeOnce(places: Touching, given: number[], tries: { left: number }): boolean {
  const clashes = (place: number) => (places[place] ?? []).filter((other) => given[other] === given[place]).length;
  let better = false;
  for (let a = 0; a < places.length; a++) {
    if (clashes(a) === 0) continue;
    for (let b = 0; b < places.length; b++) {
      if (given[a] === given[b]) continue;
      if (tries.left-- <= 0) return false;
      const before = clashes(a) + clashes(b);
      [given[a], given[b]] = [given[b] as number, given[a] as number];
      if (clashes(a) + clashes(b) < before) {
        better = true;
        break;
      }
      [given[a], given[b]] = [given[b] as number, given[a] as number];
    }
  }
  return better;
}

/** Numbers from 0 to 1 that the seed alone decides (mulberry32). */
function chanceFrom(seed: number): () => number {
  let state = Math.trunc(seed) >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}
