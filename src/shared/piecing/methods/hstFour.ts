import { plus, rounded, type Traced } from '../../measure/traced.ts';
import type { Method, Scale, Stage } from '../method.ts';
import { type Hst, isSquareHst, type Pair, pairPlan } from './hst.ts';
import { diagonals, markBoth, pressStage, trimStage } from './hstStages.ts';
import { ofKind } from './ofKind.ts';
import { asScene, picture, spread, together } from './picture.ts';
import { at, cloth, line, rectangle } from './pieces.ts';
import { multiple, roomyUnfinished, seamOf, toTrim, twoSeams } from './sums.ts';

/**
 * Half-square triangles from a pair of squares sewn together all the way round and cut along both diagonals. Each quarter
 * opens to a square whose diagonal is the square's side without its two seams.
 */
export const hstFour: Method = {
  id: 'hst-four',
  name: 'Half-square triangles, four at a time',
  source: 'Squares: √2 × unfinished and two seams, up to the ruler; computed. Outer edges lie on the bias',
  makes: isSquareHst,
  plan(unit, scale) {
    const hst = ofKind(unit, 'hst');
    const square = squareForFour(hst, scale);
    const side = square.value;
    const leg = side / Math.SQRT2;
    return pairPlan(hst, scale, {
      square,
      leg,
      yield: 4,
      stages: (pair, unfinished) => [
        markBoth(pair, side),
        sewStage(pair, side, scale),
        cutStage(pair, side, scale),
        withBias(pressStage(pair, leg, scale.seam)),
        trimStage(pair, leg, scale.seam, unfinished),
      ],
    });
  },
};

function squareForFour(hst: Hst, scale: Scale): Traced {
  const across = multiple(Math.SQRT2, plusToTrim(roomyUnfinished(hst.width, scale), scale));
  return rounded(plus(across, twoSeams(scale)), scale.step, 'up');
}

function plusToTrim(length: Traced, scale: Scale): Traced {
  const more = toTrim(scale);
  return more.length === 0 ? length : plus(length, ...more);
}

function sewStage(pair: Pair, side: number, scale: Scale): Stage {
  const { seam } = scale;
  const square = rectangle(0, 0, side, side);
  const round = rectangle(seam, seam, side - 2 * seam, side - 2 * seam);
  const pile = picture({
    cloth: [cloth(pair.lower, square), cloth(pair.upper, square, 'wrong')],
    lines: [...diagonals(side, 'marked'), ...round.map((from, i) => line('sewn', from, round[(i + 1) % 4] ?? from))],
  });
  const words = [
    'Lay the squares right sides together, edges matched. Sew all the way round, ',
    seamOf(scale),
    ' from the edges, and turn at each corner.',
  ];
  const alt = 'The two squares right sides together, sewn all the way round; the diagonals are drawn.';
  return { words, scene: asScene(pile, alt) };
}

function cutStage(pair: Pair, side: number, { seam }: Scale): Stage {
  const corners = rectangle(0, 0, side, side);
  const middle = at(side / 2, side / 2);
  const inner = rectangle(seam, seam, side - 2 * seam, side - 2 * seam);
  const quarters = corners.map((from, i) => {
    const next = (i + 1) % 4;
    const sewn = line('sewn', inner[i] ?? from, inner[next] ?? from);
    return picture({ cloth: [cloth(pair.upper, [from, corners[next] ?? from, middle], 'wrong')], lines: [sewn] });
  });
  const words = ['Without moving the pair, cut on both drawn lines: four units.'];
  const alt = 'The pair cut apart along both diagonals into four; each has a seam along its long side.';
  const cut = picture({ lines: diagonals(side, 'cut') });
  return { words, scene: asScene(together(spread(middle, quarters), cut), alt) };
}

function withBias({ words, scene }: Stage): Stage {
  const careful =
    ' All four outer edges lie on the bias and stretch: set the iron down and lift it, do not push it along.';
  return { words: [...words, careful], scene };
}
