import type { Tint } from '../../../shared/diagrams/fill.ts';
import { PRINTED, printed } from '../../../shared/diagrams/sheet.ts';
import type { Drawn, DrawnLine, Lettered } from '../../../shared/diagrams/stroke.ts';
import { strokesOf } from '../../../shared/diagrams/strokes.ts';
import { TYPE } from '../type.ts';
import { faceFor } from './glyphs.ts';
import type { FigureItem } from './items.ts';
import type { PdfDocument } from './library.ts';
import { pathOperators } from './pathOperators.ts';
import { writeText } from './writeText.ts';

/**
 * Draws a figure as PDF marks from the strokes every pen draws: the pen that writes SVG would have it read again, which
 * takes six times as long. The figure's corner goes to `x`, `y`, points from the page's top left.
 */
export function drawFigure(document: PdfDocument, item: FigureItem, x: number, y: number): void {
  const { figure, scale, inks, manner } = item;
  const paints = PRINTED[manner === 'plain' ? 'plain' : 'colour'];
  const colour = (tint: Tint) => printed(tint, paints);
  document.save();
  document.addContent(`1 0 0 1 ${short(x)} ${short(y)} cm 1 j`);
  for (const stroke of strokesOf(figure, { pointsPerInch: scale, inks, manner })) {
    if (stroke.kind === 'path') drawPath(document, stroke, colour);
    else drawLetter(document, stroke, colour);
  }
  document.restore();
}

type Colour = (tint: Tint) => string;

function drawPath(document: PdfDocument, { path, fill, line }: Drawn, colour: Colour): void {
  if (path === '' || (fill === null && line === null)) return;
  const paint = fill === null ? 'S' : line === null ? 'f' : 'B';
  const setFill = fill === null ? '' : `${channels(colour(fill))} rg `;
  document.addContent(`${setFill}${line === null ? '' : lineOperators(line, colour)}${pathOperators(path)}${paint}`);
}

function lineOperators({ tint, weight, dash, round }: DrawnLine, colour: Colour): string {
  const dashes = dash === null ? '[] 0 d' : `[${dash.join(' ')}] 0 d`;
  return `${channels(colour(tint))} RG ${short(weight)} w ${round ? 1 : 0} J ${dashes} `;
}

/** Letters are in the charts' semibold, and stand or read upwards about their spot on the baseline. */
function drawLetter(document: PdfDocument, { text, x, y, size, align, upright, tint }: Lettered, colour: Colour): void {
  const style = TYPE.figureLetter;
  const stretches = faceFor(document, text, style).map((stretch) => {
    const face = document.provideFont(stretch.family, style.bold, style.italics);
    return { text: stretch.text, face, width: face.widthOfString(stretch.text, size) };
  });
  const width = stretches.reduce((sum, stretch) => sum + stretch.width, 0);
  let left = align === 'start' ? 0 : align === 'middle' ? -width / 2 : -width;
  document.save();
  document.addContent(`${upright ? '0 -1 1 0' : '1 0 0 1'} ${short(x)} ${short(y)} cm`);
  for (const stretch of stretches) {
    writeText(document, { face: stretch.face, size, colour: colour(tint), tracking: 0 }, stretch.text, left, 0);
    left += stretch.width;
  }
  document.restore();
}

/** `#rrggbb` as the three numbers of DeviceRGB. */
function channels(colour: string): string {
  return [1, 3, 5].map((at) => short(Number.parseInt(colour.slice(at, at + 2), 16) / 255)).join(' ');
}

/** A ten-thousandth of a point is nothing on paper. */
function short(value: number): string {
  return String(Number(value.toFixed(4)));
}
