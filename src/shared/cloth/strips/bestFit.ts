import { longer } from '../../measure/inches.ts';
import { type Laid, type Lie, type Packed, packed } from './kinds.ts';
import type { Problem } from './problem.ts';

/** Strips being filled, all alike. */
interface Open {
  readonly laid: readonly Laid[];
  readonly room: number;
  readonly times: number;
}

/**
 * The plan a careful maker would cut by hand: tallest pieces first, each kind in strips of its own, what is left of a strip
 * taking lower pieces where they fit most closely (best fit, decreasing height). Counts are handled whole: a
 * thousand equal pieces cost no more than one.
 * @param lieOf which way each kind is laid
 */
export function bestFit(problem: Problem, lieOf: readonly Lie[]): readonly Packed[] {
  const order = problem.kinds.map((_, kind) => kind).sort((a, b) => byHeight(lieOf[a] as Lie, lieOf[b] as Lie));
  const open: Open[] = [];
  for (const kind of order) {
    const lie = lieOf[kind] as Lie;
    let left = problem.kinds[kind]?.count ?? 0;
    while (left > 0) left = intoClosest(open, lie, left) ?? intoNew(open, lie, left, problem.width);
  }
  return open.map((strip) => packed(strip.laid, strip.times));
}

function byHeight(a: Lie, b: Lie): number {
  return b.height - a.height || b.width - a.width || a.kind - b.kind;
}

/** Puts as many as it can into the open strips with the least room to spare; null when no open strip has room. */
function intoClosest(open: Open[], lie: Lie, left: number): number | null {
  let closest = -1;
  open.forEach((strip, index) => {
    if (longer(lie.width, strip.room)) return;
    if (closest < 0 || strip.room < (open[closest]?.room ?? 0)) closest = index;
  });
  const strip = open[closest];
  if (strip === undefined) return null;
  const each = Math.min(left, fits(strip.room, lie.width));
  const times = Math.min(strip.times, Math.floor(left / each));
  open.splice(closest, 1, { ...added(strip, lie, each), times });
  if (times < strip.times) open.push({ ...strip, times: strip.times - times });
  return left - each * times;
}

function intoNew(open: Open[], lie: Lie, left: number, width: number): number {
  const each = Math.min(left, fits(width, lie.width));
  const times = Math.floor(left / each);
  open.push({ ...added({ laid: [], room: width, times }, lie, each), times });
  return left - each * times;
}

function fits(room: number, width: number): number {
  const many = Math.floor(room / width);
  return longer((many + 1) * width, room) ? many : many + 1;
}

function added(strip: Open, lie: Lie, count: number): Open {
  return { ...strip, laid: [...strip.laid, { lie, count }], room: strip.room - count * lie.width };
}
