import type { ComponentType } from 'react';
import { BlockView } from '../block/BlockView.tsx';
import { ClothView } from '../cloth/ClothView.tsx';
import { LibraryView } from '../library/LibraryView.tsx';
import { PagesView } from '../pages/PagesView.tsx';
import { QuiltView } from '../quilt/QuiltView.tsx';
import { SewingView } from '../sewing/SewingView.tsx';
import type { ViewId } from '../state/viewId.ts';

/**
 * The view of every stage. A new view is a folder, a stage, and one line here. All are in the window from the start: one
 * file from a host on the same machine is here sooner than forty, and every view stays should its host stop.
 */
export const VIEWS: Readonly<Record<ViewId, ComponentType>> = {
  library: LibraryView,
  block: BlockView,
  quilt: QuiltView,
  cloth: ClothView,
  sewing: SewingView,
  pages: PagesView,
};
