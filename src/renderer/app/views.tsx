import { type ComponentType, type LazyExoticComponent, lazy } from 'react';
import { AWAY, Refused } from '../state/host.ts';
import type { ViewId } from '../state/viewId.ts';

type Load = () => Promise<{ readonly default: ComponentType }>;

/** The view of every stage. A new view is a folder, a stage, and one line here. */
const LOADS: Readonly<Record<ViewId, Load>> = {
  library: () => import('../library/LibraryView.tsx'),
  block: () => import('../block/BlockView.tsx'),
  quilt: () => import('../quilt/QuiltView.tsx'),
  cloth: () => import('../cloth/ClothView.tsx'),
  sewing: () => import('../sewing/SewingView.tsx'),
  pages: () => import('../pages/PagesView.tsx'),
};

const fetched = new Map<ViewId, LazyExoticComponent<ComponentType>>();

/** A view, fetched when it is first shown; one that could not be fetched is fetched again the next time. */
export function viewOf(id: ViewId): ComponentType {
  const known = fetched.get(id);
  if (known !== undefined) return known;
  const view = lazy(() =>
    LOADS[id]().catch(() => {
      fetched.delete(id);
      throw new Refused(AWAY);
    }),
  );
  fetched.set(id, view);
  return view;
}

/** The pattern comes first: so long the other views wait after the start, milliseconds. */
const AFTER = 3000;

/** Fetches every view while the window has nothing else to do, so that all are there should its host stop. */
export function fetchViews(): void {
  const [next, ...rest] = Object.values(LOADS);
  const fetchOn = (load: Load | undefined, then: readonly Load[]) => {
    if (load === undefined) return;
    const [after, ...others] = then;
    const goOn = () => whenIdle(() => fetchOn(after, others));
    load().then(goOn, goOn);
  };
  setTimeout(() => whenIdle(() => fetchOn(next, rest)), AFTER);
}

function whenIdle(run: () => void): void {
  if (typeof requestIdleCallback === 'undefined') setTimeout(run, 200);
  else requestIdleCallback(run);
}
