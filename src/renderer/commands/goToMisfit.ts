import { fitOf } from '../state/fit.ts';
import type { Command } from './command.ts';

export const goToMisfit: Command = {
  id: 'go-misfit',
  group: 'Go to',
  label: () => 'What does not fit',
  keys: ['f'],
  enabled: ({ worked }) => worked !== null && fitOf(worked).first !== undefined,
  run: (studio) => {
    const { worked } = studio.store.getState();
    const first = worked === null ? undefined : fitOf(worked).first;
    if (first !== undefined) studio.goTo(first);
  },
};
