import type { Figure } from '../../shared/diagrams/figure.ts';
import type { Block, Book, CaptionedFigure, Section } from '../../shared/writing/book.ts';
import { figureToSvg } from '../paper/figurePen.ts';

/** The most a figure measures, inches of paper, when it says no scale of its own; cloth is never drawn larger than life. */
const MOST = { width: 6, height: 8 };

/** Letters in the type of the printed figures; a program without it takes its own plain letters. */
const LETTERS = 'Source Sans 3, sans-serif';

/** Every figure of a written pattern as an SVG file, by names that say where it stands: "step-05-2.svg". */
export function figureFiles(book: Book, plainInk: boolean): ReadonlyMap<string, Uint8Array> {
  const named = book.sections.flatMap(figuresOf);
  return new Map(
    named.map(([name, { figure, scale = ownScale(figure) }]) => {
      const svg = figureToSvg(figure, { scale, inks: book.inks, plainInk, letterFont: LETTERS });
      return [`${name}.svg`, Buffer.from(svg)];
    }),
  );
}

function ownScale({ width, height }: Figure): number {
  return Math.min(1, MOST.width / width, MOST.height / height);
}

type Named = readonly [name: string, figure: CaptionedFigure];

function figuresOf({ id, blocks }: Section): readonly Named[] {
  const loose = blocks.flatMap(looseFigures);
  const numbered = loose.map((figure, i): Named => [loose.length === 1 ? id : `${id}-${twoDigits(i + 1)}`, figure]);
  return [...numbered, ...blocks.flatMap(stepFigures)];
}

function looseFigures(block: Block): readonly CaptionedFigure[] {
  if (block.kind === 'figures') return block.figures;
  return block.kind === 'cover' || block.kind === 'whole-page-figure' ? [{ figure: block.figure }] : [];
}

function stepFigures(block: Block): readonly Named[] {
  if (block.kind !== 'steps') return [];
  return block.steps.flatMap(({ figures }, i) => {
    const step = `step-${twoDigits(block.firstNumber + i)}`;
    return figures.map((figure, j): Named => [j === 0 ? step : `${step}-${j + 1}`, figure]);
  });
}

function twoDigits(number: number): string {
  return String(number).padStart(2, '0');
}
