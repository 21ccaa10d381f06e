import type { Figure, Ink } from '../../shared/diagrams/figure.ts';
import type { Manner, Tint } from '../../shared/diagrams/fill.ts';
import { short } from '../../shared/diagrams/path.ts';
import { MARGIN, PRINTED, printed, sheetSize } from '../../shared/diagrams/sheet.ts';
import type { Drawn, Lettered, Stroke } from '../../shared/diagrams/stroke.ts';
import { strokesOf } from '../../shared/diagrams/strokes.ts';
import { POINTS_PER_INCH } from '../../shared/diagrams/weights.ts';

export interface PaperPen {
  /** Inches of paper for one inch of cloth. */
  readonly scale: number;
  readonly inks: readonly Ink[];
  /** Black and white: hatches instead of colours. */
  readonly plainInk: boolean;
  /** Hatches over the colours too (the default); without, colours lie flat, as on a cover. */
  readonly hatched?: boolean;
  /** The font family of letters, as the PDF engine knows it. */
  readonly letterFont: string;
}

/** How large `figureToSvg` comes out, in points, margin and all. */
export function figureSize(figure: Figure, scale: number): { readonly width: number; readonly height: number } {
  return sheetSize(figure, scale * POINTS_PER_INCH);
}

/**
 * A figure as compact SVG in points, for a PDF engine that knows neither clip paths nor patterns: colours are `#rrggbb`,
 * coordinates are rounded to a thousandth of a point, text stands on baselines worked out here.
 */
export function figureToSvg(figure: Figure, pen: PaperPen): string {
  const { width, height } = figureSize(figure, pen.scale);
  const manner: Manner = pen.plainInk ? 'plain' : pen.hatched === false ? 'colour' : 'hatched';
  const paints = PRINTED[pen.plainInk ? 'plain' : 'colour'];
  const colour = (tint: Tint) => printed(tint, paints);
  const strokes = strokesOf(figure, { pointsPerInch: pen.scale * POINTS_PER_INCH, inks: pen.inks, manner });
  const marks = strokes.map((stroke) => markOf(stroke, colour)).join('');
  const [w, h] = [short(width), short(height)];
  const frame = `width="${w}" height="${h}" viewBox="${-MARGIN} ${-MARGIN} ${w} ${h}"`;
  const common = `fill="none" stroke-linejoin="round" font-family="${escaped(pen.letterFont)}" font-weight="600"`;
  return `<svg xmlns="http://www.w3.org/2000/svg" ${frame}><g ${common}>${marks}</g></svg>`;
}

type Colour = (tint: Tint) => string;

function markOf(stroke: Stroke, colour: Colour): string {
  return stroke.kind === 'path' ? pathMark(stroke, colour) : textMark(stroke, colour);
}

function pathMark({ path, fill, line }: Drawn, colour: Colour): string {
  if (path === '') return '';
  const filled = fill === null ? '' : ` fill="${colour(fill)}"`;
  return `<path${filled}${line === null ? '' : lineMark(line, colour)} d="${path}"/>`;
}

function lineMark({ tint, weight, dash, round }: NonNullable<Drawn['line']>, colour: Colour): string {
  const dashes = dash === null ? '' : ` stroke-dasharray="${dash.join(' ')}"`;
  const cap = round ? ' stroke-linecap="round"' : '';
  return ` stroke="${colour(tint)}" stroke-width="${short(weight)}"${dashes}${cap}`;
}

function textMark({ text, x, y, size, align, upright, tint }: Lettered, colour: Colour): string {
  const anchor = align === 'start' ? '' : ` text-anchor="${align}"`;
  const turn = upright ? ` transform="rotate(-90 ${short(x)} ${short(y)})"` : '';
  const spot = `x="${short(x)}" y="${short(y)}" font-size="${short(size)}"`;
  return `<text ${spot} fill="${colour(tint)}"${anchor}${turn}>${escaped(text)}</text>`;
}

function escaped(text: string): string {
  return text.replace(/[&<>"]/g, (sign) => `&#${sign.charCodeAt(0)};`);
}
