import { createRequire } from 'node:module';
import type { FontFiles } from '../fonts.ts';

/**
 * The parts of pdfmake the page is made with, typed as far as they are used. Its line breaking sets the text, its
 * document writes the file. Where a page ends is decided here, in `flow/`: its own pages drop
 * whatever is taller than a page without a word, and part a heading from what it heads. pdfmake is pinned for this.
 */
// Not called “require”: what is built of this declares one of its own.
const load = createRequire(import.meta.url);

interface Module<T> {
  readonly default: T;
}

/** A font in a document. */
export interface FaceInDocument {
  readonly font: { hasGlyphForCodePoint(code: number): boolean };
  /** Each word's glyphs, once found. */
  layoutCache: Record<string, unknown>;
  lineHeight(size: number): number;
  widthOfString(text: string, size: number): number;
}

/** An element of the document's structure, for those who read by ear. */
export interface StructureElement {
  readonly dictionary: { readonly data: Record<string, unknown> };
  add(child: StructureElement | (() => void)): StructureElement;
  end(): void;
}

interface StructureOptions {
  readonly alt?: string;
  readonly title?: string;
  readonly scope?: 'Column' | 'Row' | undefined;
  readonly bbox?: readonly [number, number, number, number] | undefined;
}

export interface OutlineItem {
  addItem(title: string, options?: { readonly expanded?: boolean }): OutlineItem;
}

interface TextOptions {
  readonly lineBreak: false;
  readonly baseline: 'alphabetic';
  readonly characterSpacing?: number;
}

/** A picture in a document. */
export interface OpenedPicture {
  readonly width: number;
  readonly height: number;
}

/** A document being written. */
export interface PdfDocument {
  readonly page: { readonly height: number };
  readonly outline: OutlineItem;
  readonly _root: { readonly data: Record<string, { readonly data: Record<string, unknown> } | undefined> };
  _font: FaceInDocument;
  provideFont(family: string, bold: boolean, italics: boolean): FaceInDocument;
  getFontFile(family: string, bold: boolean, italics: boolean): string | null;
  addPage(options: { readonly size: readonly [number, number]; readonly margin: number }): this;
  addContent(operators: string): this;
  font(file: string): this;
  fontSize(size: number): this;
  text(text: string, x: number, y: number, options: TextOptions): this;
  save(): this;
  restore(): this;
  fillColor(colour: string): this;
  strokeColor(colour: string): this;
  lineWidth(width: number): this;
  lineCap(cap: 'butt' | 'round'): this;
  lineJoin(join: 'miter' | 'round'): this;
  dash(length: number, options: { readonly space: number }): this;
  undash(): this;
  rect(x: number, y: number, width: number, height: number): this;
  moveTo(x: number, y: number): this;
  lineTo(x: number, y: number): this;
  closePath(): this;
  fill(): this;
  openImage(jpeg: Uint8Array): OpenedPicture;
  image(
    picture: OpenedPicture,
    x: number,
    y: number,
    options: { readonly width: number; readonly height: number },
  ): this;
  stroke(): this;
  markContent(tag: string, options?: { readonly type: 'Pagination' | 'Layout' }): this;
  endMarkedContent(): this;
  struct(tag: string, options?: StructureOptions): StructureElement;
  addStructure(element: StructureElement): this;
  on(event: 'data', listener: (chunk: Uint8Array) => void): this;
  on(event: 'end', listener: () => void): this;
  on(event: 'error', listener: (error: Error) => void): this;
  end(): void;
}

type PdfDocumentClass = new (
  fonts: Record<string, FontFiles>,
  images: object,
  patterns: object,
  attachments: object,
  options: object,
  virtualFiles: null,
  mayRead: (path: string) => boolean,
) => PdfDocument;

/** A run of text in pdfmake's own form, before and after it is measured. */
export interface PdfmakeRun {
  text: string;
  font: string;
  bold: boolean;
  italics: boolean;
  fontSize: number;
  lineHeight: number;
  characterSpacing: number;
  color: string;
  noWrap?: boolean;
}

export interface MeasuredRun extends Omit<PdfmakeRun, 'font'> {
  readonly font: FaceInDocument;
  readonly x: number;
  readonly width: number;
}

export interface MeasuredLine {
  readonly x: number;
  readonly y: number;
  readonly inlines: readonly MeasuredRun[];
  getHeight(): number;
}

type LayoutBuilderClass = new (
  size: { readonly width: number; readonly height: number },
  margins: { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number },
  svgMeasure: null,
) => {
  layoutDocument(
    node: { text: PdfmakeRun[]; alignment: 'left' | 'right' | 'center' },
    document: PdfDocument,
    styles: object,
    defaultStyle: object,
  ): readonly { readonly items: readonly { readonly type: string; readonly item: MeasuredLine }[] }[];
};

export const PdfDocumentOf = (load('pdfmake/js/PDFDocument') as Module<PdfDocumentClass>).default;
export const LayoutBuilder = (load('pdfmake/js/LayoutBuilder') as Module<LayoutBuilderClass>).default;
