import { createStore } from 'zustand/vanilla';
import type { Contract } from '../../shared/contract.ts';
import type { Edit } from '../../shared/pattern/edit.ts';
import type { Away } from './away/away.ts';
import { OpenDocument } from './document.ts';
import { acted, redone, undone } from './history.ts';
import { type Looking, lookingIn } from './looking.ts';
import { type Notes, notesIn } from './notes.ts';
import { type Shelving, shelvingOf } from './shelving.ts';
import { AT_FIRST, type StudioState, type StudioStore } from './studioState.ts';

/** Everything the window can do to what it shows; views and commands call these, never the store. */
export interface Studio extends Shelving, Looking, Notes {
  readonly host: Contract;
  readonly store: StudioStore;
  /** Works things out away from the window's thread; views ask by `useAway`. */
  readonly away: Away;
  /** Does an edit. Acts in a row with the same mark are taken back as one. */
  act<Args>(edit: Edit<Args>, args: Args, mark?: string): void;
  undo(): void;
  redo(): void;
}

export interface StudioNeeds {
  readonly host: Contract;
  readonly away: Away;
}

/** Makes the one studio of a window. */
export function createStudio({ host, away }: StudioNeeds): Studio {
  const store = createStore<StudioState>(() => AT_FIRST);
  const notes = notesIn(store);
  const needs = { host, store, notes, away };
  const document = new OpenDocument(needs);
  return {
    host,
    store,
    away,
    ...shelvingOf(document, needs),
    ...lookingIn(store),
    ...notes,
    act: (edit, args, mark) => document.change((history) => acted(history, edit, args, mark)),
    undo: () => document.change(undone),
    redo: () => document.change(redone),
  };
}
