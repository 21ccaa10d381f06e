import type { Command } from '../commands/command.ts';
import { type ClothPart, clothStore } from './clothStore.ts';

/** The parts of the cloth view in the order of the work. */
export const PARTS: readonly { readonly id: ClothPart; readonly says: string }[] = [
  { id: 'charts', says: 'Charts' },
  { id: 'cutting', says: 'Cutting' },
  { id: 'fabrics', says: 'Fabrics' },
  { id: 'bundle', says: 'Bundle' },
  { id: 'finishing', says: 'Finishing' },
  { id: 'kits', says: 'Kits' },
];

/** Every part by name, for the list of commands. */
export const CLOTH_COMMANDS: readonly Command[] = PARTS.map(({ id, says }) => ({
  id: `cloth-${id}`,
  group: 'Here',
  label: () => `Cloth: ${says.toLowerCase()}`,
  enabled: ({ view }) => view === 'cloth',
  run: () => clothStore.setState({ part: id }),
}));
