import type { Method, MethodPlan, Scale, Stage } from '../method.ts';
import { type Hst, isSquareHst, type Pair, pairPlan, squareForTwo } from './hst.ts';
import { halves, markOne, pressStage, trimStage } from './hstStages.ts';
import { ofKind } from './ofKind.ts';
import { asScene, picture, spread, together } from './picture.ts';
import { at, faceToFace, rising } from './pieces.ts';
import { seamOf } from './sums.ts';

/** Half-square triangles from a pair of squares sewn on both sides of one diagonal. */
export const hstTwo: Method = {
  id: 'hst-two',
  name: 'Half-square triangles, two at a time',
  source: 'Finished and s(2 + √2) for a seam s, up to the ruler: ⅞″ for ¼″; computed, and common practice',
  makes: isSquareHst,
  plan: (unit, scale) => twoAtATime(ofKind(unit, 'hst'), scale),
};

/** How two are made from one pair of squares. */
export function twoAtATime(hst: Hst, scale: Scale): MethodPlan {
  const square = squareForTwo(hst, scale);
  return pairPlan(hst, scale, {
    square,
    leg: square.value,
    yield: 2,
    stages: (pair, unfinished) => [
      markOne(pair, square.value),
      sewStage(pair, square.value, scale),
      cutStage(pair, square.value, scale),
      pressStage(pair, square.value, scale.seam),
      trimStage(pair, square.value, scale.seam, unfinished),
    ],
  });
}

function sewStage(pair: Pair, side: number, scale: Scale): Stage {
  const inset = scale.seam * Math.SQRT2;
  const lines = [rising('marked', side, side), rising('sewn', side, side - inset), rising('sewn', side, side + inset)];
  const words = [
    'Lay the squares right sides together, edges matched. Sew ',
    seamOf(scale),
    ' from the line, on both sides of it.',
  ];
  const alt = 'The two squares right sides together; a seam on each side of the drawn diagonal.';
  return { words, scene: asScene(together(faceToFace(pair.lower, pair.upper, side, side), picture({ lines })), alt) };
}

function cutStage(pair: Pair, side: number, scale: Scale): Stage {
  const apart = spread(at(side / 2, side / 2), halves(pair, side, scale.seam, 'rising'));
  const cut = picture({ lines: [rising('cut', side, side)] });
  const alt = 'The pair cut apart along the drawn diagonal; each half has a seam beside the cut.';
  return { words: ['Cut on the drawn line: two units.'], scene: asScene(together(apart, cut), alt) };
}
