import { named, type Traced } from '../../measure/traced.ts';
import type { Method, Scale, Stage } from '../method.ts';
import { isSquareHst, type Pair, pairPlan, squareForTwo } from './hst.ts';
import { diagonals, halves, markBoth, pressStage, trimStage } from './hstStages.ts';
import { ofKind } from './ofKind.ts';
import { asScene, moved, picture, spread, together } from './picture.ts';
import { at, cloth, falling, line, rectangle, rising } from './pieces.ts';
import { multiple, seamOf } from './sums.ts';

/** Half-square triangles from a pair of large squares sewn on both sides of both diagonals and cut into eighths. */
export const hstEight: Method = {
  id: 'hst-eight',
  name: 'Half-square triangles, eight at a time',
  source: 'Twice the square for two at a time: 2 × (finished + ⅞″) for a seam of ¼″; computed, and common practice',
  makes: isSquareHst,
  plan(unit, scale) {
    const hst = ofKind(unit, 'hst');
    const forTwo = named(squareForTwo(hst, scale), 'for two units');
    const square = multiple(2, forTwo);
    const side = square.value;
    return pairPlan(hst, scale, {
      square,
      leg: forTwo.value,
      yield: 8,
      stages: (pair, unfinished) => [
        markBoth(pair, side),
        sewStage(pair, side, scale),
        cutStage(pair, forTwo, scale),
        pressStage(pair, forTwo.value, scale.seam),
        trimStage(pair, forTwo.value, scale.seam, unfinished),
      ],
    });
  },
};

function sewStage(pair: Pair, side: number, scale: Scale): Stage {
  const inset = scale.seam * Math.SQRT2;
  const square = rectangle(0, 0, side, side);
  const sewn = [-inset, inset].flatMap((off) => [rising('sewn', side, side + off), falling('sewn', side, off)]);
  const pile = picture({
    cloth: [cloth(pair.lower, square), cloth(pair.upper, square, 'wrong')],
    lines: [...diagonals(side, 'marked'), ...sewn],
  });
  const words = [
    'Lay the squares right sides together, edges matched. Sew ',
    seamOf(scale),
    ' from each line, on both sides of it.',
  ];
  const alt = 'The two squares right sides together; a seam on each side of both drawn diagonals.';
  return { words, scene: asScene(pile, alt) };
}

/** Four quarters, each a sewn pair of small squares cut in two along its own piece of a diagonal. */
function cutStage(pair: Pair, forTwo: Traced, { seam }: Scale): Stage {
  const half = forTwo.value;
  const quarter = (x: number, y: number, diagonal: 'rising' | 'falling') =>
    halves(pair, half, seam, diagonal).map((piece) => moved(piece, at(x * half, y * half)));
  const eighths = [
    quarter(0, 0, 'falling'),
    quarter(1, 0, 'rising'),
    quarter(1, 1, 'falling'),
    quarter(0, 1, 'rising'),
  ];
  const apart = spread(at(half, half), eighths.flat());
  const side = 2 * half;
  const middles = [line('cut', at(half, 0), at(half, side)), line('cut', at(0, half), at(side, half))];
  const words = [
    'Without moving the pair, cut it in half down and across, ',
    forTwo,
    ' from its edges. Then cut on the drawn lines: eight units.',
  ];
  const alt = 'The pair cut apart down its middle, across its middle and along both diagonals, into eight.';
  return { words, scene: asScene(together(apart, picture({ lines: [...diagonals(side, 'cut'), ...middles] })), alt) };
}
