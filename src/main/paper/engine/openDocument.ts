import type { Book } from '../../../shared/writing/book.ts';
import { pageFonts } from '../fonts.ts';
import { type PdfDocument, PdfDocumentOf } from './library.ts';
import { shareShapedWords } from './shapedWords.ts';

/**
 * An empty PDF 1.7 that carries the book's title, author, language and date (never today's: the same book gives the
 * same bytes) and asks the printer not to scale it.
 */
export function openDocument(book: Book): PdfDocument {
  const fonts = pageFonts();
  const files = new Set(Object.values(fonts).flatMap((family) => Object.values(family)));
  const options = {
    pdfVersion: '1.7',
    tagged: true,
    displayTitle: true,
    lang: book.language,
    autoFirstPage: false,
    font: null,
    info: information(book),
  };
  const document = new PdfDocumentOf(fonts, {}, {}, {}, options, null, (path) => files.has(path));
  shareShapedWords(document);
  const preferences = document._root.data.ViewerPreferences;
  if (preferences) preferences.data.PrintScaling = 'None';
  return document;
}

function information(book: Book): Record<string, unknown> {
  const date = new Date(`${book.date.slice(0, 10)}T00:00:00Z`);
  if (Number.isNaN(date.getTime())) throw new RangeError(`The edition's date must be an ISO date, not ${book.date}`);
  return {
    Title: book.title,
    Author: book.designer,
    Subject: book.edition,
    Creator: 'Piecewright',
    Producer: 'Piecewright',
    CreationDate: date,
    ModDate: date,
  };
}

/** Ends the document and gives all of its bytes. */
export function closeDocument(document: PdfDocument): Promise<Uint8Array> {
  return new Promise((resolve, reject) => {
    const chunks: Uint8Array[] = [];
    document.on('data', (chunk) => chunks.push(chunk));
    document.on('end', () => resolve(Buffer.concat(chunks)));
    document.on('error', reject);
    document.end();
  });
}
