import { baselineOf } from '../type.ts';
import { drawFigure } from './drawFigure.ts';
import type { Item, PictureItem, RuleItem, ShapeItem, TextItem } from './items.ts';
import type { OpenedPicture, PdfDocument } from './library.ts';
import { writeText } from './writeText.ts';

/** Draws an item with the frame's corner at `left` and its piece's top at `top`, both from the page's corner. */
export function drawItem(document: PdfDocument, item: Item, left: number, top: number): void {
  switch (item.kind) {
    case 'text':
      drawText(document, item, left, top);
      return;
    case 'fill':
      document
        .fillColor(item.colour)
        .rect(left + item.x, top + item.y, item.width, item.height)
        .fill();
      return;
    case 'rule':
      drawRule(document, item, left, top);
      return;
    case 'shape':
      drawShape(document, item, left, top);
      return;
    case 'figure':
      drawFigure(document, item, left + item.x, top + item.y);
      return;
    case 'picture':
      drawPicture(document, item, left, top);
      return;
  }
}

/** Pictures of a document that are in it already: one shown often is written once. */
const opened = new WeakMap<PdfDocument, Map<Uint8Array, OpenedPicture>>();

function drawPicture(
  document: PdfDocument,
  { bytes, x, y, width, height }: PictureItem,
  left: number,
  top: number,
): void {
  const known = opened.get(document) ?? new Map<Uint8Array, OpenedPicture>();
  opened.set(document, known);
  const picture = known.get(bytes) ?? document.openImage(Buffer.from(bytes));
  known.set(bytes, picture);
  document.image(picture, left + x, top + y, { width, height });
}

function drawText(document: PdfDocument, item: TextItem, left: number, top: number): void {
  if (item.text.trim() === '') return;
  // A space at a line's end stays: who copies or hears the text needs it between two lines.
  writeText(document, item, item.text, left + item.x, top + item.y + baselineOf(item));
}

function drawRule(document: PdfDocument, item: RuleItem, left: number, top: number): void {
  document.lineWidth(item.weight).strokeColor(item.colour);
  if (item.stitch) document.lineCap('round').dash(item.stitch[0], { space: item.stitch[1] });
  else document.lineCap('butt').undash();
  document
    .moveTo(left + item.x, top + item.y)
    .lineTo(left + item.toX, top + item.toY)
    .stroke();
  if (item.stitch) document.undash().lineCap('butt');
}

function drawShape(document: PdfDocument, item: ShapeItem, left: number, top: number): void {
  document.lineWidth(item.weight).strokeColor(item.colour).lineJoin('miter').undash();
  item.points.forEach(([x, y], index) => {
    if (index === 0) document.moveTo(left + x, top + y);
    else document.lineTo(left + x, top + y);
  });
  document.closePath().stroke();
}
