import { focusPart } from './focusPart.ts';
import styles from './SkipLinks.module.css';

/** The first stops of the keyboard: straight to a part of the window. */
export function SkipLinks({ panel }: { readonly panel: boolean }) {
  const places = [
    ['view', 'To the cloth'],
    ...(panel ? [['panel', 'To what is selected']] : []),
    ['sizes', 'To the sizes'],
    ['fit', 'To the fit line'],
  ];
  return (
    <nav className={styles.skips} aria-label="Straight to">
      {places.map(([id, words]) => (
        <a key={id} href={`#${id}`} onClick={(event) => goTo(event, id)}>
          {words}
        </a>
      ))}
    </nav>
  );
}

function goTo(event: { preventDefault(): void }, id: string | undefined): void {
  event.preventDefault();
  focusPart(document.getElementById(id ?? ''));
}
