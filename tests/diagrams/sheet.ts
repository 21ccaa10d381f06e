/**
 * Draws every kind of figure at print size on one page, in colour and in black and white, to be looked at:
 * `node tests/diagrams/sheet.ts [FONT.ttf] > sheet.html`, then open it in a browser.
 */
import { readFileSync } from 'node:fs';
import { figureSize, figureToSvg } from '../../src/main/paper/figurePen.ts';
import { backingFigure } from '../../src/shared/diagrams/backingFigure.ts';
import { blockFigure } from '../../src/shared/diagrams/blockFigure.ts';
import { blockStepFigures } from '../../src/shared/diagrams/blockSteps.ts';
import { borderFigure, borderIds } from '../../src/shared/diagrams/borderFigure.ts';
import { colouringFigure } from '../../src/shared/diagrams/colouringFigure.ts';
import { cuttingFigure } from '../../src/shared/diagrams/cuttingFigure.ts';
import type { Figure, Ink } from '../../src/shared/diagrams/figure.ts';
import { hatchFor } from '../../src/shared/diagrams/hatches.ts';
import { inARow } from '../../src/shared/diagrams/inARow.ts';
import { quiltFigure } from '../../src/shared/diagrams/quiltFigure.ts';
import { quiltLayoutFigure } from '../../src/shared/diagrams/quiltLayoutFigure.ts';
import { quiltRowsFigure } from '../../src/shared/diagrams/quiltRowsFigure.ts';
import { sceneFigure } from '../../src/shared/diagrams/sceneFigure.ts';
import { unitFigure } from '../../src/shared/diagrams/unitFigure.ts';
import { fixture } from './fixture.ts';
import { GEESE_STAGE, HST_SEWN } from './scenes.ts';

const { blocks, quilt, pressing, inks, grid } = fixture();

function swatches(value: 'light' | 'medium' | 'dark'): { figure: Figure; inks: Ink[] } {
  const colours = { light: '#ECE3CF', medium: '#86A8B0', dark: '#2A4560' };
  const made = Array.from(
    { length: 10 },
    (_, i): Ink => ({ fabric: `${value}${i}`, colour: colours[value], hatch: hatchFor(i, value) }),
  );
  const marks = made.map((ink, i) => {
    const x = i * 1.2;
    const outline = [
      { x, y: 0 },
      { x: x + 1, y: 0 },
      { x: x + 1, y: 1 },
      { x, y: 1 },
    ];
    return { kind: 'area', outlines: [outline], fabric: ink.fabric, tone: 'full', edge: 'patch' } as const;
  });
  return { figure: { width: 11.8, height: 1, marks, alt: '' }, inks: made };
}

function shown(title: string, figure: Figure, points: number, own: readonly Ink[] = inks): string {
  const scale = points / 72 / Math.max(figure.width, figure.height);
  const { width, height } = figureSize(figure, scale);
  const pens = [
    { plainInk: false, hatched: false },
    { plainInk: false, hatched: true },
    { plainInk: true, hatched: true },
  ];
  const cells = pens.map(pen => {
    const svg = figureToSvg(figure, { ...pen, scale, inks: own, letterFont: "'Source Sans 3'" });
    return `<div style="width:${width}pt;height:${height}pt">${svg.replace(/width="([\d.]+)" height="([\d.]+)"/, 'width="$1pt" height="$2pt"')}</div>`;
  });
  return `<h2>${title}</h2><div class="row">${cells.join('')}</div>`;
}

const parts: string[] = [];
for (const value of ['light', 'medium', 'dark'] as const) {
  const { figure, inks: own } = swatches(value);
  parts.push(shown(`hatches, ${value}`, figure, 320, own));
}
const fabricOf = blocks[0]?.fabricOf ?? {};
parts.push(shown('stages', inARow([sceneFigure(HST_SEWN, fabricOf), sceneFigure(GEESE_STAGE, fabricOf)]), 220));
for (const unit of blocks[0]?.piecing.units ?? []) {
  const letters = unit.kind === 'geese' ? ['A', 'B', 'B'] : 'C';
  parts.push(
    shown(unit.key, unitFigure(unit, grid, fabricOf, { letters, measures: { width: '4½″', height: '2½″' } }), 90),
  );
}
for (const block of blocks) {
  const letters = Object.fromEntries(block.piecing.units.map((unit, i) => [unit.key, String(i + 1)]));
  parts.push(shown(block.name, blockFigure(block.piecing, grid, block.fabricOf), 130));
  parts.push(
    shown(`${block.name}, units`, blockFigure(block.piecing, grid, block.fabricOf, { letters, units: true }), 150),
  );
  for (const step of blockStepFigures(block.piecing, grid, block.fabricOf, block.pressing)) {
    parts.push(shown(`${block.name}: ${step.kind} ${step.path}`, step.figure, 150));
  }
}
parts.push(shown('quilt', quiltFigure(quilt, blocks, { borders: true, lines: true }), 300));
parts.push(shown('layout', quiltLayoutFigure(quilt, blocks), 300));
parts.push(shown('rows', quiltRowsFigure(quilt, blocks, pressing), 300));
for (const border of borderIds(quilt)) parts.push(shown(`border ${border}`, borderFigure(quilt, blocks, border), 260));
parts.push(shown('colouring', colouringFigure(quilt, blocks), 260));
const strips = [
  {
    height: 4.5,
    times: 3,
    pieces: [
      { letter: 'A', width: 4.5, height: 4.5, count: 8 },
      { letter: 'D', width: 2.5, height: 2.5, count: 1 },
    ],
  },
  {
    height: 2.5,
    times: 6,
    pieces: [
      { letter: 'B', width: 2.5, height: 2.5, count: 12 },
      { letter: 'C', width: 4.5, height: 2.5, count: 2 },
    ],
  },
  { height: 1.5, times: 12, pieces: [{ letter: 'E', width: 1.5, height: 1.5, count: 26 }] },
];
parts.push(shown('cutting', cuttingFigure('tide', 40, strips), 230));
parts.push(
  shown(
    'backing',
    backingFigure({ fabric: 'tide', width: 51, height: 59, panels: 2, seams: 'across' }, { width: 43, height: 51 }),
    170,
  ),
);

const font = process.argv[2];
const face =
  font === undefined
    ? ''
    : `@font-face{font-family:'Source Sans 3';font-weight:600;src:url(data:font/ttf;base64,${readFileSync(font, 'base64')})}`;
console.log(
  `<!doctype html><meta charset="utf-8"><style>${face}body{margin:16px;font:12px sans-serif}h2{font-size:10px;font-weight:400;margin:14px 0 4px}.row{display:flex;gap:24px}</style>${parts.join('\n')}`,
);
