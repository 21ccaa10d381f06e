import { createStore, useStore } from 'zustand';
import type { Setting } from '../../shared/pattern/schema.ts';
import { type Sight, WHOLE } from '../parts/stage/useZoom.ts';
import type { Over } from './look.ts';

/** Whether a turn or another block is meant for the place in every size, or in the size looked at alone. */
type Scope = 'every' | 'one';

/** What is painted with. */
export type Brush =
  | { readonly kind: 'block'; readonly block: string }
  | { readonly kind: 'fabric'; readonly fabric: string };

/** What the quilt view remembers while the window is open. */
export interface QuiltState {
  readonly scope: Scope;
  readonly over: ReadonlySet<Over>;
  /** Null: the hand is empty, and picks. */
  readonly brush: Brush | null;
  /** A fabric is painted into the blocks touched alone, and not into all of their letter. */
  readonly alone: boolean;
  /** The last setting of each kind, by the pattern's id and the kind, so that going there and back keeps what she had. */
  readonly settings: ReadonlyMap<string, Setting>;
  /** Whether sizes are being looked for. */
  readonly finder: boolean;
  /** How far the rows are pulled apart, 0 to 1. */
  readonly apart: number;
  /** How closely the quilt is looked at. */
  readonly sight: Sight;
  /** The mattress that sizes side by side are laid on: its id, the one that suits each, or none. */
  readonly bed: string | null;
}

export const quiltStore = createStore<QuiltState>(() => ({
  scope: 'every',
  over: new Set(),
  brush: null,
  alone: false,
  settings: new Map(),
  finder: false,
  apart: 0,
  sight: WHOLE,
  bed: null,
}));

/** Remembers a setting that is about to be left for one of another kind. */
export function rememberSetting(pattern: string, setting: Setting): void {
  quiltStore.setState(({ settings }) => ({
    settings: new Map([...settings, [`${pattern} ${setting.kind}`, setting]]),
  }));
}

/** The last setting of a kind that the pattern had in this window. */
export function rememberedSetting(pattern: string, kind: Setting['kind']): Setting | undefined {
  return quiltStore.getState().settings.get(`${pattern} ${kind}`);
}

/** One thing the quilt view remembers; what is shown follows it. */
export function useQuiltState<T>(pick: (state: QuiltState) => T): T {
  return useStore(quiltStore, pick);
}
