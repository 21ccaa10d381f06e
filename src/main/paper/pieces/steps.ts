import type { Step } from '../../../shared/writing/book.ts';
import type { Desk } from '../desk.ts';
import type { FigureRow } from '../figures.ts';
import { columns } from '../sheet.ts';
import type { Content, Piece } from './piece.ts';
import { belowWords, besideWords, scalesOf, stepFigures } from './stepFigures.ts';
import { stepNumber, stepWords } from './stepWords.ts';

/** Figures may be drawn so much smaller when a run of steps would else just not fit its page. */
const SMALLER = [1, 0.9, 0.82] as const;

/**
 * Numbered steps, each whole with its figures: beside its words, or below them when there are many. No step of a run
 * stands alone on a page when it can be helped.
 * @param above what stands above them on their page, points
 */
export function steps(desk: Desk, all: readonly Step[], firstNumber: number, above = 0): Piece[] {
  const scales = scalesOf(desk, all);
  const tried = SMALLER.map(
    (share) => () =>
      setSteps(
        desk,
        all,
        firstNumber,
        scales.map((scale) => times(scale, share)),
      ),
  );
  const [asTheyAre] = tried;
  const fits = (pieces: readonly Piece[]) => above + heightOf(pieces) <= desk.sheet.frameHeight;
  for (const set of tried) {
    const pieces = set();
    if (fits(pieces)) return pieces;
  }
  return asTheyAre?.() ?? [];
}

function times(scale: number | undefined, share: number): number | undefined {
  return scale === undefined ? undefined : scale * share;
}

function heightOf(pieces: readonly Piece[]): number {
  return pieces.reduce((sum, { before, height }) => sum + before + height, 0);
}

/** The last two steps stay together, and the first two of a longer run. */
function keptWithNext(index: number, many: number): boolean {
  return (many > 2 && index === many - 2) || (many > 3 && index === 0);
}

function setSteps(
  desk: Desk,
  all: readonly Step[],
  firstNumber: number,
  scales: readonly (number | undefined)[],
): Piece[] {
  const holder = { tag: 'L' } as const;
  return all.map((step, index) => {
    const { words, figures } = setStep(desk, step, scales[index]);
    const label: Content = { tag: 'Lbl', items: stepNumber(desk, firstNumber + index) };
    const body: Content = { tag: 'LBody', items: [], inside: [...words.content, ...figures.content] };
    return {
      height: Math.max(words.height, figures.height),
      before: index === 0 ? 12 : 22,
      content: [{ tag: 'LI', items: [], inside: [label, body] }],
      decor: [],
      keepWithNext: keptWithNext(index, all.length),
      holder,
    };
  });
}

function setStep(desk: Desk, step: Step, most: number | undefined): { words: FigureRow; figures: FigureRow } {
  const beside = stepFigures(desk, step) === 'beside';
  const words = stepWords(desk, step, columns(desk.sheet, beside ? 3 : 4));
  return { words, figures: beside ? besideWords(desk, step, most) : belowWords(desk, step, most, words.height) };
}
