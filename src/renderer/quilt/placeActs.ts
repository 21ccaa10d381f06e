import type { Turn } from '../../shared/drawing/turn.ts';
import { placeBlocks, returnToMotif, swapBlocks, turnBlocks } from '../../shared/pattern/edits/index.ts';
import type { Quilt } from '../../shared/quilt/quilt.ts';
import type { Cell } from '../parts/lattice/lattice.ts';
import { turnOfKey } from '../parts/turning/turnWords.ts';
import type { Studio } from '../state/studio.ts';
import { blockIn } from './blockIn.ts';
import { settingBlocks } from './quiltGround.ts';
import { quiltStore } from './quiltStore.ts';

/** What can be done to blocks of the quilt, in every size or in this one. */
export interface PlaceActs {
  readonly turn: (by: Turn) => void;
  readonly place: (block: string) => void;
  readonly back: () => void;
  /** Only two can be swapped; null for more or fewer. */
  readonly swap: (() => void) | null;
  /** These two, picked or not. */
  readonly swapThese: (a: Cell, b: Cell) => void;
  /** Picks every block of the letters picked; `lying`: only those that lie the same way. */
  readonly alike: (lying: boolean) => void;
  /** The same by key; true when the key does something. */
  readonly onKey: (key: string) => boolean;
}

/** The acts on these places. */
export function placeActs(studio: Studio, cells: readonly Cell[]): PlaceActs {
  const size = () => (quiltStore.getState().scope === 'one' ? studio.store.getState().size : null);
  const turn = (by: Turn) => studio.act(turnBlocks, { cells, by, size: size() });
  const back = () => studio.act(returnToMotif, { cells, size: size() });
  const [a, b] = cells;
  const pair = cells.length === 2 && a !== undefined && b !== undefined;
  const swapThese = (one: Cell, other: Cell) => studio.act(swapBlocks, { a: one, b: other, size: size() });
  const swap = pair ? () => swapThese(a, b) : null;
  const alike = (lying: boolean) => {
    const quilt = quiltOf(studio);
    if (quilt !== null) studio.select({ kind: 'places', places: alikeIn(quilt, cells, lying) });
  };
  const byKey: Readonly<Record<string, (() => void) | null>> = {
    Delete: back,
    Backspace: back,
    s: swap,
    l: () => alike(false),
    'shift+l': () => alike(true),
  };
  const onKey = (key: string): boolean => {
    if (cells.length === 0) return false;
    const by = turnOfKey(key);
    const act = by === null ? (byKey[key === 'L' ? 'shift+l' : key] ?? null) : () => turn(by);
    act?.();
    return act !== null;
  };
  return {
    turn,
    back,
    swap,
    swapThese,
    alike,
    onKey,
    place: (block) => studio.act(placeBlocks, { cells, block, size: size() }),
  };
}

function quiltOf({ store }: Studio): Quilt | null {
  const { worked, size } = store.getState();
  return (worked?.sizes.find((one) => one.size.id === size) ?? worked?.sizes[0])?.quilt ?? null;
}

/** Every block that is like one of these. */
function alikeIn(quilt: Quilt, cells: readonly Cell[], lying: boolean): readonly Cell[] {
  const like = cells.flatMap((cell) => blockIn(quilt, cell) ?? []);
  return settingBlocks(quilt)
    .filter((leaf) => like.some(({ block, turn }) => block === leaf.block && (!lying || sameTurn(turn, leaf.turn))))
    .map(({ column, row }) => ({ column, row }));
}

function sameTurn(a: Turn, b: Turn): boolean {
  return a.quarters === b.quarters && a.mirrored === b.mirrored;
}
