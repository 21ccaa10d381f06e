import { useEffect } from 'react';
import { I18nProvider } from 'react-aria-components';
import { CommandProvider } from '../commands/CommandProvider.tsx';
import { OpenPrints } from '../parts/photograph/OpenPrints.tsx';
import { StudioProvider } from '../state/hooks.tsx';
import { bridge } from '../state/host.ts';
import type { Studio } from '../state/studio.ts';
import { Frame } from './Frame.tsx';
import { SidePanelProvider } from './SidePanel.tsx';

/** The whole window. */
export function App({ studio }: { readonly studio: Studio }) {
  useEffect(() => {
    bridge()?.opened((imported) => {
      if (imported.kind === 'pattern') void studio.open(imported.id).then((open) => open && studio.show('quilt'));
      else studio.show('library');
    });
  }, [studio]);
  useEffect(() => guardLeaving(studio), [studio]);
  return (
    <I18nProvider locale="en-US">
      <StudioProvider studio={studio}>
        <CommandProvider>
          <SidePanelProvider>
            <OpenPrints>
              <Frame />
            </OpenPrints>
          </SidePanelProvider>
        </CommandProvider>
      </StudioProvider>
    </I18nProvider>
  );
}

/** Asks before the window goes while something is not on disk. */
function guardLeaving(studio: Studio): () => void {
  const onLeave = (event: BeforeUnloadEvent) => {
    // What is typed in a field goes into the pattern when the field is left.
    if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
    if (studio.store.getState().kept.state !== 'kept') event.preventDefault();
  };
  window.addEventListener('beforeunload', onLeave);
  return () => window.removeEventListener('beforeunload', onLeave);
}
