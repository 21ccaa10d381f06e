import { type Work, workOf } from '../allowance/work.ts';
import type { Method, Scale, Stage } from '../method.ts';
import type { Unit } from '../piecing.ts';
import {
  squareCuts,
  squareForQuarters,
  squaresScene,
  type Triangles,
  triangleLines,
  wholeSquares,
} from './cutTriangles.ts';
import { openedTo, sewnOn } from './joins.ts';
import { ofKind } from './ofKind.ts';
import { asScene, beside, together } from './picture.ts';
import { sizeWords, unfinishedSize } from './sums.ts';
import { trimStageOf } from './trimmed.ts';

type Qst = Extract<Unit, { kind: 'qst' }>;

/** Quarter-square triangles from squares cut on both diagonals: any four fabrics, in any order. */
export const qstTriangles: Method = {
  id: 'qst-triangles',
  name: 'Quarter-square triangles from cut triangles',
  source: 'Squares: finished and s(2 + 2√2) for a seam s, up to the ruler: 1¼″ for ¼″; computed, and common practice',
  makes: (unit) => unit.kind === 'qst',
  plan(unit, scale) {
    const qst = ofKind(unit, 'qst');
    const lines = linesOf(qst, scale);
    const units = wholeSquares(lines);
    const unfinished = unfinishedSize(qst.width, qst.height, scale);
    const [line] = lines as [Triangles];
    const beyond = (line.square.value - qst.width * scale.grid) / 2 - scale.seam * Math.SQRT2;
    const work = workOf(qst, scale.grid, { seam: scale.seam, rim: () => beyond });
    const trim = trimStageOf(work, unfinished, {
      words: [
        'Press that seam to one side as well. Trim each unit to ',
        ...sizeWords(qst, unfinished),
        ', with the seams running into its corners.',
      ],
      alt: 'Four triangles about a middle, with trimming lines; their seams run into the corners.',
      arrows: [[HALF, OTHER]],
    });
    return {
      cuts: squareCuts(lines, units),
      yield: units,
      unfinished,
      trimmed: true,
      stages: [cut(lines, units), ...sew(work), trim],
    };
  },
};

/** The two halves on both sides of the diagonal that falls to the right: top and right, bottom and left. */
const [TOP, RIGHT, BOTTOM, LEFT] = [new Set([0]), new Set([1]), new Set([2]), new Set([3])];
const [HALF, OTHER] = [new Set([0, 1]), new Set([2, 3])];

function linesOf({ roles, width }: Qst, scale: Scale): readonly Triangles[] {
  const square = squareForQuarters(width, scale);
  return triangleLines(roles.map((role) => ({ role, square, inUnit: 1, from: 4, use: 'square' })));
}

function cut(lines: readonly Triangles[], units: number): Stage {
  const words = ['Cut each square on both diagonals: four triangles.'];
  return { words, scene: squaresScene(lines, units, 'Squares of the same size with cuts along both diagonals.') };
}

function sew(work: Work): readonly Stage[] {
  const gap = work.drawing.width / 5;
  const pairs = beside(gap, sewnOn(work, TOP, RIGHT), sewnOn(work, BOTTOM, LEFT));
  const opened = beside(gap, openedTo(work, TOP, RIGHT), openedTo(work, BOTTOM, LEFT));
  return [
    {
      words: [
        'For each unit lay two triangles right sides together, twice, as shown, and sew each pair along one short side.',
      ],
      scene: asScene(pairs, 'Two pairs of triangles right sides together, each sewn along one short side.'),
    },
    {
      words: ['Open the pairs and press their seams as the arrows show, so that they will lie to opposite sides.'],
      scene: asScene(opened, 'The two pairs opened to large triangles; arrows show the pressing.'),
    },
    {
      words: ['Lay the pairs right sides together, the seams pushed snugly against each other, and sew the long side.'],
      scene: asScene(
        together(sewnOn(work, HALF, OTHER)),
        'The two large triangles right sides together, sewn along the long side.',
      ),
    },
  ];
}
