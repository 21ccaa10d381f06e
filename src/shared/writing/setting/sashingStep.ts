import { sashingFigure } from '../../diagrams/sashingFigure.ts';
import { count } from '../../measure/traced.ts';
import type { WorkedSize } from '../../workroom/workedOut.ts';
import type { Step, Words } from '../book.ts';
import { type Desk, perSize } from '../desk.ts';
import { type SashKind, sashKinds, stripLetters } from './sashings.ts';

/** How sashings of several strips are made, a step for each place they go to; nothing when every sashing is one strip. */
export function sashingSteps(desk: Desk): readonly Step[] {
  const sizes = desk.sizes.filter((size) => severalStrips(size).length > 0);
  const shown = sizes.includes(desk.shown) ? desk.shown : sizes[0];
  if (shown === undefined) return [];
  const places = new Map<string, SashKind[]>();
  for (const kind of severalStrips(shown)) places.set(placeOf(kind), [...(places.get(placeOf(kind)) ?? []), kind]);
  return [...places.values()].map((kinds) => makeStep(desk, kinds, shown, sizes));
}

function severalStrips(size: WorkedSize): readonly SashKind[] {
  return sashKinds(size).filter(({ strips }) => strips.length > 1);
}

function placeOf({ strips, reach }: SashKind): string {
  return `${strips[0]?.words ?? ''} ${reach}`;
}

/** @param kinds those of one place: on point, sashings that run through have several lengths */
function makeStep(desk: Desk, kinds: readonly SashKind[], shown: WorkedSize, sizes: readonly WorkedSize[]): Step {
  const [first] = kinds as readonly [SashKind, ...SashKind[]];
  const words = (first.strips[0]?.words ?? '').toLowerCase();
  const order: Words = kinds.flatMap((kind, i) => [i === 0 ? '' : '; ', ...stripLetters(shown, kind)]);
  const way = first.run === 'down' ? 'left to right' : 'top to bottom';
  return {
    words: [
      [
        `For each ${words} sew strips `,
        ...order,
        ` side by side, in this order from ${way}. Press the seams one way, the same in all.`,
      ],
    ],
    figures: [{ figure: sashingFigure(first.strips), caption: stripLetters(shown, first) }],
    perSize: perSize(
      desk,
      'Make',
      sizes.map((size) => {
        const own = severalStrips(size).filter((kind) => placeOf(kind) === placeOf(first));
        return [
          size,
          count(
            own.reduce((sum, kind) => sum + kind.count, 0),
            'sashings',
          ),
        ];
      }),
    ),
  };
}
