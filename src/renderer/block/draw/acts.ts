/** What the hand does on the drawing. */
export type Act = 'cut' | 'arc' | 'join' | 'move' | 'fill' | 'flood' | 'select';

export interface ActWords {
  readonly id: Act;
  readonly word: string;
  /** One bare letter of the word. */
  readonly key: string;
  /** What to do with the pointer, for the line under the drawing before it is begun. */
  readonly how: string;
}

/** Every act, in the order of the list. Their keys leave alone those that mean something in every view. */
export const ACTS: readonly ActWords[] = [
  { id: 'cut', word: 'Cut', key: 'c', how: 'From an edge to an edge; a place inside a patch makes a bend.' },
  { id: 'arc', word: 'Arc', key: 'r', how: 'Plant the compass, open it to an edge, swing it to another.' },
  { id: 'join', word: 'Join', key: 'j', how: 'A patch, then the neighbour it is to be one with.' },
  { id: 'move', word: 'Move', key: 'm', how: 'A corner, then where it is to be.' },
  { id: 'fill', word: 'Fill', key: 'i', how: 'Patches take the role that is chosen below.' },
  { id: 'flood', word: 'Flood', key: 'l', how: 'A patch and all of its role that touch it.' },
  { id: 'select', word: 'Select', key: 's', how: 'Patches, or a box about them; near a line, the seam.' },
];

/** Whether an act is about places on the grid; the others are about patches. */
export function isOfPlaces(act: Act): boolean {
  return act === 'cut' || act === 'arc' || act === 'move';
}
