import { type Inches, longer } from '../../measure/inches.ts';
import { type Kind, liesOf, type Packed, packed } from './kinds.ts';

/** Pieces that need a strip each, and the rest. */
export interface Parted {
  readonly alone: readonly Packed[];
  readonly rest: readonly number[];
}

/**
 * Sets aside the kinds that lie one way only and leave no room for even the narrowest piece beside them: whole strips for
 * strip sets and bindings, long border strips. Each such piece takes a strip of its own in every plan, so the plan and
 * the bound for the rest, each with these strips added, are those for all.
 * @returns strips of the pieces that lie alone, and the indices of the other kinds
 */
export function setAlone(kinds: readonly Kind[], width: Inches): Parted {
  const alone: Packed[] = [];
  let rest = liesOf(kinds, width).filter((lie) => (kinds[lie.kind]?.count ?? 0) > 0);
  for (let before = -1; before !== rest.length; ) {
    before = rest.length;
    const narrowest = rest.reduce((least, lie) => Math.min(least, lie.width), width);
    const ways = new Map<number, number>();
    for (const lie of rest) ways.set(lie.kind, (ways.get(lie.kind) ?? 0) + 1);
    rest = rest.filter((lie) => {
      if (ways.get(lie.kind) !== 1 || !longer(lie.width + narrowest, width)) return true;
      alone.push(packed([{ lie, count: 1 }], kinds[lie.kind]?.count ?? 0));
      return false;
    });
  }
  const set = new Set(alone.flatMap(({ laid }) => laid.map(({ lie }) => lie.kind)));
  return { alone, rest: kinds.flatMap((kind, index) => (kind.count > 0 && !set.has(index) ? [index] : [])) };
}
