import { registerWindow } from '@svgdotjs/svg.js';
import { createHTMLWindow } from 'svgdom';
import { beforeAll, describe, expect, it } from 'vitest';
import { figureSize, figureToSvg } from '../../src/main/paper/figurePen.ts';
import { openPen, PIXELS_PER_POINT } from '../../src/renderer/parts/figure/penOnScreen.ts';
import type { Figure, Ink } from '../../src/shared/diagrams/figure.ts';
import { everyFigure } from './everyFigure.ts';
import { fixture } from './fixture.ts';
import { strokeLengths } from './pathLength.ts';

let host: HTMLElement;

beforeAll(() => {
  const window = createHTMLWindow();
  registerWindow(window, window.document);
  host = window.document.createElement('div');
  window.document.body.appendChild(host);
});

interface Drawing {
  /** Every stroke of every path, inches of cloth. */
  readonly lengths: readonly number[];
  readonly texts: readonly string[];
}

const SCALE = 0.25;
/** The same scale on screen: hatches lie in points, so only then are they the same lines. */
const PIXELS_PER_INCH = 72 * SCALE * PIXELS_PER_POINT;

function onPaper(figure: Figure, inks: readonly Ink[]): Drawing {
  const svg = figureToSvg(figure, { scale: SCALE, inks, plainInk: true, letterFont: 'Letters' });
  const paths = [...svg.matchAll(/<path[^>]* d="([^"]*)"/g)].map((match) => match[1] ?? '');
  const lengths = paths.flatMap(strokeLengths).map((points) => points / 72 / SCALE);
  return { lengths, texts: [...svg.matchAll(/<text[^>]*>([^<]*)</g)].map((match) => match[1] ?? '') };
}

/** Lengths as they come out on the glass: the drawing's own numbers times how much its frame enlarges them. */
function onScreen(figure: Figure, inks: readonly Ink[]): Drawing {
  const pen = openPen(host);
  pen.draw(figure, { pixelsPerInch: PIXELS_PER_INCH, inks, manner: 'plain' });
  const lengths = screenPaths()
    .flatMap(strokeLengths)
    .map((points) => (points * enlarged()) / PIXELS_PER_INCH);
  const texts = [...host.querySelectorAll('text')].map((text) => text.textContent ?? '');
  pen.close();
  return { lengths, texts };
}

function screenPaths(): readonly string[] {
  return [...host.querySelectorAll('path')].map((path) => path.getAttribute('d') ?? '');
}

/** Pixels for one unit of the drawing. */
function enlarged(): number {
  const svg = host.querySelector('svg');
  const [, , width = 0] = (svg?.getAttribute('viewBox') ?? '').split(' ').map(Number);
  return Number(svg?.getAttribute('width')) / width;
}

describe('the two pens', () => {
  const of = fixture(3, 3);

  it.each(everyFigure(of))('draw the same lengths and words: $name', ({ figure }) => {
    const paper = onPaper(figure, of.inks);
    const screen = onScreen(figure, of.inks);
    expect(paper.lengths.length).toBeGreaterThan(0);
    expect(screen.lengths).toHaveLength(paper.lengths.length);
    // The screen's frame is rounded to a thousandth of a pixel.
    const apart = screen.lengths.map((length, i) => Math.abs(length - (paper.lengths[i] ?? 0)));
    expect(Math.max(...apart)).toBeLessThan(1e-3);
    expect(screen.texts).toEqual(paper.texts);
  });

  const LINE: Figure = {
    width: 12.5,
    height: 2,
    marks: [
      {
        kind: 'line',
        pen: 'unit',
        points: [
          { x: 0, y: 1 },
          { x: 12.5, y: 1 },
        ],
      },
    ],
    alt: 'A line.',
  };

  it('draw 12½ inches at half scale as 450 points on paper', () => {
    const svg = figureToSvg(LINE, { scale: 0.5, inks: [], plainInk: false, letterFont: 'Letters' });
    expect(strokeLengths(/d="([^"]*)"/.exec(svg)?.[1] ?? '')).toEqual([450]);
    expect(figureSize(LINE, 0.5)).toEqual({ width: 452, height: 74 });
  });

  it('draw 12½ inches at 20 pixels an inch as 250 pixels on screen', () => {
    const pen = openPen(host);
    pen.draw(LINE, { pixelsPerInch: 20, inks: [], manner: 'colour' });
    const [length = 0] = screenPaths().flatMap(strokeLengths);
    expect(length * enlarged()).toBeCloseTo(250, 3);
    pen.close();
  });
});

describe('the pen on paper', () => {
  const of = fixture(3, 3);

  it.each([true, false])('writes only what the PDF engine knows (plain ink: %s)', (plainInk) => {
    for (const { figure } of everyFigure(of)) {
      const svg = figureToSvg(figure, { scale: SCALE, inks: of.inks, plainInk, letterFont: 'Letters' });
      for (const [, element = ''] of svg.matchAll(/<(\w+)/g)) expect(['svg', 'g', 'path', 'text']).toContain(element);
      for (const [, colour = ''] of svg.matchAll(/(?:fill|stroke)="([^"]*)"/g))
        expect(colour).toMatch(/^(#[0-9a-f]{6}|none)$/);
      expect(svg).not.toMatch(/\.\d{4}|NaN|Infinity|undefined/);
      expect(svg).not.toMatch(/stroke-dasharray="0 /);
    }
  });

  it('uses no colour in plain ink', () => {
    const quilt = everyFigure(of).find(({ name }) => name === 'quilt')?.figure as Figure;
    const svg = figureToSvg(quilt, { scale: SCALE, inks: of.inks, plainInk: true, letterFont: 'L' });
    for (const [, hex = ''] of svg.matchAll(/#([0-9a-f]{6})/g))
      expect(new Set([hex.slice(0, 2), hex.slice(2, 4), hex.slice(4)]).size).toBe(1);
  });

  it('escapes words', () => {
    const marks = [{ kind: 'letter', text: 'A<&', at: { x: 0.5, y: 0.5 }, style: 'letter', align: 'middle' }] as const;
    const svg = figureToSvg(
      { width: 1, height: 1, marks, alt: '' },
      { scale: 1, inks: [], plainInk: false, letterFont: 'L' },
    );
    expect(svg).toContain('>A&#60;&#38;</text>');
  });
});

describe('the pen on screen', () => {
  const of = fixture(2, 2);
  const figures = everyFigure(of);
  const quilt = figures.find(({ name }) => name === 'quilt')?.figure as Figure;
  const settings = { pixelsPerInch: 10, inks: of.inks, manner: 'colour' } as const;

  it('keeps what did not change, and takes away what is no longer there', () => {
    const pen = openPen(host);
    pen.draw(quilt, settings);
    const before = [...host.querySelectorAll('path')];
    pen.draw({ ...quilt, marks: quilt.marks.slice(0, 3) }, settings);
    const after = [...host.querySelectorAll('path')];
    expect(after.length).toBeLessThan(before.length);
    expect(after.every((path, i) => path === before[i])).toBe(true);
    pen.close();
    expect(host.querySelectorAll('svg')).toHaveLength(0);
  });

  it('leaves line colours to the theme and cloth colours to the designer', () => {
    const pen = openPen(host);
    pen.draw(quilt, settings);
    const paths = [...host.querySelectorAll('path')];
    expect(paths.some((path) => path.getAttribute('fill') === '#22405c')).toBe(true);
    expect(
      paths.every((path) =>
        /^(var\(--(ink|sheet|ink-quiet|misfit|cloth-edge|cloth-thread|cloth-bare)\)|color-mix.*|null)$/.test(
          String(path.getAttribute('stroke')),
        ),
      ),
    ).toBe(true);
    pen.close();
  });

  it('says what an area is when it is clicked', () => {
    const unit = figures.find(({ name }) => name.startsWith('geese'))?.figure as Figure;
    const pen = openPen(host);
    pen.draw(unit, settings);
    expect(host.querySelector('[data-of]')?.getAttribute('data-of')).toMatch(/^unit geese /);
    pen.close();
  });
});
