import { createContext, type ReactNode, useContext } from 'react';
import { useStore } from 'zustand';
import type { Contract } from '../../shared/contract.ts';
import { INCH_RULER, type Ruler, rulerOn } from '../../shared/measure/ruler.ts';
import type { Pattern } from '../../shared/pattern/schema.ts';
import type { WorkedOut, WorkedSize } from '../../shared/workroom/workedOut.ts';
import type { Selection } from './selection.ts';
import type { Studio } from './studio.ts';
import type { StudioState } from './studioState.ts';

const StudioContext = createContext<Studio | null>(null);
const RulerContext = createContext<Ruler>(INCH_RULER);

/** Gives the window's studio to everything inside it. */
export function StudioProvider({ studio, children }: { readonly studio: Studio; readonly children: ReactNode }) {
  const step = useStore(studio.store, ({ history }) => history?.now.house.step);
  return (
    <StudioContext.Provider value={studio}>
      <RulerContext.Provider value={step === undefined ? INCH_RULER : rulerOn(step)}>{children}</RulerContext.Provider>
    </StudioContext.Provider>
  );
}

/** How the open pattern's house says and reads lengths: in inches, or in centimetres where its ruler has millimetres. */
export function useRuler(): Ruler {
  return useContext(RulerContext);
}

/** The window's studio: `act`, `undo`, `show`, `select`, `goTo`, `say` … */
export function useStudio(): Studio {
  const studio = useContext(StudioContext);
  if (studio === null) throw new Error('Nothing here can work outside a StudioProvider');
  return studio;
}

/** One thing out of the studio's state; what is shown follows it. */
export function useStudioState<T>(pick: (state: StudioState) => T): T {
  return useStore(useStudio().store, pick);
}

/** The open pattern. Views are shown only while one is open. */
export function usePattern(): Pattern {
  const pattern = useStudioState(({ history }) => history?.now);
  if (pattern === undefined) throw new Error('No pattern is open');
  return pattern;
}

/** What follows from the open pattern, or from the one a moment before; null until the first has been worked out. */
export function useWorked(): WorkedOut | null {
  return useStudioState(({ worked }) => worked);
}

/** True while what `useWorked` gives is a moment behind the pattern. */
export function useIsWorking(): boolean {
  return useStudioState(({ working }) => working);
}

/** The size looked at, worked out: the chosen one, or the first when it is gone; null when no size can be laid out. */
export function useCurrentSize(): WorkedSize | null {
  const chosen = useStudioState(({ size }) => size);
  const sizes = useWorked()?.sizes;
  return sizes?.find(({ size }) => size.id === chosen) ?? sizes?.[0] ?? null;
}

/** True when all sizes are looked at side by side. */
export function useCompare(): boolean {
  return useStudioState(({ compare }) => compare);
}

/** Does an edit: `act(edit, args)`; acts in a row with the same third argument are taken back as one. */
export function useAct(): Studio['act'] {
  return useStudio().act;
}

/** What is picked, and how to pick something else. */
export function useSelection(): readonly [Selection, (selection: Selection) => void] {
  return [useStudioState(({ selection }) => selection), useStudio().select];
}

/** The host's calls. */
export function useHost(): Contract {
  return useStudio().host;
}
