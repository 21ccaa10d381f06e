import type { Command } from './command.ts';

export const keepAgain: Command = {
  id: 'keep-again',
  group: 'Pattern',
  label: () => 'Try again to keep the pattern',
  keys: ['mod+s'],
  enabled: ({ kept }) => kept.state === 'refused',
  run: (studio) => studio.keepAgain(),
};
