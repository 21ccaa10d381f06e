import { useEffect } from 'react';
import { Button } from '../parts/Button.tsx';
import { Mark } from '../parts/Mark.tsx';
import { useStudio, useStudioState } from '../state/hooks.tsx';
import type { Note } from '../state/studioState.ts';
import styles from './Notes.module.css';

/** How long a note stays, milliseconds; one with a way back stays longer, one that stops stays until it is put away. */
const STAYS = 5000;
const STAYS_WITH_ACT = 12000;

/** Short words about what was done, at the edge of the window. */
export function Notes() {
  const notes = useStudioState((state) => state.notes);
  return (
    <section className={styles.notes} aria-label="What was done" aria-live="polite">
      {notes.map((note) => (
        <OneNote key={note.id} note={note} />
      ))}
    </section>
  );
}

function OneNote({ note }: { readonly note: Note }) {
  const studio = useStudio();
  const { id, act, more = [], tone, words } = note;
  useEffect(() => {
    if (tone === 'stops') return;
    const timer = setTimeout(() => studio.unsay(id), act === undefined ? STAYS : STAYS_WITH_ACT);
    return () => clearTimeout(timer);
  }, [studio, id, act, tone]);
  return (
    <div className={styles.note} data-tone={tone}>
      {tone === 'stops' ? <Mark of="stops" /> : null}
      <div>
        <p>{words}</p>
        {more.length === 0 ? null : (
          <ul className={styles.more}>
            {more.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        )}
      </div>
      {act === undefined ? null : (
        <Button
          small
          onPress={() => {
            act.run();
            studio.unsay(id);
          }}
        >
          {act.label}
        </Button>
      )}
      <Button tone="bare" small onPress={() => studio.unsay(id)} aria-label="Put this note away">
        ×
      </Button>
    </div>
  );
}
