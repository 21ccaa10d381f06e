import type { PDFDocumentProxy, PDFPageProxy, RenderTask } from 'pdfjs-dist';
import { useEffect, useRef, useState } from 'react';
import styles from './pages.module.css';

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
      swapIn(canvas.current, fresh.canvas);
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
      <canvas ref={canvas} className={styles.sheet} style={{ width }} role="img" aria-label={`Page ${number}`} />
      {withWords && <p className="heard">{words}</p>}
    </>
  );
}

function freshCanvas(page: PDFPageProxy, width: number) {
  const natural = page.getViewport({ scale: 1 });
  const sharpness = Math.min(3, window.devicePixelRatio || 1);
  const viewport = page.getViewport({
    scale: (width / natural.width) * sharpness,
  });
  const canvas = document.createElement('canvas');
  canvas.width = Math.round(viewport.width);
  canvas.height = Math.round(viewport.height);
  return { canvas, viewport };
}

function swapIn(shown: HTMLCanvasElement, fresh: HTMLCanvasElement): void {
  shown.width = fresh.width;
  shown.height = fresh.height;
  shown.getContext('2d')?.drawImage(fresh, 0, 0);
}

async function wordsOf(page: PDFPageProxy): Promise<string> {
  const content = await page.getTextContent();
  return content.items.map((item) => ('str' in item ? item.str + (item.hasEOL ? '\n' : '') : '')).join('');
}
