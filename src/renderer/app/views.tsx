import { type ComponentType, lazy } from 'react';
import type { ViewId } from '../state/viewId.ts';

/** One stage of the way through a pattern. */
export interface View {
  readonly id: ViewId;
  /** The word in the way through the pattern. */
  readonly word: string;
  /** What it is for, for those who listen and in the list of commands. */
  readonly says: string;
  readonly Component: ComponentType;
}

const LibraryView = lazy(() => import('../library/LibraryView.tsx'));
const BlockView = lazy(() => import('../block/BlockView.tsx'));
const QuiltView = lazy(() => import('../quilt/QuiltView.tsx'));
const ClothView = lazy(() => import('../cloth/ClothView.tsx'));
const SewingView = lazy(() => import('../sewing/SewingView.tsx'));
const PagesView = lazy(() => import('../pages/PagesView.tsx'));

/** Every view, in the order of the way. A new view is a folder with its component, and one line here. */
export const VIEWS: readonly View[] = [
  { id: 'library', word: 'Library', says: 'patterns and block recipes', Component: LibraryView },
  { id: 'block', word: 'Block', says: 'how each block is drawn, coloured and made', Component: BlockView },
  { id: 'quilt', word: 'Quilt', says: 'blocks, borders and sizes', Component: QuiltView },
  { id: 'cloth', word: 'Cloth', says: 'what is bought and how it is cut, in every size', Component: ClothView },
  { id: 'sewing', word: 'Sewing', says: 'the steps, and which way seams are pressed', Component: SewingView },
  { id: 'pages', word: 'Pages', says: 'the pattern as it is printed, its words and its PDF', Component: PagesView },
];

/** The view of this id, or the first. */
export function viewOf(id: ViewId): View {
  return VIEWS.find((view) => view.id === id) ?? (VIEWS[0] as View);
}
