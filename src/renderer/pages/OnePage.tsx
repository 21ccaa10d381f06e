import type { PDFDocumentProxy } from 'pdfjs-dist';
import { type KeyboardEvent, useRef } from 'react';
import { useRoom } from '../parts/useRoom.ts';
import { PageCanvas } from './PageCanvas.tsx';
import styles from './pages.module.css';
import { PAPER_INCHES, turnTo, usePagesState, type Zoom } from './pagesStore.ts';

/** Pixels of the screen for one printed inch, as CSS counts them. */
const PIXELS = 96;
const AROUND = 24;

/** One page, as large as is asked; keys turn the pages. */
export function OnePage({ pdf }: { readonly pdf: PDFDocumentProxy }) {
  const desk = useRef<HTMLElement>(null);
  const room = useRoom(desk);
  const paper = usePagesState((state) => state.paper);
  const zoom = usePagesState((state) => state.zoom);
  const page = usePagesState((state) => state.page);
  const width = widthOf(zoom, PAPER_INCHES[paper], room);
  return (
    <section
      ref={desk}
      className={styles.desk}
      aria-label="Page"
      // biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, so the keyboard must reach it
      tabIndex={0}
      onKeyDown={(event) => turnByKey(event, page, pdf.numPages)}
    >
      {room.width > 0 ? <PageCanvas pdf={pdf} number={Math.min(page, pdf.numPages)} width={width} withWords /> : null}
    </section>
  );
}

function widthOf(
  zoom: Zoom,
  inches: { width: number; height: number },
  room: { width: number; height: number },
): number {
  const across = room.width - 2 * AROUND;
  if (zoom === 'width') return across;
  if (zoom !== 'whole') return Number(zoom) * PIXELS * inches.width;
  return Math.min(across, ((room.height - 2 * AROUND) * inches.width) / inches.height);
}

function turnByKey(event: KeyboardEvent, page: number, pages: number): void {
  const to: Readonly<Record<string, number>> = {
    PageDown: page + 1,
    ArrowRight: page + 1,
    PageUp: page - 1,
    ArrowLeft: page - 1,
    Home: 1,
    End: pages,
  };
  const next = to[event.key];
  if (next === undefined || event.ctrlKey || event.metaKey || event.altKey) return;
  event.preventDefault();
  turnTo(next);
}
