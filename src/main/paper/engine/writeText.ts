import type { FaceInDocument, PdfDocument } from './library.ts';

/** Writes a run of text with its left end on a baseline. */
export function writeText(
  document: PdfDocument,
  look: { readonly face: FaceInDocument; readonly size: number; readonly colour: string; readonly tracking: number },
  text: string,
  x: number,
  baseline: number,
): void {
  document._font = look.face;
  document.fontSize(look.size).fillColor(look.colour);
  document.text(text, x, baseline, { lineBreak: false, baseline: 'alphabetic', characterSpacing: look.tracking });
}
