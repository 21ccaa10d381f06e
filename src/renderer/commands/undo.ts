import { lowerFirst } from '../parts/words.ts';
import type { Command } from './command.ts';

export const undo: Command = {
  id: 'undo',
  group: 'Pattern',
  label: ({ history }) => {
    const last = history?.undo.at(-1);
    return last === undefined ? 'Undo' : `Undo: ${lowerFirst(last.name)}`;
  },
  keys: ['mod+z'],
  enabled: ({ history }) => (history?.undo.length ?? 0) > 0,
  run: (studio) => studio.undo(),
};
