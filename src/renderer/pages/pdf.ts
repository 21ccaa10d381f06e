import type { PDFDocumentProxy } from 'pdfjs-dist';
import workerAddress from 'pdfjs-dist/build/pdf.worker.min.mjs?url';

/**
 * Opens a PDF for drawing. The bytes are handed over to the drawing thread. What reads PDFs is a fifth of all the code of
 * the window, so it is fetched when the first PDF is here and not at the start.
 */
export async function openPdf(data: Uint8Array<ArrayBuffer>): Promise<PDFDocumentProxy> {
  const { GlobalWorkerOptions, getDocument } = await import('pdfjs-dist');
  // The worker comes with the studio itself; nothing is fetched from anywhere else.
  GlobalWorkerOptions.workerSrc = workerAddress;
  return getDocument({
    data,
    enableXfa: false,
    useSystemFonts: false,
    useWasm: false,
  }).promise;
}

/** Lets go of a PDF that is no longer shown. */
export function closePdf(pdf: PDFDocumentProxy | null): void {
  void pdf?.loadingTask.destroy();
}
