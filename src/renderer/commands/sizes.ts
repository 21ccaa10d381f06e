import type { StudioState } from '../state/studioState.ts';
import type { Command } from './command.ts';

function neighbour(state: StudioState, by: 1 | -1): string | undefined {
  const sizes = state.history?.now.sizes ?? [];
  const at = sizes.findIndex(({ id }) => id === state.size);
  return sizes[(at + by + sizes.length) % sizes.length]?.id;
}

function step(id: string, label: string, key: string, by: 1 | -1): Command {
  return {
    id,
    group: 'Sizes',
    label: () => label,
    keys: [key],
    enabled: ({ history }) => (history?.now.sizes.length ?? 0) > 1,
    run: (studio) => {
      const size = neighbour(studio.store.getState(), by);
      if (size !== undefined) studio.chooseSize(size);
    },
  };
}

export const nextSize = step('next-size', 'Next size', ']', 1);
export const previousSize = step('previous-size', 'Size before', '[', -1);

export const compareSizes: Command = {
  id: 'compare-sizes',
  group: 'Sizes',
  label: ({ compare }) => (compare ? 'Look at one size' : 'Look at all sizes side by side'),
  keys: ['a'],
  enabled: ({ history }) => (history?.now.sizes.length ?? 0) > 1,
  run: (studio) => studio.compareSizes(!studio.store.getState().compare),
};
