import { type Allotment, type Part, type Supply, VALUES } from './allotment.ts';
import { allotSquares } from './allotSquares.ts';
import { allotStrips } from './allotStrips.ts';
import { type Penalties, penalties } from './assign.ts';
import type { Wants } from './wants.ts';

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
    const way = supply.square ? allotSquares : allotStrips;
    const part = known.parts.get(key) ?? way(value, wants, supply, known.penalty);
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
