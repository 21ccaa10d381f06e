import type { Command } from './command.ts';

export const showCommands: Command = {
  id: 'show-commands',
  group: 'Studio',
  label: () => 'Everything that can be done, and its keys',
  keys: ['?', 'mod+k'],
  enabled: () => true,
  run: (studio) => studio.openDialog('commands'),
};

export const showSettings: Command = {
  id: 'show-settings',
  group: 'Studio',
  label: () => 'Settings: light or dark, keys',
  keys: ['mod+,'],
  enabled: () => true,
  run: (studio) => studio.openDialog('settings'),
};
