import type { Turn } from '../../shared/drawing/turn.ts';
import { placeBlocks, returnToMotif, turnBlocks } from '../../shared/pattern/edits/index.ts';
import type { Cell } from '../parts/lattice/lattice.ts';
import { turnOfKey } from '../parts/turning/turnWords.ts';
import type { Studio } from '../state/studio.ts';
import { quiltStore } from './quiltStore.ts';

/** What can be done to blocks of the quilt, in every size or in this one. */
export interface PlaceActs {
  readonly turn: (by: Turn) => void;
  readonly place: (block: string) => void;
  readonly back: () => void;
  /** The same by key; true when the key does something. */
  readonly onKey: (key: string) => boolean;
}

/** The acts on these places. */
export function placeActs(studio: Studio, cells: readonly Cell[]): PlaceActs {
  const size = () => (quiltStore.getState().scope === 'one' ? studio.store.getState().size : null);
  const turn = (by: Turn) => studio.act(turnBlocks, { cells, by, size: size() });
  const back = () => studio.act(returnToMotif, { cells, size: size() });
  const onKey = (key: string): boolean => {
    if (cells.length === 0) return false;
    const by = turnOfKey(key);
    if (by !== null) turn(by);
    else if (key === 'Delete' || key === 'Backspace') back();
    else return false;
    return true;
  };
  return { turn, back, onKey, place: (block) => studio.act(placeBlocks, { cells, block, size: size() }) };
}
