import { createStore, useStore } from 'zustand';
import type { Paper, Refusal } from '../../shared/contract.ts';
import type { Making } from './makePages.ts';

/** How large a page is shown: whole, as wide as its place, or so many times its printed size. */
export type Zoom = 'whole' | 'width' | '1' | '2';

/** What the pages view remembers while the window is open, so that a way to another view and back loses nothing. */
export interface PagesState {
  readonly paper: Paper;
  /** Black and white: hatches instead of colours. */
  readonly plainInk: boolean;
  readonly layout: 'one' | 'all';
  readonly zoom: Zoom;
  /** The page looked at, from 1. */
  readonly page: number;
  /** Pages there are; 0 before the first are made. */
  readonly pages: number;
  readonly exporting: Exporting;
}

/** How an export stands. */
export type Exporting =
  | { readonly state: 'idle' }
  | { readonly state: 'making'; readonly making: Making; readonly stop: () => void }
  | { readonly state: 'refused'; readonly refusal: Refusal }
  | { readonly state: 'done'; readonly name: string };

export const pagesStore = createStore<PagesState>(() => ({
  paper: 'letter',
  plainInk: false,
  layout: 'one',
  zoom: 'whole',
  page: 1,
  pages: 0,
  exporting: { state: 'idle' },
}));

/** One thing the pages view remembers; what is shown follows it. */
export function usePagesState<T>(pick: (state: PagesState) => T): T {
  return useStore(pagesStore, pick);
}

/** Turns to a page, the nearest there is. */
export function turnTo(page: number): void {
  pagesStore.setState(({ pages }) => ({ page: Math.max(1, Math.min(pages === 0 ? 1 : pages, page)), layout: 'one' }));
}

/** Tells how many pages there are now; the page looked at stays, or is the last when it has gone. */
export function pagesMade(pages: number): void {
  pagesStore.setState(({ page }) => ({ pages, page: Math.max(1, Math.min(pages, page)) }));
}

/** Forgets how the last export ended; one under way goes on. */
export function settled(): void {
  const { exporting } = pagesStore.getState();
  if (exporting.state === 'refused' || exporting.state === 'done')
    pagesStore.setState({ exporting: { state: 'idle' } });
}

/** The papers there are, as they are chosen. */
export const PAPERS: readonly { readonly id: Paper; readonly says: string }[] = [
  { id: 'letter', says: 'US Letter' },
  { id: 'a4', says: 'A4' },
];

/** Printed size of a page, inches. A4: ISO 216, 210 × 297 mm; letter: 8½ × 11 in. */
export const PAPER_INCHES: Readonly<Record<Paper, { readonly width: number; readonly height: number }>> = {
  letter: { width: 8.5, height: 11 },
  a4: { width: 210 / 25.4, height: 297 / 25.4 },
};
