import { turnSize } from '../drawing/turn.ts';
import { accept, type Finding, type Maybe } from '../measure/finding.ts';
import { blockAt } from '../pattern/motif.ts';
import type { Pattern, Size } from '../pattern/schema.ts';
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
): Maybe<readonly (readonly BlockLeaf[])[]> {
  const at = blockAt(pattern);
  const findings = new Map<string, Finding>();
  const rows = Array.from({ length: size.down }, (_, row) =>
    Array.from({ length: size.across }, (__, column): BlockLeaf | null => {
      const token = at(size.id, column, row);
      const piecing = token === null ? undefined : pieced.get(token.name);
      if (token === null || piecing === undefined) return null;
      const wrong = shapeFinding(token, piecing, block, size);
      if (wrong !== null) findings.set(wrong.what, wrong);
      return { kind: 'block', block: token.name, turn: token.turn, column, row, box: NOWHERE };
    }),
  );
  if (findings.size > 0) return { ok: false, findings: [...findings.values()] };
  return rows.some((row) => row.includes(null)) ? { ok: false, findings: [] } : accept(rows as BlockLeaf[][]);
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
