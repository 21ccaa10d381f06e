import type { Palette } from '../palette.ts';
import type { Style } from '../type.ts';
import { faceFor } from './glyphs.ts';
import type { TextItem } from './items.ts';
import { LayoutBuilder, type MeasuredLine, type MeasuredRun, type PdfDocument, type PdfmakeRun } from './library.ts';

/** A run of text in one style; `whole` runs are never broken over two lines. */
export interface Run {
  readonly text: string;
  readonly style: Style;
  readonly whole?: boolean;
}

export type Align = 'left' | 'right' | 'center';

/** Text broken into lines, its corner at 0, 0. */
export interface TextBox {
  readonly items: readonly TextItem[];
  readonly height: number;
}

const NO_MARGINS = { left: 0, right: 0, top: 0, bottom: 0 };

/** Breaks runs of text into lines of a width in points. Characters no font has are refused by name. */
export function setText(
  document: PdfDocument,
  palette: Palette,
  runs: readonly Run[],
  width: number,
  align: Align = 'left',
): TextBox {
  const text = runs.flatMap((run) => pdfmakeRuns(document, palette, run, width));
  const builder = new LayoutBuilder({ width, height: Number.POSITIVE_INFINITY }, NO_MARGINS, null);
  const [page] = builder.layoutDocument({ text, alignment: align }, document, {}, {});
  const lines = (page?.items ?? []).map(({ item }) => item);
  const last = lines.at(-1);
  return { items: lines.flatMap(textItems), height: last === undefined ? 0 : last.y + last.getHeight() };
}

/** The width in points of text that is not broken. */
export function widthOf(document: PdfDocument, text: string, style: Style): number {
  const face = document.provideFont(style.family, style.bold, style.italics);
  return face.widthOfString(text, style.size) + style.tracking * (text.length - 1);
}

function pdfmakeRuns(document: PdfDocument, palette: Palette, run: Run, width: number): PdfmakeRun[] {
  const { style } = run;
  return faceFor(document, run.text, style).map(({ text, family }) => ({
    text,
    font: family,
    bold: style.bold,
    italics: style.italics,
    fontSize: style.size,
    // The library multiplies each font's own line height; this gives both families the same leading.
    lineHeight: style.leading / document.provideFont(family, style.bold, style.italics).lineHeight(style.size),
    characterSpacing: style.tracking,
    color: palette[style.colour],
    ...(run.whole && widthOf(document, text, style) <= width ? { noWrap: true } : {}),
  }));
}

function textItems(line: MeasuredLine): TextItem[] {
  const items: TextItem[] = [];
  for (const run of line.inlines) {
    const next = itemOf(line, run);
    const last = items.at(-1);
    if (last !== undefined && sameLook(last, next)) items[items.length - 1] = joined(last, next);
    else items.push(next);
  }
  return items;
}

function itemOf(line: MeasuredLine, run: MeasuredRun): TextItem {
  return {
    kind: 'text',
    x: line.x + run.x,
    y: line.y,
    width: run.width,
    leading: line.getHeight(),
    text: run.text,
    face: run.font,
    size: run.fontSize,
    tracking: run.characterSpacing,
    colour: run.color,
  };
}

function sameLook(a: TextItem, b: TextItem): boolean {
  return a.face === b.face && a.size === b.size && a.colour === b.colour && a.tracking === b.tracking;
}

function joined(a: TextItem, b: TextItem): TextItem {
  return { ...a, text: a.text + b.text, width: b.x + b.width - a.x };
}
