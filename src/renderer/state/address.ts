import type { Studio } from './studio.ts';
import { VIEW_IDS, type ViewId } from './viewId.ts';

function viewIn(hash: string): ViewId | undefined {
  return VIEW_IDS.find((id) => hash === `#${id}`);
}

/** Keeps the view in the window's address, so that a reload stays there and the way back leads to the view before. */
export function followAddress({ store, show }: Studio, window: Window): () => void {
  const asked = viewIn(window.location.hash);
  if (asked !== undefined) show(asked);
  const onBack = () => {
    const view = viewIn(window.location.hash);
    if (view !== undefined) show(view);
  };
  const leave = store.subscribe(({ view, history }) => {
    const title = history?.now.title;
    const stage = view.slice(0, 1).toUpperCase() + view.slice(1);
    window.document.title = title === undefined ? 'Piecewright' : `${title}: ${stage} · Piecewright`;
    const known = viewIn(window.location.hash);
    if (known === undefined) window.history.replaceState(null, '', `#${view}`);
    else if (known !== view) window.history.pushState(null, '', `#${view}`);
  });
  window.addEventListener('popstate', onBack);
  return () => {
    leave();
    window.removeEventListener('popstate', onBack);
  };
}
