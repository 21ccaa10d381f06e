import { ALL_WAYS } from '../../../shared/drawing/ways.ts';
import type { Command } from '../../commands/command.ts';
import { ACTS } from './acts.ts';
import { chooseAct, drawStore } from './drawStore.ts';
import { WAYS_WORDS } from './waysWords.ts';

const acts = ACTS.map(
  ({ id, word, key, how }): Command => ({
    id: `draw-${id}`,
    group: 'Here',
    label: () => `${word}: ${how}`,
    keys: [key],
    enabled: () => true,
    run: () => chooseAct(id),
  }),
);

const repeat: Command = {
  id: 'draw-repeat',
  group: 'Here',
  label: () => `Repeat every act another way; now: ${WAYS_WORDS[drawStore.getState().ways]}`,
  keys: ['w'],
  enabled: () => true,
  run: () =>
    drawStore.setState(({ ways }) => ({ ways: ALL_WAYS[(ALL_WAYS.indexOf(ways) + 1) % ALL_WAYS.length] ?? 'once' })),
};

/** What can be done at the drawing table by name and by key. */
export const DRAW_COMMANDS: readonly Command[] = [...acts, repeat];
