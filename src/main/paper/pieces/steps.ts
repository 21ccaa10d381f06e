import type { Step } from '../../../shared/writing/book.ts';
import type { Desk } from '../desk.ts';
import type { FigureRow } from '../figures.ts';
import { columns } from '../sheet.ts';
import type { Content, Piece } from './piece.ts';
import { belowWords, besideWords, scalesOf, stepFigures } from './stepFigures.ts';
import { stepNumber, stepWords } from './stepWords.ts';

/** Numbered steps, each whole with its figures: beside its words, or below them when there are many. */
export function steps(desk: Desk, all: readonly Step[], firstNumber: number): Piece[] {
  const holder = { tag: 'L' } as const;
  const scales = scalesOf(desk, all);
  return all.map((step, index) => {
    const { words, figures } = setStep(desk, step, scales[index]);
    const label: Content = { tag: 'Lbl', items: stepNumber(desk, firstNumber + index) };
    const body: Content = { tag: 'LBody', items: [], inside: [...words.content, ...figures.content] };
    return {
      height: Math.max(words.height, figures.height),
      before: index === 0 ? 12 : 22,
      content: [{ tag: 'LI', items: [], inside: [label, body] }],
      decor: [],
      holder,
    };
  });
}

function setStep(desk: Desk, step: Step, most: number | undefined): { words: FigureRow; figures: FigureRow } {
  const beside = stepFigures(desk, step) === 'beside';
  const words = stepWords(desk, step, columns(desk.sheet, beside ? 3 : 4));
  return { words, figures: beside ? besideWords(desk, step, most) : belowWords(desk, step, most, words.height) };
}
