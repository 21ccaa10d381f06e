/**
 * Draws every kind of figure at print size on one page, in flat colour, in hatched colour and in black and white, to be
 * looked at: `node tests/diagrams/sheet.ts [FONT.ttf] > sheet.html`, then open it in a browser.
 */
import { readFileSync } from 'node:fs';
import { figureSize, figureToSvg } from '../../src/main/paper/figurePen.ts';
import type { Figure, Ink } from '../../src/shared/diagrams/figure.ts';
import { hatchFor } from '../../src/shared/diagrams/hatches.ts';
import { POINTS_PER_INCH } from '../../src/shared/diagrams/weights.ts';
import type { Value } from '../../src/shared/recipe/schema.ts';
import { everyFigure } from './everyFigure.ts';
import { fixture } from './fixture.ts';

const COLOURS: Readonly<Record<Value, string>> = { light: '#ece3cf', medium: '#86a8b0', dark: '#2a4560' };

function swatches(value: Value): { readonly figure: Figure; readonly inks: readonly Ink[] } {
  const inks = Array.from({ length: 10 }, (_, i) => {
    return { fabric: `${value}${i}`, colour: COLOURS[value], hatch: hatchFor(i, value) };
  });
  const marks = inks.map(({ fabric }, i) => {
    const x = i * 1.2;
    const outline = [
      { x, y: 0 },
      { x: x + 1, y: 0 },
      { x: x + 1, y: 1 },
      { x, y: 1 },
    ];
    return { kind: 'area', outlines: [outline], fabric, tone: 'full', edge: 'patch' } as const;
  });
  return { figure: { width: 11.8, height: 1, marks, alt: '' }, inks };
}

const PENS = [
  { plainInk: false, hatched: false },
  { plainInk: false, hatched: true },
  { plainInk: true, hatched: true },
];

function shown(title: string, figure: Figure, points: number, inks: readonly Ink[]): string {
  const scale = points / POINTS_PER_INCH / Math.max(figure.width, figure.height);
  const { width, height } = figureSize(figure, scale);
  const cells = PENS.map((pen) => {
    const svg = figureToSvg(figure, { ...pen, scale, inks, letterFont: "'Source Sans 3'" });
    const inPoints = svg.replace(/ width="([\d.]+)" height="([\d.]+)"/, ' width="$1pt" height="$2pt"');
    return `<div style="width:${width}pt;height:${height}pt">${inPoints}</div>`;
  });
  return `<h2>${title}</h2><div class="row">${cells.join('')}</div>`;
}

const own = fixture();
const hatches = (['light', 'medium', 'dark'] as const).map((value) => {
  const { figure, inks } = swatches(value);
  return shown(`hatches, ${value}`, figure, 250, inks);
});
const figures = everyFigure(own).map(({ name, figure, points }) => shown(name, figure, points, own.inks));
const font = process.argv[2];
const face =
  font === undefined
    ? ''
    : `@font-face{font-family:'Source Sans 3';font-weight:600;src:url(data:font/ttf;base64,${readFileSync(font, 'base64')})}`;
const style = `${face}body{margin:16px;font:12px sans-serif}h2{font-size:10px;margin:14px 0 4px}.row{display:flex;gap:24px}`;
console.log(`<!doctype html><meta charset="utf-8"><title>Figures</title><style>${style}</style>`);
console.log([...hatches, ...figures].join('\n'));
