import type { StoreApi } from 'zustand/vanilla';
import type { About, Refusal } from '../../shared/contract.ts';
import type { Finding } from '../../shared/measure/finding.ts';
import type { Step } from '../../shared/measure/steps.ts';
import type { WorkedOut } from '../../shared/workroom/workedOut.ts';
import type { History } from './history.ts';
import type { Kept } from './keeper.ts';
import { type Selection, WHOLE_PATTERN } from './selection.ts';
import type { ViewId } from './viewId.ts';

/** A short word at the edge of the window about something that was done, perhaps with a way back. */
export interface Note {
  readonly id: number;
  readonly words: string;
  /** What else there is to say, a line each. */
  readonly more?: readonly string[];
  readonly tone: 'quiet' | 'stops';
  readonly act?: { readonly label: string; readonly run: () => void };
}

/** Everything the window shows, and nothing that can be derived but `worked`, which is long in the making. */
export interface StudioState {
  readonly about: About | null;
  /** The open pattern and what can be taken back; null before the first pattern is open. */
  readonly history: History | null;
  readonly kept: Kept;
  readonly view: ViewId;
  /** Id of the size looked at. */
  readonly size: string | null;
  /** True when all sizes are looked at side by side. */
  readonly compare: boolean;
  readonly selection: Selection;
  /** The finding the designer has just gone to, so that its place can be shown. */
  readonly pointed: Finding | null;
  /** What follows from the open pattern, or from the one a moment before while it is being worked out. */
  readonly worked: WorkedOut | null;
  readonly working: boolean;
  /** How far the sums for the open pattern are, once they take long enough to be worth a word. */
  readonly step: Step | null;
  readonly notes: readonly Note[];
  /** Why nothing could be opened, when nothing could. */
  readonly closed: Refusal | null;
  /** Which dialog of the frame is open. */
  readonly dialog: 'commands' | 'settings' | 'ruler' | null;
}

export type StudioStore = StoreApi<StudioState>;

/** The window before anything is open. */
export const AT_FIRST: StudioState = {
  about: null,
  history: null,
  kept: { state: 'kept' },
  view: 'quilt',
  size: null,
  compare: false,
  selection: WHOLE_PATTERN,
  pointed: null,
  worked: null,
  working: false,
  step: null,
  notes: [],
  closed: null,
  dialog: null,
};
