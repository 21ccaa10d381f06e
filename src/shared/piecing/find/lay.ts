import type { Box } from '../../drawing/turn.ts';
import type { Log, Part } from '../piecing.ts';
import type { LooseLeaf } from '../sub.ts';
import { mapFour } from '../tree.ts';
import { boxOf, regionOf } from './field.ts';
import type { Region } from './fieldPatch.ts';
import type { BoxOnSide, Plan } from './plan.ts';
import type { Search } from './search.ts';

/**
 * What the search decided, laid out as a tree over the drawing.
 * @param region a rectangle that no patch sticks out of
 * @param plan one of its plans
 */
export function layOut(search: Search, region: Region, plan: Plan | null): Part<LooseLeaf> {
  if (plan === null) throw new RangeError('A rectangle of the drawing has no plan');
  const decision = plan.decide();
  const box = boxOf(search.field, region);
  const place = (part: Box): Region => regionOf(search.field, { ...part, x: part.x + box.x, y: part.y + box.y });
  const best = (part: Box) => layOut(search, place(part), search.best(place(part)));
  switch (decision.kind) {
    case 'unit':
      return search.unit(region);
    case 'row': {
      const within = decision.free === true ? undefined : decision.along;
      const parts = decision.parts.map((part) => layOut(search, place(part), search.best(place(part), within)));
      return { kind: 'row', along: decision.along, parts, box };
    }
    case 'ring': {
      const log = (arm: BoxOnSide): Log<LooseLeaf> => ({ side: arm.side, part: best(arm.box) });
      return { kind: 'ring', core: best(decision.core), logs: mapFour(decision.logs, log), box };
    }
    case 'rounds': {
      const rest = place(decision.rest);
      const inner = layOut(search, rest, decision.isCore ? search.core(rest) : search.plans(rest).rounds);
      const log: Log<LooseLeaf> = { side: decision.log.side, part: asLog(search.unit(place(decision.log.box))) };
      if (inner.kind === 'rounds') return { ...inner, logs: [...inner.logs, log], box };
      return { kind: 'rounds', core: inner, logs: [log], box };
    }
  }
}

/** A plain strip of rounds is called a log. */
function asLog(leaf: LooseLeaf): LooseLeaf {
  if (leaf.shape.kind !== 'plain') throw new RangeError('A log is a single patch');
  return { ...leaf, shape: { ...leaf.shape, kind: 'log' } };
}
