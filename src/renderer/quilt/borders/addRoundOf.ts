import { addRound, copyBlock } from '../../../shared/pattern/edits/index.ts';
import { usedBlocks } from '../../../shared/pattern/usedBlocks.ts';
import type { Studio } from '../../state/studio.ts';

let rounds = 0;

/** Adds a round of blocks outside all others: of a block that stands nowhere yet, else of a copy of the last. One act. */
export function addRoundOf(studio: Studio): void {
  const pattern = studio.store.getState().history?.now;
  if (pattern === undefined) return;
  rounds += 1;
  const mark = `round ${rounds}`;
  const used = usedBlocks(pattern);
  const free = pattern.blocks.find(({ id }) => !used.has(id))?.id;
  if (free === undefined) studio.act(copyBlock, { block: pattern.blocks.at(-1)?.id ?? '' }, mark);
  const units = free ?? studio.store.getState().history?.now.blocks.at(-1)?.id;
  const fabric = pattern.fabrics[0]?.id;
  if (units === undefined || fabric === undefined) return;
  // A third of the block of the setting: whole units then close round one block.
  const width = (pattern.sizes[0]?.block ?? 9) / 3;
  studio.act(addRound, { name: `Round ${pattern.borders.length + 1}`, units, corner: null, fabric, width }, mark);
}
