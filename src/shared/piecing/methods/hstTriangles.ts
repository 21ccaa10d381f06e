import type { Method, Stage } from '../method.ts';
import { isSquareHst, type Pair, pairPlan, squareForTwo } from './hst.ts';
import { halves, pressStage, trimStage } from './hstStages.ts';
import { ofKind } from './ofKind.ts';
import { asScene, beside, picture } from './picture.ts';
import { cloth, rectangle, rising } from './pieces.ts';

/** Half-square triangles from squares cut once from corner to corner before anything is sewn. */
export const hstTriangles: Method = {
  id: 'hst-triangles',
  name: 'Half-square triangles from cut triangles',
  source: 'Squares: finished and s(2 + √2) for a seam s, up to the ruler: ⅞″ for ¼″; computed, and common practice',
  makes: isSquareHst,
  plan(unit, scale) {
    const hst = ofKind(unit, 'hst');
    const square = squareForTwo(hst, scale);
    const side = square.value;
    return pairPlan(hst, scale, {
      square,
      leg: side,
      yield: 2,
      stages: (pair, unfinished) => [
        cutStage(pair, side),
        sewStage(pair, side, scale.seam),
        pressStage(pair, side, scale.seam),
        trimStage(pair, side, scale.seam, unfinished),
      ],
    });
  },
};

function cutStage(pair: Pair, side: number): Stage {
  const square = (role: string) =>
    picture({ cloth: [cloth(role, rectangle(0, 0, side, side))], lines: [rising('cut', side, side)] });
  const words = ['Cut each square once from corner to corner: two triangles of each fabric.'];
  const alt = 'Two squares of the same size with a cut from corner to corner.';
  return { words, scene: asScene(beside(side / 6, square(pair.upper), square(pair.lower)), alt) };
}

function sewStage(pair: Pair, side: number, seam: number): Stage {
  const [half] = halves(pair, side, seam, 'rising');
  const words = [
    'Lay a triangle of each fabric right sides together and sew them along the long side. It lies on the bias: do not pull.',
  ];
  const alt = 'Two triangles right sides together, sewn along the long side.';
  return { words, scene: asScene(half ?? picture({}), alt) };
}
