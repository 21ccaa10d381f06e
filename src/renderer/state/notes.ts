import { refusalOf } from './host.ts';
import type { Note, StudioState, StudioStore } from './studioState.ts';

/** The most notes that are shown at once. */
const MOST = 3;

export interface Notes {
  /** Says something at the edge of the window. */
  say(words: string, more?: Partial<Pick<Note, 'tone' | 'act'>>): void;
  /** Says why something did not happen, whatever was thrown. */
  sayWhy(thrown: unknown): void;
  unsay(id: number): void;
  openDialog(dialog: StudioState['dialog']): void;
}

/** What the window says of itself. */
export function notesIn({ setState: set }: StudioStore): Notes {
  let last = 0;
  const say: Notes['say'] = (words, more = {}) => {
    last += 1;
    const note: Note = { id: last, words, tone: 'quiet', ...more };
    set(({ notes }) => ({ notes: [...notes, note].slice(-MOST) }));
  };
  return {
    say,
    sayWhy: (thrown) => say(refusalOf(thrown).words, { tone: 'stops' }),
    unsay: (id) => set(({ notes }) => ({ notes: notes.filter((note) => note.id !== id) })),
    openDialog: (dialog) => set({ dialog }),
  };
}
