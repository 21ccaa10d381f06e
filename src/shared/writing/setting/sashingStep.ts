import { sashingFigure } from '../../diagrams/sashingFigure.ts';
import { count } from '../../measure/traced.ts';
import type { WorkedSize } from '../../workroom/workedOut.ts';
import type { CaptionedFigure, Step, Words } from '../book.ts';
import { type Desk, perSize } from '../desk.ts';
import { listed, strong } from '../words.ts';
import { letterOf, type SashKind, sashKinds } from './sashings.ts';

/** How sashings of several strips are made; nothing when every sashing is one strip. */
export function sashingSteps(desk: Desk): readonly Step[] {
  const sizes = desk.sizes.filter((size) => severalStrips(size).length > 0);
  const shown = sizes.includes(desk.shown) ? desk.shown : sizes[0];
  if (shown === undefined) return [];
  return severalStrips(shown).map((kind) => makeStep(desk, kind, shown, sizes));
}

function severalStrips(size: WorkedSize): readonly SashKind[] {
  return sashKinds(size).filter(({ strips }) => strips.length > 1);
}

const PLACES: Readonly<Record<SashKind['run'], string>> = { down: 'between columns', across: 'between rows' };

function makeStep(desk: Desk, kind: SashKind, shown: WorkedSize, sizes: readonly WorkedSize[]): Step {
  const letters = kind.strips.map((strip) => letterOf(shown, strip));
  const order: Words = letters.flatMap((letter, i) => [i === 0 ? '' : ', ', strong(letter)]);
  const figure: CaptionedFigure = { figure: sashingFigure(kind.strips), caption: [listed(letters)] };
  return {
    words: [
      [
        `For each sashing ${PLACES[kind.run]} sew strips `,
        ...order,
        ` side by side, in this order from ${kind.run === 'down' ? 'left to right' : 'top to bottom'}. Press the seams one way, the same in all.`,
      ],
    ],
    figures: [figure],
    perSize: perSize(
      desk,
      'Make',
      sizes.map((size) => {
        const own = severalStrips(size).find(({ run, reach }) => run === kind.run && reach === kind.reach);
        return [size, count(own?.count ?? 0, 'sashings')];
      }),
    ),
  };
}
