import { afterTurn, type Turn, turnSize } from '../drawing/turn.ts';
import { accept, type Finding, type Maybe } from '../measure/finding.ts';
import { blockAt } from '../pattern/motif.ts';
import { placesOf } from '../pattern/places.ts';
import type { Pattern, Size } from '../pattern/schema.ts';
import { mirrorTurn } from '../piecing/likeness.ts';
import type { Piecing } from '../piecing/piecing.ts';
import type { Token } from '../recipe/token.ts';
import type { BlockLeaf, Measure } from './quilt.ts';

const NOWHERE = { x: 0, y: 0, width: 0, height: 0 };

/**
 * Which block stands in every place of a setting and how it lies, row by row. Where they stand in inches is the setting's.
 * @param block the finished size every block has to fill, turned as it is
 * @returns the blocks, or why one does not fill its place. A block that does not exist gives no reason: it is the
 * document's fault and told once there, not once a size.
 */
export function placeBlocks(
  pattern: Pattern,
  size: Size,
  pieced: ReadonlyMap<string, Piecing>,
  block: Measure,
): Maybe<readonly BlockLeaf[]> {
  const at = blockAt(pattern);
  const findings = new Map<string, Finding>();
  const asSewn = sewnTurns();
  const placed = placesOf(pattern.setting, size).map(({ column, row }): BlockLeaf | null => {
    const token = at(size.id, column, row);
    const piecing = token === null ? undefined : pieced.get(token.name);
    if (token === null || piecing === undefined) return null;
    const wrong = shapeFinding(token, piecing, block, size);
    if (wrong !== null) findings.set(wrong.what, wrong);
    return { kind: 'block', block: token.name, turn: asSewn(token, piecing), column, row, box: NOWHERE };
  });
  if (findings.size > 0) return { ok: false, findings: [...findings.values()] };
  return placed.includes(null) ? { ok: false, findings: [] } : accept(placed as BlockLeaf[]);
}

/** How each block lies once it is sewn: a mirrored block that is the same as a turned one is that turned one. */
function sewnTurns(): (token: Token, piecing: Piecing) => Turn {
  const known = new Map<string, Turn | null>();
  return ({ name, turn }, { root, units }) => {
    if (!turn.mirrored) return turn;
    const found = known.get(name);
    const alike = found === undefined ? mirrorTurn(root, units) : found;
    known.set(name, alike);
    return alike === null ? turn : afterTurn(alike, { quarters: turn.quarters, mirrored: false });
  };
}

/** Every block, turned as it is, must fill the same cell. */
function shapeFinding(token: Token, piecing: Piecing, block: Measure, size: Size): Finding | null {
  const { width, height } = turnSize(piecing.drawing.width, piecing.drawing.height, token.turn);
  if (Math.abs(width * block.height - height * block.width) < 1e-6 * width * block.height) return null;
  const what = `Block ${token.name}, turned this way, is ${width} by ${height} on its grid and does not fill its place.`;
  return {
    level: 'stops',
    what,
    where: { path: 'setting.motif', size: size.name, on: 'quilt' },
    mend: 'Turn it by a half, or use blocks of one shape.',
  };
}
