import type { PDFDocumentProxy, PDFPageProxy, RenderTask } from 'pdfjs-dist';
import { useEffect, useRef, useState } from 'react';
import styles from './pages.module.css';
import { PAPER_INCHES, usePagesState } from './pagesStore.ts';

interface PageCanvasProps {
  readonly pdf: PDFDocumentProxy;
  /** Counted from one. */
  readonly number: number;
  /** Width on screen, CSS pixels. */
  readonly width: number;
  /** Also says the page's words, for those who listen and for finding. */
  readonly withWords?: boolean;
}

/** One page of the PDF as it will print. The page drawn before stays in sight until the new one is ready. */
export function PageCanvas({ pdf, number, width, withWords = false }: PageCanvasProps) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const [words, setWords] = useState('');
  const [drawn, setDrawn] = useState(false);
  const paper = PAPER_INCHES[usePagesState((state) => state.paper)];

  useEffect(() => {
    let stopped = false;
    let task: RenderTask | undefined;
    const draw = async () => {
      const page = await pdf.getPage(number);
      if (stopped) return;
      const fresh = freshCanvas(page, width);
      task = page.render({ canvas: fresh.canvas, viewport: fresh.viewport });
      await task.promise;
      const text = withWords ? await wordsOf(page) : '';
      if (stopped || canvas.current === null) return;
      swapIn(canvas.current, fresh.canvas, width);
      setDrawn(true);
      setWords(text);
    };
    draw().catch(() => undefined); // A page given up half way is replaced by the next one.
    return () => {
      stopped = true;
      task?.cancel();
    };
  }, [pdf, number, width, withWords]);

  return (
    <>
      <canvas
        ref={canvas}
        className={styles.sheet}
        // A bare sheet of the paper until the page is drawn on it.
        style={drawn ? { width } : { width, aspectRatio: `${paper.width} / ${paper.height}` }}
        role="img"
        aria-label={`Page ${number}`}
      />
      {withWords && <p className="heard">{words}</p>}
    </>
  );
}

/** Hairlines are never thinner than a pixel, so a page is drawn larger than it is shown and then shrunk. */
const FINER = 2;
const FINER_WHEN_SMALL = 4;
const MOST_PIXELS = 16_000_000;

function freshCanvas(page: PDFPageProxy, width: number) {
  const natural = page.getViewport({ scale: 1 });
  const height = (width * natural.height) / natural.width;
  const wanted = (window.devicePixelRatio || 1) * (width < 300 ? FINER_WHEN_SMALL : FINER);
  const sharpness = Math.min(wanted, Math.sqrt(MOST_PIXELS / (width * height)));
  const viewport = page.getViewport({ scale: (width / natural.width) * sharpness });
  const canvas = document.createElement('canvas');
  canvas.width = Math.round(viewport.width);
  canvas.height = Math.round(viewport.height);
  return { canvas, viewport };
}

function swapIn(shown: HTMLCanvasElement, fresh: HTMLCanvasElement, width: number): void {
  const sharp = Math.min(fresh.width, Math.round(width * (window.devicePixelRatio || 1)));
  shown.width = sharp;
  shown.height = Math.round((sharp * fresh.height) / fresh.width);
  const pen = shown.getContext('2d');
  if (pen === null) return;
  pen.imageSmoothingQuality = 'high';
  pen.drawImage(fresh, 0, 0, shown.width, shown.height);
}

async function wordsOf(page: PDFPageProxy): Promise<string> {
  const content = await page.getTextContent();
  return content.items.map((item) => ('str' in item ? item.str + (item.hasEOL ? '\n' : '') : '')).join('');
}
