import type { PDFDocumentProxy } from 'pdfjs-dist';
import { Button } from 'react-aria-components';
import { PageCanvas } from './PageCanvas.tsx';
import styles from './pages.module.css';
import { turnTo, usePagesState } from './pagesStore.ts';

const THUMB = 156;

/** All pages small; a press opens one. */
export function Overview({ pdf }: { readonly pdf: PDFDocumentProxy }) {
  const page = usePagesState((state) => state.page);
  const numbers = Array.from({ length: pdf.numPages }, (_, i) => i + 1);
  return (
    <ol className={styles.overview}>
      {numbers.map((number) => (
        <li key={number}>
          <Button
            className={styles.thumb ?? ''}
            data-now={number === page || undefined}
            aria-label={`Open page ${number}`}
            onPress={() => turnTo(number)}
          >
            <PageCanvas pdf={pdf} number={number} width={THUMB} />
            <span>{number}</span>
          </Button>
        </li>
      ))}
    </ol>
  );
}
