import type { Turn } from '../../shared/drawing/turn.ts';
import { placeBlocks, returnToMotif, turnBlocks } from '../../shared/pattern/edits/index.ts';
import type { Cell } from '../parts/lattice/lattice.ts';
import { turnOfKey } from '../parts/turning/turnWords.ts';
import { useAct, useCurrentSize } from '../state/hooks.tsx';
import { useScope } from './scope.tsx';

/** What can be done to blocks of the quilt, in every size or in this one. */
export interface PlaceActs {
  readonly turn: (by: Turn) => void;
  readonly place: (block: string) => void;
  readonly back: () => void;
  /** The same by key; true when the key does something. */
  readonly onKey: (key: string) => boolean;
}

export function usePlaceActs(cells: readonly Cell[]): PlaceActs {
  const act = useAct();
  const current = useCurrentSize();
  const { scope } = useScope();
  const size = scope === 'one' ? (current?.size.id ?? null) : null;
  const turn = (by: Turn) => act(turnBlocks, { cells, by, size });
  const back = () => act(returnToMotif, { cells, size });
  const onKey = (key: string): boolean => {
    if (cells.length === 0) return false;
    const by = turnOfKey(key);
    if (by !== null) turn(by);
    else if (key === 'Delete' || key === 'Backspace') back();
    else return false;
    return true;
  };
  return { turn, back, onKey, place: (block) => act(placeBlocks, { cells, block, size }) };
}
