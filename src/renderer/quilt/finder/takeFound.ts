import { addFoundSize, setBorderWidthIn, setSizeBlock, setSizeBlocks } from '../../../shared/pattern/edits/index.ts';
import type { FoundSize } from '../../../shared/workroom/findSizes.ts';
import type { Studio } from '../../state/studio.ts';

/** Adds a size that was found, and looks at it. */
export function addFound(studio: Studio, { across, down, block, borders }: FoundSize, name: string): void {
  studio.act(addFoundSize, { name, across, down, block, borders });
  const made = studio.store.getState().history?.now.sizes.at(-1);
  if (made === undefined) return;
  studio.chooseSize(made.id);
  studio.select({ kind: 'size', size: made.id });
}

let turns = 0;

/** Makes a size what was found; it keeps its name, and it is one act. */
export function replaceByFound(studio: Studio, found: FoundSize, size: string): void {
  turns += 1;
  const mark = `found ${turns}`;
  const { across, down, block, borders } = found;
  for (const { id } of studio.store.getState().history?.now.borders ?? [])
    studio.act(setBorderWidthIn, { border: id, size, width: borders[id] ?? null }, mark);
  studio.act(setSizeBlock, { size, block }, mark);
  studio.act(setSizeBlocks, { size, across, down }, mark);
  studio.select({ kind: 'size', size });
}
