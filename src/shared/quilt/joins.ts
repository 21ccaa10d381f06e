import type { Turn } from '../drawing/turn.ts';
import { undoTurn } from '../drawing/turn.ts';
import type { Setting } from '../pattern/schema.ts';
import { turnSide } from '../piecing/sub.ts';
import type { Side } from '../recipe/schema.ts';
import type { BlockLeaf, Quilt } from './quilt.ts';

/** Blocks of one letter that lie one way. */
export interface TurnedBlocks {
  readonly block: string;
  readonly turn: Turn;
  readonly count: number;
}

/** How many blocks of each letter lie which way, in the setting; a layout is checked by these counts. */
export function turnedBlocks({ blocks }: Quilt): readonly TurnedBlocks[] {
  const found = new Map<string, TurnedBlocks>();
  for (const { block, turn, border } of blocks) {
    if (border !== undefined) continue;
    const key = `${block} ${turn.mirrored ? 1 : 0} ${turn.quarters}`;
    found.set(key, { block, turn, count: (found.get(key)?.count ?? 0) + 1 });
  }
  return [...found].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, one]) => one);
}

/**
 * How many different joins of two blocks there are: which side of which block is sewn to which side of which other, however both
 * are turned. A practice piece of each tries all of them. None where sashing parts the blocks, nor between shifted strips.
 */
export function distinctJoins({ blocks, patches }: Quilt, { kind }: Setting): number {
  if (kind === 'strips' || patches.some(({ use }) => use === 'sashing')) return 0;
  const setting = blocks.filter(({ border }) => border === undefined);
  const at = new Map(setting.map((leaf) => [`${leaf.column} ${leaf.row}`, leaf]));
  const joins = new Set<string>();
  for (const leaf of setting) {
    for (const { column, row, side } of neighbours(leaf, kind)) {
      const other = at.get(`${column} ${row}`);
      if (other !== undefined) joins.add([sideOf(leaf, side), sideOf(other, OPPOSITE[side])].sort().join(' – '));
    }
  }
  return joins.size;
}

const OPPOSITE: Readonly<Record<Side, Side>> = { top: 'bottom', bottom: 'top', left: 'right', right: 'left' };

interface Neighbour {
  readonly column: number;
  readonly row: number;
  readonly side: Side;
}

/** The blocks to the right of a block and below it; on point, those beside it in its diagonal row and in the next. */
function neighbours({ column, row }: BlockLeaf, kind: Setting['kind']): readonly Neighbour[] {
  if (kind !== 'on-point')
    return [
      { column: column + 1, row, side: 'right' },
      { column, row: row + 1, side: 'bottom' },
    ];
  // A block that touches the edges has those between half a block to its sides; one between has it the other way about.
  const half = row % 2;
  return [
    { column: column + half, row: row - 1, side: 'right' },
    { column: column + half, row: row + 1, side: 'bottom' },
  ];
}

/** A side of a block as it lies, as the side of the block unturned. */
function sideOf({ block, turn }: BlockLeaf, side: Side): string {
  return `${block}${turn.mirrored ? 'r' : ''} ${turnSide(side, undoTurn(turn))}`;
}
