import type { Finding } from '../../shared/measure/finding.ts';
import { destinationOf } from './destination.ts';
import type { Selection } from './selection.ts';
import type { StudioStore } from './studioState.ts';
import type { ViewId } from './viewId.ts';

export interface Looking {
  show(view: ViewId): void;
  chooseSize(size: string): void;
  compareSizes(on: boolean): void;
  select(selection: Selection): void;
  /** Goes where a finding is: its view, its size, its thing. */
  goTo(finding: Finding): void;
}

/** Where the designer looks: nothing here changes the pattern. */
export function lookingIn({ setState: set, getState: get }: StudioStore): Looking {
  return {
    show: (view) => set({ view }),
    chooseSize: (size) => set({ size, compare: false }),
    compareSizes: (compare) => set({ compare }),
    select: (selection) => set({ selection, pointed: null }),
    goTo(finding) {
      const { history } = get();
      if (history === null) return;
      const { view, size, selection } = destinationOf(finding, history.now);
      set({ view, selection, pointed: finding, ...(size === undefined ? {} : { size, compare: false }) });
    },
  };
}
