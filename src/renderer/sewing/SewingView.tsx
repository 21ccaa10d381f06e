import type { SectionId } from '../../shared/writing/book.ts';
import { EmptyState } from '../parts/EmptyState.tsx';
import type { ReadSections } from '../state/away/foldedBook.ts';
import { usePattern, useWorked } from '../state/hooks.tsx';
import { BookSection } from './BookSection.tsx';
import { PressingPanel } from './PressingPanel.tsx';
import styles from './sewing.module.css';
import { useSections } from './useSections.ts';

/** What of the written pattern is about sewing, in its order. */
const SEWN: readonly SectionId[] = ['units', 'blocks', 'quilt', 'borders', 'finishing'];

/** The steps as the pattern prints them, every number to be asked why, and the way the seams are pressed. */
export function SewingView() {
  const pattern = usePattern();
  const worked = useWorked();
  const { answer, trouble } = useSections(pattern, SEWN);
  return (
    <div className={styles.view}>
      {answer === null ? <Unwritten trouble={trouble} /> : <Steps read={answer} />}
      {worked === null ? null : <PressingPanel worked={worked} />}
    </div>
  );
}

/** Before the first steps are there: that they are being written, or why they cannot be. */
function Unwritten({ trouble }: { readonly trouble: string | null }) {
  return trouble === null ? (
    <p className={styles.unwritten} role="status">
      The steps are being written…
    </p>
  ) : (
    <p className={styles.unwritten} role="alert">
      {trouble}
    </p>
  );
}

function Steps({ read: { sections, inks } }: { readonly read: ReadSections }) {
  if (sections.length === 0) {
    return (
      <EmptyState title="Nothing to sew yet">
        <p>The steps stand here as soon as one size can be laid out.</p>
      </EmptyState>
    );
  }
  return (
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
          <BookSection key={section.id} section={section} inks={inks} />
        ))}
      </div>
    </>
  );
}

/** The address keeps the view, so a jump within it is made by hand. */
function goTo(event: React.MouseEvent, id: SectionId): void {
  event.preventDefault();
  const heading = document.getElementById(`steps-${id}`);
  heading?.scrollIntoView({ block: 'start' });
  heading?.focus({ preventScroll: true });
}
