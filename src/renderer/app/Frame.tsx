import { useEffect, useRef } from 'react';
import { Button } from '../parts/Button.tsx';
import { EmptyState } from '../parts/EmptyState.tsx';
import { useStudio, useStudioState } from '../state/hooks.tsx';
import type { ViewId } from '../state/viewId.ts';
import { CommandList } from './CommandList.tsx';
import { FitLine } from './FitLine.tsx';
import styles from './Frame.module.css';
import { Header } from './Header.tsx';
import { Mishap } from './Mishap.tsx';
import { Notes } from './Notes.tsx';
import { QuiltInSight } from './QuiltInSight.tsx';
import { RulerDialog } from './RulerDialog.tsx';
import { Settings } from './Settings.tsx';
import { SidePanelPlace, useQuiltShown, useSidePanelFilled } from './SidePanel.tsx';
import { SizesRow } from './SizesRow.tsx';
import { SkipLinks } from './SkipLinks.tsx';
import { VIEWS } from './views.tsx';

/** The frame around every view: the way at the top, the cloth in the middle, sizes and the fit line at the foot. */
export function Frame() {
  const panel = useSidePanelFilled();
  const view = useStudioState((state) => state.view);
  const open = useStudioState(({ history }) => history !== null);
  const sizes = open && view !== 'library';
  const shown = useQuiltShown();
  const sight = sizes && view !== 'quilt' && !shown;
  useFocusInView(view);
  return (
    <div className={styles.frame} data-panel={panel || sight} data-view={view}>
      <SkipLinks panel={panel || sight} />
      <Header />
      <main id="view" className={styles.view} tabIndex={-1}>
        <Stage />
      </main>
      {sizes ? <SizesRow /> : null}
      <aside id="panel" className={styles.panel} aria-label="What is selected" hidden={!panel && !sight} tabIndex={-1}>
        {sight ? <QuiltInSight /> : null}
        <SidePanelPlace />
      </aside>
      <FitLine />
      <Notes />
      <CommandList />
      <Settings />
      <RulerDialog />
    </div>
  );
}

/** What had the focus may have gone with the view before; the keyboard then goes on in the new one. */
function useFocusInView(view: ViewId): void {
  const before = useRef(view);
  useEffect(() => {
    if (before.current === view) return;
    before.current = view;
    if (document.activeElement === document.body) document.getElementById('view')?.focus({ preventScroll: true });
  }, [view]);
}

function Stage() {
  const view = useStudioState((state) => state.view);
  const open = useStudioState(({ history }) => history !== null);
  const closed = useStudioState((state) => state.closed);
  const studio = useStudio();
  const View = VIEWS[view];
  if (closed !== null && view !== 'library') {
    return (
      <EmptyState
        title="The pattern could not be opened"
        act={<Button onPress={() => studio.show('library')}>To the library</Button>}
      >
        <p>{closed.words}</p>
      </EmptyState>
    );
  }
  if (!open && view !== 'library') return null;
  return (
    <Mishap key={view}>
      <View />
    </Mishap>
  );
}
