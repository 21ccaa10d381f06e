import { type Units, unitsOn } from '../../shared/measure/metric.ts';
import type { StudioState } from '../state/studioState.ts';
import type { Command } from './command.ts';

/** The units the open pattern's house does not measure in. */
export function otherUnits(step: number): Units {
  return unitsOn(step) === 'inches' ? 'centimetres' : 'inches';
}

function other({ history }: StudioState): Units {
  return otherUnits(history?.now.house.step ?? 1 / 8);
}

export const otherRuler: Command = {
  id: 'other-ruler',
  group: 'Pattern',
  label: (state) => `Measure this pattern in ${other(state)}`,
  enabled: ({ history }) => history !== null,
  run: (studio) => studio.openDialog('ruler'),
};
