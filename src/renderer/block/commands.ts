import { turnCells } from '../../shared/pattern/edits/index.ts';
import type { Command } from '../commands/command.ts';
import { turnOfKey } from '../parts/turning/turnWords.ts';

function onCells(id: string, label: string, keys: string, key: string): Command {
  return {
    id,
    group: 'Here',
    label: () => label,
    keys: [keys],
    enabled: ({ selection }) => selection.kind === 'cells' && selection.cells.length > 0,
    run: (studio) => {
      const { selection, history } = studio.store.getState();
      const by = turnOfKey(key);
      if (selection.kind !== 'cells' || by === null) return;
      const recipe = history?.now.blocks.find((block) => block.id === selection.block)?.recipe;
      if (recipe !== undefined) studio.act(turnCells, { recipe, cells: selection.cells, by });
    },
  };
}

/** What can be done in the block view by name and by key. */
export const BLOCK_COMMANDS: readonly Command[] = [
  onCells('turn-cells', 'Turn the picked units a quarter', 'r', 'r'),
  onCells('turn-cells-back', 'Turn the picked units back', 'shift+r', 'R'),
  onCells('mirror-cells', 'Mirror the picked units', 'm', 'm'),
];
