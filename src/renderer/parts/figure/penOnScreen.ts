import { type Container, type Element, SVG } from '@svgdotjs/svg.js';
import type { Figure, Ink } from '../../../shared/diagrams/figure.ts';
import type { Manner, Tint } from '../../../shared/diagrams/fill.ts';
import { short } from '../../../shared/diagrams/path.ts';
import { MARGIN, sheetSize } from '../../../shared/diagrams/sheet.ts';
import type { Drawn, Lettered, Stroke } from '../../../shared/diagrams/stroke.ts';
import { strokesOf } from '../../../shared/diagrams/strokes.ts';
import type { Paint } from '../../../shared/diagrams/weights.ts';
import { type Fills, openPrints, type Print } from './prints.ts';

/** A point of the weights' table on screen, pixels: letters of 7.5 pt come out at the screen's smallest type, 12. */
export const PIXELS_PER_POINT = 1.6;

interface ScreenSettings {
  /** Pixels for one inch of cloth. */
  readonly pixelsPerInch: number;
  readonly inks: readonly Ink[];
  readonly manner: Manner;
  /** Pictures of the fabrics that have one. */
  readonly prints?: readonly Print[];
}

/** Draws figures inside one element, keeping what did not change from one drawing to the next. */
export interface ScreenPen {
  draw(figure: Figure, settings: ScreenSettings): void;
  close(): void;
}

type Attributes = Readonly<Record<string, string | null>>;

interface Kept {
  readonly tag: string;
  readonly element: Element;
  attributes: Attributes;
  words: string;
}

/** A pen that draws inside `host`, an element that is its own. */
export function openPen(host: HTMLElement): ScreenPen {
  const root = SVG().addTo(host).attr({ 'aria-hidden': 'true', focusable: 'false' });
  root.css('display', 'block');
  const prints = openPrints(root);
  const sheet = root.group().attr({ fill: 'none', 'stroke-linejoin': 'round', 'font-weight': '600' });
  let kept: Kept[] = [];
  return {
    draw(figure, settings) {
      const pointsPerInch = settings.pixelsPerInch / PIXELS_PER_POINT;
      root.attr(frameOf(figure, pointsPerInch));
      const fills = prints.show(settings.prints ?? [], pointsPerInch);
      const strokes = strokesOf(figure, { ...settings, pointsPerInch });
      for (const left of kept.slice(strokes.length)) left.element.remove();
      kept = strokes.map((stroke, i) => redraw(sheet, kept[i], stroke, fills));
    },
    close() {
      root.remove();
    },
  };
}

function frameOf(figure: Figure, pointsPerInch: number): Record<string, string> {
  const { width, height } = sheetSize(figure, pointsPerInch);
  return {
    viewBox: `${-MARGIN} ${-MARGIN} ${short(width)} ${short(height)}`,
    width: short(width * PIXELS_PER_POINT),
    height: short(height * PIXELS_PER_POINT),
  };
}

/** Writes only the attributes that differ from the last drawing; an element of another kind is put in its place. */
function redraw(sheet: Container, old: Kept | undefined, stroke: Stroke, fills: Fills): Kept {
  const tag = stroke.kind;
  const attributes = stroke.kind === 'path' ? pathAttributes(stroke, fills) : textAttributes(stroke);
  const words = stroke.kind === 'text' ? stroke.text : '';
  const same = old?.tag === tag ? old : made(sheet, old, tag);
  const changed: Record<string, string | null> = {};
  for (const [name, value] of Object.entries(attributes)) {
    if (same.attributes[name] !== value) changed[name] = value;
  }
  if (Object.keys(changed).length > 0) same.element.attr(changed);
  if (words !== same.words) same.element.node.textContent = words;
  same.attributes = attributes;
  same.words = words;
  return same;
}

function made(sheet: Container, old: Kept | undefined, tag: string): Kept {
  const element = sheet.element(tag);
  if (old !== undefined) old.element.replace(element);
  return { tag, element, attributes: {}, words: '' };
}

/** The theme's names for the house's paints: it calls colours by what they mean. */
const PAINTS: Readonly<Record<Paint, string>> = {
  ink: 'var(--ink)',
  walnut: 'var(--ink-quiet)',
  madder: 'var(--misfit)',
  sheet: 'var(--sheet)',
  edge: 'var(--cloth-edge)',
  thread: 'var(--cloth-thread)',
  bare: 'var(--cloth-bare)',
};

/** A tint in the theme's own paints; what shows through is bare cloth. */
function themed({ of, wash }: Tint): string {
  const colour = of in PAINTS ? PAINTS[of as Paint] : of;
  if (wash === 0) return colour;
  return `color-mix(in srgb, ${colour} ${short((1 - wash) * 100)}%, ${PAINTS.bare})`;
}

function pathAttributes({ path, fill, line, of, cloth }: Drawn, fills: Fills): Attributes {
  const print = cloth === undefined ? undefined : fills.get(cloth);
  return {
    d: path,
    fill: print ?? (fill === null ? null : themed(fill)),
    stroke: line === null ? null : themed(line.tint),
    'stroke-width': line === null ? null : short(line.weight),
    'stroke-dasharray': line?.dash?.join(' ') ?? null,
    'stroke-linecap': line?.round === true ? 'round' : null,
    'data-of': of ?? null,
  };
}

function textAttributes({ text: _, x, y, size, align, upright, tint }: Lettered): Attributes {
  return {
    x: short(x),
    y: short(y),
    'font-size': short(size),
    'text-anchor': align === 'start' ? null : align,
    transform: upright ? `rotate(-90 ${short(x)} ${short(y)})` : null,
    fill: themed(tint),
  };
}
