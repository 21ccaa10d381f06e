import { createStore, useStore } from 'zustand';
import type { Over } from './look.ts';

/** Whether a turn or another block is meant for the place in every size, or in the size looked at alone. */
type Scope = 'every' | 'one';

/** What the quilt view remembers while the window is open. */
export interface QuiltState {
  readonly scope: Scope;
  readonly over: ReadonlySet<Over>;
}

export const quiltStore = createStore<QuiltState>(() => ({ scope: 'every', over: new Set() }));

/** One thing the quilt view remembers; what is shown follows it. */
export function useQuiltState<T>(pick: (state: QuiltState) => T): T {
  return useStore(quiltStore, pick);
}
