import { type ComponentType, lazy } from 'react';
import type { ViewId } from '../state/viewId.ts';

/** The view of every stage, fetched when it is first shown. A new view is a folder, a stage, and one line here. */
export const VIEWS: Readonly<Record<ViewId, ComponentType>> = {
  library: lazy(() => import('../library/LibraryView.tsx')),
  block: lazy(() => import('../block/BlockView.tsx')),
  quilt: lazy(() => import('../quilt/QuiltView.tsx')),
  cloth: lazy(() => import('../cloth/ClothView.tsx')),
  sewing: lazy(() => import('../sewing/SewingView.tsx')),
  pages: lazy(() => import('../pages/PagesView.tsx')),
};
