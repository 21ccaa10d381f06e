import { named, over } from '../../measure/traced.ts';
import { type Work, workOf } from '../allowance/work.ts';
import type { Method, Scale, Stage } from '../method.ts';
import {
  squareCuts,
  squareForQuartersAsHigh,
  squaresScene,
  type Triangles,
  triangleLines,
  wholeSquares,
} from './cutTriangles.ts';
import { type Geese, isTwiceAsWide } from './geese.ts';
import { openedTo, sewnOn } from './joins.ts';
import { ofKind } from './ofKind.ts';
import { asScene } from './picture.ts';
import { at } from './pieces.ts';
import { cutUp, halfSquareAdd, larger, roomyLength, seamOf, two, unfinishedSize } from './sums.ts';
import { trimStageOf } from './trimmed.ts';

/** Flying geese one by one: a goose from a quarter of a square, its sky from two halves of smaller ones. */
export const geeseTriangles: Method = {
  id: 'geese-triangles',
  name: 'Flying geese one by one, from cut triangles',
  source:
    'Goose: a square of finished width and s(2 + 2√2) for a seam s, cut twice, 1¼″ for ¼″; sky: squares of finished ' +
    'height and s(2 + √2), cut once, ⅞″; up to the ruler; computed, and common practice',
  makes: isTwiceAsWide,
  plan(unit, scale) {
    const geese = ofKind(unit, 'geese');
    const lines = linesOf(geese, scale);
    const units = wholeSquares(lines);
    const unfinished = unfinishedSize(geese.width, geese.height, scale);
    const work = workFor(geese, scale);
    const { width, height } = unfinished;
    const trim = trimStageOf(work, unfinished, {
      words: [
        'Open it and press the seam towards the sky. Trim each unit to ',
        width,
        ' × ',
        height,
        ', with the point of the goose ',
        seamOf(scale),
        ' below the top edge.',
      ],
      alt: 'One goose between two sky triangles, with trimming lines; its point lies a seam below the top one.',
      arrows: [[GOOSE_AND_LEFT, RIGHT]],
      corner: at((work.drawing.width - width.value) / 2, -scale.seam),
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

const [GOOSE, LEFT, RIGHT, GOOSE_AND_LEFT] = [new Set([0]), new Set([1]), new Set([2]), new Set([0, 1])];

/** The sky is as high as the goose and half as wide, whichever the ruler made larger. */
function linesOf({ roles, width, height }: Geese, scale: Scale): readonly Triangles[] {
  const [goose, sky] = roles;
  const large = squareForQuartersAsHigh(width, height, scale);
  const half = named(over(roomyLength(width, scale), two), 'half the finished width');
  const small = cutUp(scale, larger(roomyLength(height, scale), half), halfSquareAdd(scale));
  return triangleLines([
    { role: goose, square: large, inUnit: 1, from: 4, use: 'large square' },
    { role: sky, square: small, inUnit: 2, from: 2, use: 'small square' },
  ]);
}

/** The goose has its spare cloth at its long side, the sky at the sides and, half of what is left, at the top. */
function workFor(geese: Geese, scale: Scale): Work {
  const { grid, seam } = scale;
  const [large, small] = linesOf(geese, scale).map(({ square }) => square.value) as [number, number];
  const inset = seam * Math.SQRT2;
  const base = large / 2 - inset - geese.height * grid;
  const half = (geese.width * grid) / 2;
  const trimmed = unfinishedSize(geese.width, geese.height, scale).width.value / 2;
  const spare = small - inset - seam - trimmed;
  const rim: Work['rim'] = (patch, side) => {
    if (patch === 0) return base;
    return side === 'top' ? seam + spare / 2 : trimmed - half + spare / 2;
  };
  return workOf(geese, grid, { seam, rim });
}

function cut(lines: readonly Triangles[], units: number): Stage {
  const words = [
    'Cut each large square on both diagonals: the geese. Cut each small square once from corner to corner: their sky.',
  ];
  const alt = 'A large square with cuts along both diagonals, and small squares with one cut from corner to corner.';
  return { words, scene: squaresScene(lines, units, alt) };
}

function sew(work: Work): readonly Stage[] {
  return [
    {
      words: [
        'Lay a sky triangle on the left short side of a goose, right sides together, the corners at the bottom matched, and ' +
          'sew.',
      ],
      scene: asScene(sewnOn(work, GOOSE, LEFT), 'A small triangle face down on the left side of a large one, sewn.'),
    },
    {
      words: ['Open it and press the seam towards the sky.'],
      scene: asScene(openedTo(work, GOOSE, LEFT), 'The goose with its left sky triangle pressed out.'),
    },
    {
      words: ['Lay the other sky triangle on the right short side in the same way and sew.'],
      scene: asScene(
        sewnOn(work, GOOSE_AND_LEFT, RIGHT),
        'The second small triangle face down on the right side of the goose, sewn.',
      ),
    },
  ];
}
