import { GlobalWorkerOptions, getDocument, type PDFDocumentProxy } from 'pdfjs-dist';
import workerAddress from 'pdfjs-dist/build/pdf.worker.min.mjs?url';

// The worker comes with the studio itself; nothing is fetched from anywhere else.
GlobalWorkerOptions.workerSrc = workerAddress;

/** Opens a PDF for drawing. The bytes are handed over to the drawing thread. */
export function openPdf(data: Uint8Array<ArrayBuffer>): Promise<PDFDocumentProxy> {
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
