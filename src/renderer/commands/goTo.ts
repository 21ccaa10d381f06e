import { STAGES } from '../state/viewId.ts';
import type { Command } from './command.ts';

/** One command for each view; its key is its place on the way. */
export const goToViews: readonly Command[] = STAGES.map(({ id, word, says }, index) => ({
  id: `go-${id}`,
  group: 'Go to',
  label: () => `${word}: ${says}`,
  keys: [String(index + 1)],
  enabled: ({ history }) => id === 'library' || history !== null,
  run: (studio) => studio.show(id),
}));
