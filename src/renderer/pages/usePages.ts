import type { PDFDocumentProxy } from 'pdfjs-dist';
import { useEffect, useRef, useState } from 'react';
import type { Contract, PublishRequest, Refusal } from '../../shared/contract.ts';
import { refusalOf } from '../state/host.ts';
import { bytesOf, type Making, makePages } from './makePages.ts';
import { closePdf, openPdf } from './pdf.ts';

/** How long the hand must rest before the pages are made afresh, milliseconds. */
const REST = 350;

/** The pages as last made, and the ones being made. */
export interface Pages {
  readonly pdf: PDFDocumentProxy | null;
  /** Set while newer pages are being made; the ones shown are then older than the pattern. */
  readonly making: Making | null;
  readonly refusal: Refusal | null;
  /** Has them made once more. */
  readonly again: () => void;
}

const STARTING: Making = { progress: 0, doing: 'Making the pages' };

/** Keeps the real pages of a pattern at hand: made afresh whenever it changes, the old ones staying until then. */
export function usePages(host: Contract, request: PublishRequest): Pages {
  const [asked, setAsked] = useState(0);
  const [pages, setPages] = useState<Omit<Pages, 'again'>>({
    pdf: null,
    making: STARTING,
    refusal: null,
  });
  const shown = useRef<PDFDocumentProxy | null>(null);
  const { pattern, paper, plainInk, draft } = request;

  // biome-ignore lint/correctness/useExhaustiveDependencies: `again` asks anew
  useEffect(() => {
    const stop = new AbortController();
    const tell = (making: Making) => setPages((was) => ({ ...was, making }));
    tell(STARTING);
    const start = async () => {
      const file = await makePages(host, { pattern, paper, plainInk, draft }, stop.signal, tell);
      const pdf = await openPdf(bytesOf(file));
      if (stop.signal.aborted) return closePdf(pdf);
      const before = shown.current;
      shown.current = pdf;
      setPages({ pdf, making: null, refusal: null });
      // The canvases still draw from the old pages for a moment.
      setTimeout(() => closePdf(before), 2000);
    };
    const refused = (thrown: unknown) => {
      if (!stop.signal.aborted)
        setPages((was) => ({
          ...was,
          making: null,
          refusal: refusalOf(thrown),
        }));
    };
    const rest = setTimeout(() => start().catch(refused), shown.current === null ? 0 : REST);
    return () => {
      clearTimeout(rest);
      stop.abort();
    };
  }, [host, pattern, paper, plainInk, draft, asked]);

  useEffect(
    () => () => {
      closePdf(shown.current);
      shown.current = null;
    },
    [],
  );
  return { ...pages, again: () => setAsked((before) => before + 1) };
}
