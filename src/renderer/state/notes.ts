import type { Finding } from '../../shared/measure/finding.ts';
import { isAway, refusalOf } from './host.ts';
import type { Note, StudioState, StudioStore } from './studioState.ts';

/** The most notes that are shown at once. */
const MOST = 3;

export interface Notes {
  /** Says something at the edge of the window. */
  say(words: string, more?: Partial<Pick<Note, 'tone' | 'act' | 'more'>>): void;
  /** Says why something did not happen, whatever was thrown. */
  sayWhy(thrown: unknown): void;
  unsay(id: number): void;
  /** The host answers again: that it did not is no longer so. */
  hostIsBack(): void;
  openDialog(dialog: StudioState['dialog']): void;
}

/** What the window says of itself. */
export function notesIn({ setState: set }: StudioStore): Notes {
  let last = 0;
  const say: Notes['say'] = (words, more = {}) => {
    last += 1;
    const note: Note = { id: last, words, tone: 'quiet', ...more };
    // Said twice, it is said once, last.
    set(({ notes }) => ({ notes: [...notes.filter((one) => !isSaidAgain(one, note)), note].slice(-MOST) }));
  };
  return {
    say,
    sayWhy: (thrown) => {
      const { words, findings = [] } = refusalOf(thrown);
      say(words, { tone: 'stops', more: others(findings) });
    },
    hostIsBack: () => {
      const isOver = ({ words }: Note) => isAway(words);
      set(({ notes }) => (notes.some(isOver) ? { notes: notes.filter((note) => !isOver(note)) } : {}));
    },
    unsay: (id) => set(({ notes }) => ({ notes: notes.filter((note) => note.id !== id) })),
    openDialog: (dialog) => set({ dialog }),
  };
}

function isSaidAgain(before: Note, { words, tone }: Note): boolean {
  return tone === 'stops' && before.tone === tone && before.words === words;
}

/** How many of the other findings are told in full. */
const TOLD = 3;

/** The words of a refusal tell the first of its findings; these are the others, the last line for those left out. */
function others(findings: readonly Finding[]): readonly string[] {
  const rest = findings.slice(1);
  const left = rest.length - TOLD;
  const told = rest.slice(0, TOLD).map(({ what }) => what);
  return left > 0 ? [...told, left === 1 ? 'One more thing is wrong.' : `${left} more things are wrong.`] : told;
}
