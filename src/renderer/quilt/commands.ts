import type { Command } from '../commands/command.ts';
import type { Cell } from '../parts/lattice/lattice.ts';
import type { StudioState } from '../state/studioState.ts';
import { OVERS, type Over } from './look.ts';
import { placeActs } from './placeActs.ts';
import { quiltStore } from './quiltStore.ts';

function picked({ selection }: StudioState): readonly Cell[] {
  return selection.kind === 'places' ? selection.places : [];
}

function onPlaces(id: string, label: string, keys: string, key: string): Command {
  return {
    id,
    group: 'Here',
    label: () => label,
    keys: [keys],
    enabled: (state) => picked(state).length > 0,
    run: (studio) => {
      placeActs(studio, picked(studio.store.getState())).onKey(key);
    },
  };
}

/** Shows something over the cloth, or takes it away again. */
function toggleOver(over: Over): void {
  const next = new Set(quiltStore.getState().over);
  if (!next.delete(over)) next.add(over);
  quiltStore.setState({ over: next });
}

const overs: readonly Command[] = OVERS.map(({ id, says }) => ({
  id: `show-${id}`,
  group: 'Here',
  label: () => `${quiltStore.getState().over.has(id) ? 'Hide' : 'Show'} on the quilt: ${says.toLowerCase()}`,
  enabled: () => true,
  run: () => toggleOver(id),
}));

/** What can be done in the quilt view by name and by key. */
export const QUILT_COMMANDS: readonly Command[] = [
  onPlaces('turn-places', 'Turn the picked blocks a quarter', 'r', 'r'),
  onPlaces('turn-places-back', 'Turn the picked blocks back', 'shift+r', 'R'),
  onPlaces('mirror-places', 'Mirror the picked blocks', 'm', 'm'),
  onPlaces('places-to-motif', 'Return the picked blocks to the motif', 'Delete', 'Delete'),
  ...overs,
];
