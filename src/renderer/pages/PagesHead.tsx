import { Button } from '../parts/Button.tsx';
import { Choice } from '../parts/Choice.tsx';
import { Mark } from '../parts/Mark.tsx';
import { Progress } from '../parts/Progress.tsx';
import styles from './pages.module.css';
import { pagesStore, turnTo, usePagesState, type Zoom } from './pagesStore.ts';
import type { Pages } from './usePages.ts';

const ZOOMS: readonly { readonly id: Zoom; readonly says: string }[] = [
  { id: 'whole', says: 'Whole page' },
  { id: 'width', says: 'Page width' },
  { id: '1', says: 'Printed size' },
  { id: '2', says: 'Twice' },
];

/** Which page, how large, and whether newer pages are on their way. */
export function PagesHead({ pages, draft }: { readonly pages: Pages; readonly draft: boolean }) {
  const { page, pages: count, layout, zoom } = usePagesState((state) => state);
  const all = layout === 'all';
  if (pages.pdf === null) {
    return (
      <header className={styles.head}>
        <State pages={pages} draft={draft} />
      </header>
    );
  }
  return (
    <header className={styles.head}>
      <div className={styles.turning}>
        <Button small isDisabled={page <= 1 || all} onPress={() => turnTo(page - 1)}>
          Page before
        </Button>
        <p className={styles.where} aria-live="polite">
          {whereWords(all, page, count)}
        </p>
        <Button small isDisabled={page >= count || all} onPress={() => turnTo(page + 1)}>
          Next page
        </Button>
        <Button small tone="bare" onPress={() => pagesStore.setState({ layout: all ? 'one' : 'all' })}>
          {all ? 'One page' : 'All pages'}
        </Button>
      </div>
      <State pages={pages} draft={draft} />
      {all ? null : (
        <Choice
          label="Size on screen"
          bare
          value={zoom}
          options={ZOOMS}
          onChange={(next) => pagesStore.setState({ zoom: next })}
        />
      )}
    </header>
  );
}

/** Which page; nothing as long as none is made. */
function whereWords(all: boolean, page: number, count: number): string {
  if (count === 0) return '';
  return all ? `${count} pages` : `Page ${page} of ${Math.max(count, page)}`;
}

function State({ pages, draft }: { readonly pages: Pages; readonly draft: boolean }) {
  const { making, refusal, pdf } = pages;
  if (making !== null) {
    return <Progress doing={pdf === null ? 'Making the pages' : 'Making newer pages'} progress={making.progress} />;
  }
  if (refusal !== null && pdf !== null) {
    return (
      <p className={styles.state} role="status">
        <Mark of="stops" /> Older pages: {refusal.words}
      </p>
    );
  }
  if (draft) {
    return (
      <p className={styles.state} role="status">
        <Mark of="stops" /> A draft: something does not fit
      </p>
    );
  }
  return (
    <p className={styles.state} role="status">
      <span className="heard">The pages are as the pattern is.</span>
    </p>
  );
}
