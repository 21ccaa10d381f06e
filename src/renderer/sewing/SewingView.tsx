import { useMemo } from 'react';
import type { SectionId } from '../../shared/writing/book.ts';
import { writeBook } from '../../shared/writing/writeBook.ts';
import { EmptyState } from '../parts/EmptyState.tsx';
import { useWorked } from '../state/hooks.tsx';
import { BookSection } from './BookSection.tsx';
import { PressingPanel } from './PressingPanel.tsx';
import styles from './sewing.module.css';

/** What of the written pattern is about sewing, in its order. */
const SEWN: readonly SectionId[] = ['units', 'blocks', 'quilt', 'borders', 'finishing'];

/** The steps as the pattern prints them, every number to be asked why, and the way the seams are pressed. */
export default function SewingView() {
  const worked = useWorked();
  const book = useMemo(() => (worked === null ? null : writeBook(worked)), [worked]);
  if (worked === null || book === null) return null;
  const sections = book.sections.filter(({ id }) => SEWN.includes(id));
  return (
    <div className={styles.view}>
      {sections.length === 0 ? (
        <EmptyState title="Nothing to sew yet">
          <p>The steps stand here as soon as one size can be laid out.</p>
        </EmptyState>
      ) : (
        <>
          <nav className={styles.contents} aria-label="Steps">
            <ol>
              {sections.map(({ id, title }) => (
                <li key={id}>
                  <a href={`#steps-${id}`} onClick={(event) => goTo(event, id)}>
                    {title}
                  </a>
                </li>
              ))}
            </ol>
          </nav>
          <div className={styles.reading}>
            {sections.map((section) => (
              <BookSection key={section.id} section={section} inks={book.inks} />
            ))}
          </div>
        </>
      )}
      <PressingPanel worked={worked} />
    </div>
  );
}

/** The address keeps the view, so a jump within it is made by hand. */
function goTo(event: React.MouseEvent, id: SectionId): void {
  event.preventDefault();
  const heading = document.getElementById(`steps-${id}`);
  heading?.scrollIntoView({ block: 'start' });
  heading?.focus({ preventScroll: true });
}
