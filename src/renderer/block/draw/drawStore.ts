import { createStore, useStore } from 'zustand';
import type { DrawnPart } from '../../../shared/drawing/part.ts';
import type { Turn } from '../../../shared/drawing/turn.ts';
import type { Ways } from '../../../shared/drawing/ways.ts';
import type { Act } from './acts.ts';

/** What the drawing table remembers while the window is open, so that a way to another view and back loses nothing. */
export interface DrawState {
  readonly act: Act;
  readonly ways: Ways;
  /** How many parts each grid unit is divided into. */
  readonly finer: number;
  /** Whether the marks of an eight-point star are shown. */
  readonly stars: boolean;
  /** Id of the role that patches are filled with; that of another recipe stands for the first. */
  readonly brush: string;
  /** How far the block is pulled apart: 0 sewn together, 1 in single patches. */
  readonly apart: number;
  /** A copied part of a drawing, and how it lies while it is being set in. */
  readonly copied: DrawnPart | null;
  readonly setting: Turn | null;
}

export const drawStore = createStore<DrawState>(() => ({
  act: 'cut',
  ways: 'once',
  finer: 1,
  stars: false,
  brush: '',
  apart: 0.6,
  copied: null,
  setting: null,
}));

/** One thing the drawing table remembers; what is shown follows it. */
export function useDrawState<T>(pick: (state: DrawState) => T): T {
  return useStore(drawStore, pick);
}

export function chooseAct(act: Act): void {
  drawStore.setState({ act, setting: null });
}
