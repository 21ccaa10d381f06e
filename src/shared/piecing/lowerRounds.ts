import type { Box } from '../drawing/turn.ts';
import { UNTURNED } from '../drawing/turn.ts';
import type { RoundsBody, Side } from '../recipe/schema.ts';
import { leafSub, lowerCell } from './lowerCell.ts';
import { amountOf, complain, type Lowering, roleOf } from './lowering.ts';
import type { Log } from './piecing.ts';
import { type LooseLeaf, placeSub, renumber, type Sub, turnSub } from './sub.ts';

/** A core with rounds of logs: each log is as long as the side it is sewn to at that moment. */
export function lowerRounds(on: Lowering, body: RoundsBody): Sub | null {
  const strip = amountOf(on, body.strip, 'body.strip');
  const rounds = amountOf(on, body.rounds, 'body.rounds');
  const width = amountOf(on, body.coreWidth, 'body.coreWidth');
  const height = amountOf(on, body.coreHeight, 'body.coreHeight');
  const roles = body.logs.map((role, i) => roleOf(on, role, `body.logs[${i}]`));
  if (new Set(body.order).size !== 4)
    complain(on, 'Each side must be named once in the order of the logs.', 'body.order');
  if (rounds !== null && !(Number.isInteger(rounds) && rounds <= 40)) {
    complain(on, `${rounds} is not a number of rounds; give a whole number up to 40.`, 'body.rounds');
  }
  if (strip === null || rounds === null || width === null || height === null || roles.includes(null)) return null;
  const core = lowerCell(on, body.core, width, height, 'body.core');
  if (core === null || on.findings.length > 0) return null;
  return grow(core, body.order, roles as string[], strip, rounds);
}

function grow(core: Sub, order: readonly Side[], roles: readonly string[], strip: number, rounds: number): Sub {
  const margin = rounds * strip;
  const inner = placeSub(core, 1, margin, margin);
  const polygons = [...inner.polygons];
  const logs: Log<LooseLeaf>[] = [];
  let box: Box = { x: margin, y: margin, width: core.width, height: core.height };
  for (let i = 0; i < 4 * rounds; i += 1) {
    const side = order[i % 4] as Side;
    const log = logFor(side, box, strip, roles[i % 4] as string);
    logs.push({ side, part: renumber(log.root, polygons.length) });
    polygons.push(...log.polygons);
    box = widened(box, side, strip);
  }
  return { width: box.width, height: box.height, polygons, root: { kind: 'rounds', core: inner.root, logs, box } };
}

function logFor(side: Side, box: Box, strip: number, role: string): Sub {
  const lengthwise = side === 'top' || side === 'bottom';
  const length = lengthwise ? box.width : box.height;
  const sub = leafSub({ kind: 'log', width: length, height: strip, role });
  const lying = lengthwise ? sub : turnSub(sub, { ...UNTURNED, quarters: 1 });
  const x = side === 'left' ? box.x - strip : side === 'right' ? box.x + box.width : box.x;
  const y = side === 'top' ? box.y - strip : side === 'bottom' ? box.y + box.height : box.y;
  return placeSub(lying, 1, x, y);
}

/** The box with a strip added on one side. */
function widened(box: Box, side: Side, strip: number): Box {
  if (side === 'left') return { ...box, x: box.x - strip, width: box.width + strip };
  if (side === 'right') return { ...box, width: box.width + strip };
  if (side === 'top') return { ...box, y: box.y - strip, height: box.height + strip };
  return { ...box, height: box.height + strip };
}
