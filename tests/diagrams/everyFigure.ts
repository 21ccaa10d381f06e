import { backingFigure } from '../../src/shared/diagrams/backingFigure.ts';
import { biasSquareFigure, biasStripsFigure, biasTubeFigure } from '../../src/shared/diagrams/biasFigure.ts';
import { blockFigure } from '../../src/shared/diagrams/blockFigure.ts';
import { blockStepFigures } from '../../src/shared/diagrams/blockSteps.ts';
import { borderFigure, borderIds } from '../../src/shared/diagrams/borderFigure.ts';
import { colouringFigure } from '../../src/shared/diagrams/colouringFigure.ts';
import { cuttingFigure, type StripToCut } from '../../src/shared/diagrams/cuttingFigure.ts';
import type { Figure } from '../../src/shared/diagrams/figure.ts';
import { inARow } from '../../src/shared/diagrams/inARow.ts';
import { quiltFigure } from '../../src/shared/diagrams/quiltFigure.ts';
import { quiltLayoutFigure } from '../../src/shared/diagrams/quiltLayoutFigure.ts';
import { quiltRowsFigure } from '../../src/shared/diagrams/quiltRowsFigure.ts';
import { sceneFigure } from '../../src/shared/diagrams/sceneFigure.ts';
import { type SheetToCut, sheetsFigure } from '../../src/shared/diagrams/sheetsFigure.ts';
import { unitFigure } from '../../src/shared/diagrams/unitFigure.ts';
import type { fixture } from './fixture.ts';
import { GEESE_STAGE, HST_SEWN } from './scenes.ts';

/** A figure under the name it is talked about by, and how long its longer side is on paper, points. */
export interface NamedFigure {
  readonly name: string;
  readonly points: number;
  readonly figure: Figure;
}

type Fixture = ReturnType<typeof fixture>;

const STRIPS: readonly StripToCut[] = [
  { height: 4.5, times: 3, pieces: [piece('A', 4.5, 4.5, 8), piece('D', 2.5, 2.5, 1)] },
  { height: 2.5, times: 6, pieces: [piece('B', 2.5, 2.5, 12), piece('C', 4.5, 2.5, 2)] },
  { height: 1.5, times: 12, pieces: [piece('E', 1.5, 1.5, 26)] },
];

const SHEETS: readonly SheetToCut[] = [
  {
    times: 3,
    lengthwise: false,
    strips: STRIPS.slice(0, 1).map((strip) => ({ ...strip, pieces: [piece('A', 4.5, 4.5, 4)] })),
  },
  { times: 1, lengthwise: true, strips: [{ height: 2.5, times: 5, pieces: [piece('B', 2.5, 2.5, 8)] }] },
];

function piece(letter: string, width: number, height: number, count: number) {
  return { letter, width, height, count };
}

function unitFigures({ blocks, grid }: Fixture): readonly NamedFigure[] {
  const { fabricOf, piecing } = blocks[0] as Fixture['blocks'][number];
  const stages = inARow([sceneFigure(HST_SEWN, fabricOf), sceneFigure(GEESE_STAGE, fabricOf)]);
  const units = piecing.units.map((unit) => {
    const letters = unit.kind === 'geese' ? ['A', 'B', 'B'] : 'C';
    const measures = { width: `${unit.width + 0.5}″`, height: `${unit.height + 0.5}″` };
    return { name: unit.key, points: 90, figure: unitFigure(unit, grid, fabricOf, { letters, measures }) };
  });
  return [{ name: 'stages', points: 220, figure: stages }, ...units];
}

function blockFigures({ blocks, grid }: Fixture): readonly NamedFigure[] {
  return blocks.flatMap(({ name, piecing, fabricOf, pressing }) => {
    const letters = Object.fromEntries(piecing.units.map((unit, i) => [unit.key, String(i + 1)]));
    const steps = blockStepFigures(piecing, grid, fabricOf, pressing);
    return [
      { name, points: 130, figure: blockFigure(piecing, grid, fabricOf) },
      { name: `${name}, units`, points: 150, figure: blockFigure(piecing, grid, fabricOf, { letters, units: true }) },
      ...steps.map(({ kind, figure }, i) => ({ name: `${name}, step ${i + 1}: ${kind}`, points: 150, figure })),
    ];
  });
}

function quiltFigures({ blocks, quilt, pressing }: Fixture): readonly NamedFigure[] {
  const backing = { fabric: 'tide', width: 51, height: 59, panels: 2, seams: 'across' } as const;
  const bias = { fabric: 'tide', width: 30, height: 30, strip: 2.5 };
  return [
    { name: 'quilt', points: 300, figure: quiltFigure(quilt, blocks, { borders: true, lines: true }) },
    { name: 'layout', points: 300, figure: quiltLayoutFigure(quilt, blocks) },
    { name: 'rows', points: 300, figure: quiltRowsFigure(quilt, blocks, pressing) },
    ...borderIds(quilt).map((id) => ({ name: `border ${id}`, points: 260, figure: borderFigure(quilt, blocks, id) })),
    { name: 'colouring', points: 260, figure: colouringFigure(quilt, blocks) },
    { name: 'cutting', points: 230, figure: cuttingFigure('tide', 40, STRIPS) },
    { name: 'sheets', points: 230, figure: sheetsFigure('tide', { width: 18, height: 21 }, SHEETS) },
    { name: 'backing', points: 170, figure: backingFigure(backing, { width: 43, height: 51 }) },
    { name: 'bias strips', points: 170, figure: biasStripsFigure({ ...bias, height: 52 }) },
    { name: 'bias square', points: 120, figure: biasSquareFigure(bias) },
    { name: 'bias tube', points: 150, figure: biasTubeFigure(bias) },
  ];
}

/** One figure of every kind. */
export function everyFigure(of: Fixture): readonly NamedFigure[] {
  return [...unitFigures(of), ...blockFigures(of), ...quiltFigures(of)];
}
