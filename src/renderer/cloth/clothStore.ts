import { createStore, useStore } from 'zustand';
import type { Proving } from './proving.ts';

/** What of the cloth is looked at. */
export type ClothPart = 'charts' | 'cutting' | 'bundle' | 'fabrics' | 'finishing' | 'kits';

/** What the cloth view remembers while the window is open. */
export interface ClothState {
  readonly part: ClothPart;
  /** Letters of the pieces that the pointer or the keyboard is on; null when it is on none. */
  readonly under: readonly string[] | null;
  /** How many kits are put together. */
  readonly kits: number;
  /** Numbers of the strips of a bundle that are set aside, to try whether the others are enough. */
  readonly aside: ReadonlySet<number>;
  /** How proofs stand, by size and fabric. */
  readonly proving: ReadonlyMap<string, Proving>;
}

export const clothStore = createStore<ClothState>(() => ({
  part: 'charts',
  under: null,
  kits: 12,
  aside: new Set(),
  proving: new Map(),
}));

/** One thing the cloth view remembers; what is shown follows it. */
export function useClothState<T>(pick: (state: ClothState) => T): T {
  return useStore(clothStore, pick);
}

/** Says which pieces the pointer or the keyboard is on; pieces that were already are not said again. */
export function setUnder(letters: readonly string[] | null): void {
  const { under } = clothStore.getState();
  if ((under ?? []).join(' ') === (letters ?? []).join(' ')) return;
  clothStore.setState({ under: letters === null || letters.length === 0 ? null : letters });
}
