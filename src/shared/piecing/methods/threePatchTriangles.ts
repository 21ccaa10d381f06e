import { type Work, workOf } from '../allowance/work.ts';
import type { Method, Scale, Stage } from '../method.ts';
import type { Unit } from '../piecing.ts';
import {
  squareCuts,
  squareForHalves,
  squareForQuarters,
  squaresScene,
  type Triangles,
  triangleLines,
  wholeSquares,
} from './cutTriangles.ts';
import { openedTo, sewnOn } from './joins.ts';
import { ofKind } from './ofKind.ts';
import { asScene, beside } from './picture.ts';
import { sizeWords, unfinishedSize } from './sums.ts';
import { trimStageOf } from './trimmed.ts';

type ThreePatch = Extract<Unit, { kind: 'three-patch' }>;

/** Half a square and two quarters: one square cut once for the halves, squares cut twice for the quarters. */
export const threePatchTriangles: Method = {
  id: 'three-patch-triangles',
  name: 'Three-patch quarter-square triangles from cut triangles',
  source:
    'Squares cut once: finished and s(2 + √2) for a seam s, ⅞″ for ¼″; cut twice: finished and s(2 + 2√2), 1¼″; ' +
    'up to the ruler; computed, and common practice',
  makes: (unit) => unit.kind === 'three-patch',
  plan(unit, scale) {
    const three = ofKind(unit, 'three-patch');
    const lines = linesOf(three, scale);
    const units = wholeSquares(lines);
    const unfinished = unfinishedSize(three.width, three.height, scale);
    const work = workFor(three, scale);
    const trim = trimStageOf(work, unfinished, {
      words: [
        'Press the seam towards the large triangle. Trim each unit to ',
        ...sizeWords(three, unfinished),
        ', with the long seam running from corner to corner and the short one into a third.',
      ],
      alt: 'One large triangle and two small ones make a square, with trimming lines.',
      arrows: [[QUARTERS, HALF]],
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

const [HALF, TOP, LEFT, QUARTERS] = [new Set([0]), new Set([1]), new Set([2]), new Set([1, 2])];

function linesOf({ roles, width }: ThreePatch, scale: Scale): readonly Triangles[] {
  const [half, top, left] = roles;
  const large = squareForHalves(width, scale);
  const small = squareForQuarters(width, scale);
  return triangleLines([
    { role: half, square: large, inUnit: 1, from: 2, use: 'square cut once' },
    { role: top, square: small, inUnit: 1, from: 4, use: 'square cut twice' },
    { role: left, square: small, inUnit: 1, from: 4, use: 'square cut twice' },
  ]);
}

/** The cloth beyond the unit's edge: of the quarters on their long side, of the half on its short ones. */
function workFor(three: ThreePatch, scale: Scale): Work {
  const finished = three.width * scale.grid;
  const inset = scale.seam * Math.SQRT2;
  const quarter = (squareForQuarters(three.width, scale).value - finished) / 2 - inset;
  const half = (squareForHalves(three.width, scale).value - finished - inset) / 2;
  return workOf(three, scale.grid, { seam: scale.seam, rim: (patch) => (patch === 0 ? half : quarter) });
}

function cut(lines: readonly Triangles[], units: number): Stage {
  const words = [
    'Cut the squares for the large triangles once from corner to corner, and the others on both diagonals.',
  ];
  const alt = 'Squares with one cut from corner to corner, and squares with cuts along both diagonals.';
  return { words, scene: squaresScene(lines, units, alt) };
}

function sew(work: Work): readonly Stage[] {
  const gap = work.drawing.width / 4;
  return [
    {
      words: [
        'Lay the two small triangles of a unit right sides together and sew them along one short side: the same side, and ' +
          'the same fabric on top, for every unit.',
      ],
      scene: asScene(sewnOn(work, LEFT, TOP), 'Two small triangles right sides together, sewn along one short side.'),
    },
    {
      words: ['Open each pair and press its seam to one side.'],
      scene: asScene(
        beside(gap, openedTo(work, LEFT, TOP)),
        'The two small triangles opened to one large triangle; an arrow shows the pressing.',
      ),
    },
    {
      words: ['Lay a pair and a large triangle right sides together and sew them along the long side.'],
      scene: asScene(sewnOn(work, QUARTERS, HALF), 'A large triangle face down on the pair, sewn along the long side.'),
    },
  ];
}
