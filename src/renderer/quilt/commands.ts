import type { Command } from '../commands/command.ts';
import type { Cell } from '../parts/lattice/lattice.ts';
import { WHOLE_PATTERN } from '../state/selection.ts';
import type { Studio } from '../state/studio.ts';
import type { StudioState } from '../state/studioState.ts';
import { OVERS, type Over } from './look.ts';
import { placeActs } from './placeActs.ts';
import { quiltStore } from './quiltStore.ts';
import { lookAtWhole, ZOOM_STEP, zoomBy } from './SightStrip.tsx';

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

/** Takes a brush in hand, with the pattern's first fabric on it, or puts it down. */
export function toggleBrush(studio: Studio): void {
  const { brush } = quiltStore.getState();
  const first = studio.store.getState().history?.now.fabrics[0]?.id;
  if (brush !== null) quiltStore.setState({ brush: null });
  else if (first !== undefined) {
    if (picked(studio.store.getState()).length > 0) studio.select(WHOLE_PATTERN);
    quiltStore.setState({ brush: { kind: 'fabric', fabric: first } });
  }
}

const paintCommand: Command = {
  id: 'paint',
  group: 'Here',
  label: () => (quiltStore.getState().brush === null ? 'Paint blocks and fabrics' : 'Put the brush down'),
  keys: ['p'],
  enabled: ({ history, compare }) => history !== null && !compare,
  run: toggleBrush,
};

const findSize: Command = {
  id: 'find-size',
  group: 'Sizes',
  label: () => 'Find a size for a bed or a measure',
  keys: ['f'],
  enabled: ({ history }) => history !== null,
  run: () => quiltStore.setState({ finder: true }),
};

function looking(id: string, label: string, keys: readonly string[], run: () => void): Command {
  return { id, group: 'Here', label: () => label, keys, enabled: ({ compare }) => !compare, run };
}

const sights: readonly Command[] = [
  looking('zoom-in', 'Look closer', ['+', '='], () => zoomBy(ZOOM_STEP)),
  looking('zoom-out', 'Look from further away', ['-'], () => zoomBy(1 / ZOOM_STEP)),
  looking('zoom-whole', 'Look at the whole quilt', ['0'], lookAtWhole),
  looking('pull-apart', 'Pull the rows apart, or push them together', ['o'], () =>
    quiltStore.setState(({ apart }) => ({ apart: apart === 0 ? 0.6 : 0 })),
  ),
];

const putDown: Command = {
  id: 'put-brush-down',
  group: 'Here',
  label: () => 'Put the brush down',
  keys: ['Escape'],
  enabled: () => quiltStore.getState().brush !== null,
  run: () => quiltStore.setState({ brush: null }),
};

/** What can be done in the quilt view by name and by key. */
export const QUILT_COMMANDS: readonly Command[] = [
  onPlaces('turn-places', 'Turn the picked blocks a quarter', 'r', 'r'),
  onPlaces('turn-places-back', 'Turn the picked blocks back', 'shift+r', 'R'),
  onPlaces('mirror-places', 'Mirror the picked blocks', 'm', 'm'),
  onPlaces('swap-places', 'Swap the two picked blocks', 's', 's'),
  onPlaces('pick-alike', 'Pick all blocks like those picked', 'l', 'l'),
  onPlaces('pick-lying', 'Pick all blocks that lie like those picked', 'shift+l', 'L'),
  onPlaces('places-to-motif', 'Return the picked blocks to the motif', 'Delete', 'Delete'),
  paintCommand,
  findSize,
  ...sights,
  putDown,
  ...overs,
];
