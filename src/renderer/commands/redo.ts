import { lowerFirst } from '../parts/words.ts';
import type { Command } from './command.ts';

export const redo: Command = {
  id: 'redo',
  group: 'Pattern',
  label: ({ history }) => {
    const last = history?.redo.at(-1);
    return last === undefined ? 'Redo' : `Redo: ${lowerFirst(last.name)}`;
  },
  keys: ['mod+shift+z', 'mod+y'],
  enabled: ({ history }) => (history?.redo.length ?? 0) > 0,
  run: (studio) => studio.redo(),
};
