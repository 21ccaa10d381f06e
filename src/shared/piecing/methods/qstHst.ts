import type { Traced } from '../../measure/traced.ts';
import { type Work, workOf } from '../allowance/work.ts';
import type { Cut, Method, Scale, Stage } from '../method.ts';
import type { Unit } from '../piecing.ts';
import type { Cloth } from '../scene.ts';
import { laidOut, squareForQuarters } from './cutTriangles.ts';
import { type Pair, pairOf } from './hst.ts';
import { markedSquare, opened } from './hstStages.ts';
import { ofKind } from './ofKind.ts';
import { asScene, beside, moved, picture, together } from './picture.ts';
import { at, cloth, faceToFace, falling, press, rectangle, rising } from './pieces.ts';
import { seamOf, sizeWords, unfinishedSize } from './sums.ts';
import { trimStageOf } from './trimmed.ts';

type Qst = Extract<Unit, { kind: 'qst' }>;

/**
 * Quarter-square triangles from two half-square triangles laid right sides together and sewn on both sides of the other
 * diagonal. The two units of a pair come out as each other's mirror image; they are the same unit, turned, only when two
 * triangles that face each other are of one fabric.
 */
export const qstHst: Method = {
  id: 'qst-hst',
  name: 'Quarter-square triangles from two half-square triangles',
  source:
    'Squares: finished and s(2 + 2√2) for a seam s, up to the ruler: 1¼″ for ¼″; computed, and guild block instructions',
  makes: (unit) => unit.kind === 'qst' && comesOutAlike(unit),
  plan(unit, scale) {
    const qst = ofKind(unit, 'qst');
    const square = squareForQuarters(qst.width, scale);
    const pairs = pairsOf(qst, scale);
    const unfinished = unfinishedSize(qst.width, qst.height, scale);
    const stages = [
      mark(pairs, square.value),
      sewSquares(pairs, square, scale),
      sewPair(qst, square.value, scale),
      cutApart(qst, square.value, scale),
      trim(qst, square.value, scale),
    ];
    return { cuts: cutsOf(pairs, square), yield: 2 * pairs.length, unfinished, trimmed: true, stages };
  },
};

function comesOutAlike({ roles: [top, right, bottom, left] }: Qst): boolean {
  return (top === bottom || right === left) && top !== right && bottom !== left;
}

/** The half-square triangles: one pair of squares when both of a unit are alike, else two. */
function pairsOf({ roles }: Qst, scale: Scale): readonly Pair[] {
  const [top, right, bottom, left] = roles;
  const lower = pairOf({ roles: [top, right] }, scale);
  return top === bottom && right === left ? [lower] : [lower, pairOf({ roles: [left, bottom] }, scale)];
}

function cutsOf(pairs: readonly Pair[], square: Traced): readonly Cut[] {
  const roles = pairs.flatMap((pair) => pair.roles);
  return [...new Set(roles)].map((role) => ({
    role,
    width: square,
    height: square,
    count: roles.filter((other) => other === role).length,
    patches: 4,
    use: 'square',
  }));
}

function mark(pairs: readonly Pair[], side: number): Stage {
  const shown = pairs.flatMap((pair) => [
    picture({
      cloth: [cloth(pair.upper, rectangle(0, 0, side, side), 'wrong')],
      lines: [rising('marked', side, side)],
    }),
    picture({ cloth: [cloth(pair.lower, rectangle(0, 0, side, side))] }),
  ]);
  const [pair] = pairs as readonly [Pair];
  const which = pairs.every(({ byValue }) => byValue) ? markedSquare(pair) : 'one square';
  const words =
    pairs.length === 1 ? `On the wrong side of ${markedSquare(pair)}` : `On the wrong side of ${which} of each pair`;
  const alt = 'Pairs of squares of the same size; one of each pair lies wrong side up with its diagonal drawn.';
  return { words: [`${words} draw a line from corner to corner.`], scene: laidOut(shown, alt) };
}

function sewSquares(pairs: readonly Pair[], square: Traced, scale: Scale): Stage {
  const { seam } = scale;
  const side = square.value;
  const inset = seam * Math.SQRT2;
  const lines = [rising('marked', side, side), rising('sewn', side, side - inset), rising('sewn', side, side + inset)];
  const open = side - inset;
  const shown = pairs.map((pair) => {
    const sewn = together(faceToFace(pair.lower, pair.upper, side, side), picture({ lines }));
    const towards = pair.pressTo === 'second' ? at(open, open) : at(0, 0);
    const arrow = picture({ arrows: [press(at(open / 2, open / 2), towards, open / 3)] });
    return beside(side / 6, sewn, together(opened(pair, side, seam), arrow));
  });
  const way = pairs.every(({ byValue }) => byValue) ? 'towards the darker fabric' : 'to one side, as the arrow shows';
  const words = [
    'Lay each pair right sides together and sew ',
    seamOf(scale),
    ` from the line, on both sides of it. Cut on the line, open and press the seam ${way}: two half-square triangles. Do ` +
      'not trim them yet, but cut off their ears.',
  ];
  const alt = 'A pair right sides together with a seam on each side of its diagonal, and one half of it opened.';
  return { words, scene: laidOut(shown, alt) };
}

/** Two half-square triangles as they lie on each other: the lower one's fabrics, and the wrong side of the upper one's. */
function layers({ roles: [top, right, bottom, left] }: Qst, size: number) {
  const triangle = (first: boolean) =>
    first ? [at(0, 0), at(size, 0), at(0, size)] : [at(size, 0), at(size, size), at(0, size)];
  return {
    lower: [cloth(top, triangle(true)), cloth(right, triangle(false))],
    upper: [cloth(left, triangle(true), 'wrong'), cloth(bottom, triangle(false), 'wrong')],
  };
}

function sewPair(qst: Qst, square: number, scale: Scale): Stage {
  const size = square - scale.seam * Math.SQRT2;
  const inset = scale.seam * Math.SQRT2;
  const { lower, upper } = layers(qst, size);
  const lines = [falling('marked', size, 0), falling('sewn', size, inset), falling('sewn', size, -inset)];
  const shown = beside(size / 6, picture({ cloth: lower }), picture({ cloth: upper, lines }));
  const words = [
    'Lay the half-square triangles right sides together in twos, unlike fabrics facing each other, the seams pushed snugly ' +
      'against each other. Draw the other diagonal, and sew ',
    seamOf(scale),
    ' from it, on both sides.',
  ];
  const alt = 'A half-square triangle, and another lying face down with a seam on each side of its drawn diagonal.';
  return { words, scene: asScene(shown, alt) };
}

function cutApart({ roles: [, , bottom, left] }: Qst, square: number, scale: Scale): Stage {
  const inset = scale.seam * Math.SQRT2;
  const size = square - inset;
  const middle = at(size / 2, size / 2);
  const [a, b, c, d] = [at(0, 0), at(size, 0), at(size, size), at(0, size)];
  const half = (pieces: readonly Cloth[], sewn: number, away: number) =>
    moved(picture({ cloth: pieces, lines: [falling('sewn', size, sewn)] }), at(away, -away));
  const upper = [cloth(left, [a, b, middle], 'wrong'), cloth(bottom, [b, c, middle], 'wrong')];
  const lower = [cloth(left, [a, middle, d], 'wrong'), cloth(bottom, [d, middle, c], 'wrong')];
  const apart = [half(upper, -inset, size * APART), half(lower, inset, -size * APART)];
  const cut = picture({ lines: [falling('cut', size, 0)] });
  const alt = 'The pair cut apart along the drawn diagonal; each half has a seam beside the cut.';
  return { words: ['Cut on the drawn line: two units from each pair.'], scene: asScene(together(...apart, cut), alt) };
}

/** How far halves that were cut apart are drawn from the cut, as a share of the square. */
const APART = 0.06;

function trim(qst: Qst, square: number, scale: Scale): Stage {
  const finished = qst.width * scale.grid;
  const size = square - 2 * scale.seam * Math.SQRT2;
  const work: Work = workOf(qst, scale.grid, { seam: scale.seam, rim: () => (size - finished) / 2 });
  const unfinished = unfinishedSize(qst.width, qst.height, scale);
  return trimStageOf(work, unfinished, {
    words: [
      'Open each unit and press its seam to one side. Trim to ',
      ...sizeWords(qst, unfinished),
      ', with the seams running from corner to corner and crossing in the middle.',
    ],
    alt: 'Four triangles about a middle, with trimming lines; their seams run into the corners.',
    arrows: [[new Set([0, 1]), new Set([2, 3])]],
  });
}
