import { same } from '../../measure/inches.ts';
import { minus, named, over, plus, rounded, type Traced } from '../../measure/traced.ts';
import { type Part, type Work, workOf } from '../allowance/work.ts';
import type { Cut, Method, Scale, Stage } from '../method.ts';
import type { Unit } from '../piecing.ts';
import { squareCuts, squaresScene, type Triangles, triangleLines, wholeSquares } from './cutTriangles.ts';
import { openedPart, pressArrow, sewnOn } from './joins.ts';
import { ofKind } from './ofKind.ts';
import { asScene, picture, together } from './picture.ts';
import { cloth, rectangle } from './pieces.ts';
import { cutUp, finishedLength, halfSquareAdd, larger, roomyLength, seamOf, twoSeams, unfinishedSize } from './sums.ts';
import { trimStageOf } from './trimmed.ts';

type SquareInSquare = Extract<Unit, { kind: 'square-in-square' }>;

/** A square on its point with a triangle sewn to each side, from squares cut once. */
export const squareInSquareTriangles: Method = {
  id: 'square-in-square-triangles',
  name: 'Square in a square, with cut triangles',
  source:
    'Corners: squares of the finished middle ÷ √2 and s(2 + √2) for a seam s, ⅞″ for ¼″, cut once, up to the ruler; ' +
    'computed, and guild formula',
  makes: (unit) => unit.kind === 'square-in-square' && same(unit.width, unit.height),
  plan(unit, scale) {
    const square = ofKind(unit, 'square-in-square');
    const middle = middleOf(square, scale);
    const lines = linesOf(square, middle, scale);
    const units = wholeSquares(lines);
    const unfinished = unfinishedSize(square.width, square.height, scale);
    const work = workFor(square, middle, scale);
    const centre: Cut = {
      role: square.role,
      width: middle,
      height: middle,
      count: units,
      patches: 1,
      use: 'middle square',
    };
    const trim = trimStageOf(work, unfinished, {
      words: [
        'Press the seams towards the corners. Trim each unit to ',
        unfinished.width,
        ' square, ',
        seamOf(scale),
        ' beyond the points of the middle.',
      ],
      alt: 'A square on its point with four corner triangles, and trimming lines a seam beyond its points.',
      arrows: [
        [FIRST_THREE, RIGHT_TOP],
        [FIRST_THREE, LEFT_BOTTOM],
      ],
    });
    return {
      cuts: [centre, ...squareCuts(lines, units)],
      yield: units,
      unfinished,
      trimmed: true,
      stages: [cut(square, middle, lines, units), ...sew(work), trim],
    };
  },
};

/** The patches: the middle, then the corners clockwise from the top left. Opposite corners are sewn on together. */
const patch = (index: number): Part => new Set([index]);
const [MIDDLE, LEFT_TOP, RIGHT_TOP, RIGHT_BOTTOM, LEFT_BOTTOM] = [patch(0), patch(1), patch(2), patch(3), patch(4)];
const FIRST_TWO: Part = new Set([0, 1]);
const FIRST_THREE: Part = new Set([0, 1, 3]);

/** The finished middle as drawn: the unit's side over √2. */
function drawnMiddle({ width }: SquareInSquare, scale: Scale): Traced {
  return named(over(finishedLength(width, scale), ROOT), 'finished middle');
}

const ROOT: Traced = { value: Math.SQRT2, unit: 'count', how: { kind: 'given' } };

/** The middle as cut: to the nearest mark, for nothing of it is trimmed. */
function middleOf(square: SquareInSquare, scale: Scale): Traced {
  return rounded(plus(drawnMiddle(square, scale), twoSeams(scale)), scale.step, 'near');
}

/** What a corner must fill: half of the unit, and more where the middle had to be cut smaller than drawn. */
function linesOf(square: SquareInSquare, middle: Traced, scale: Scale): readonly Triangles[] {
  const half = named(over(drawnMiddle(square, scale), ROOT), 'finished corner');
  const sewn = named(minus(middle, twoSeams(scale)), 'finished middle as cut');
  const left = named(minus(roomyLength(square.width, scale), over(sewn, ROOT)), 'left for the corner');
  const side = cutUp(scale, larger(half, left), halfSquareAdd(scale));
  return triangleLines(
    square.roles.map((role) => ({ role, square: side, inUnit: 1, from: 2, use: 'square cut once' })),
  );
}

/** Drawn about the middle as it is cut, so that seams are where they come out. */
function workFor(square: SquareInSquare, middle: Traced, scale: Scale): Work {
  const { seam } = scale;
  const sewn = middle.value - 2 * seam;
  const side = linesOf(square, middle, scale)[0]?.square.value ?? 0;
  const drawn = sewn * Math.SQRT2;
  const reach = (sewn / 2 + side / Math.SQRT2 - seam) / Math.SQRT2;
  return workOf(square, drawn / square.width, { seam, rim: () => reach - drawn / 2 });
}

function cut(square: SquareInSquare, middle: Traced, lines: readonly Triangles[], units: number): Stage {
  const { value } = middle;
  const middles = Array.from({ length: units }, () =>
    picture({ cloth: [cloth(square.role, rectangle(0, 0, value, value))] }),
  );
  const words = ['Cut each square for the corners once from corner to corner: two triangles.'];
  const alt = 'The middle square, and squares for the corners with a cut from corner to corner.';
  return { words, scene: squaresScene(lines, units, alt, middles) };
}

function sew(work: Work): readonly Stage[] {
  const two = together(sewnOn(work, MIDDLE, LEFT_TOP), {
    ...sewnOn(work, MIDDLE, RIGHT_BOTTOM),
    cloth: sewnOn(work, MIDDLE, RIGHT_BOTTOM).cloth.slice(1),
  });
  const opened = together(
    openedPart(work, FIRST_THREE),
    picture({ arrows: [pressArrow(work, MIDDLE, LEFT_TOP), pressArrow(work, FIRST_TWO, RIGHT_BOTTOM)] }),
  );
  const last = sewnOn(work, FIRST_THREE, RIGHT_TOP);
  const other = sewnOn(work, FIRST_THREE, LEFT_BOTTOM);
  const upper = other.cloth.slice(FIRST_THREE.size);
  return [
    {
      words: [
        'Lay triangles on two opposite sides of the middle square, right sides together, their points sticking out alike at ' +
          'both ends. Sew them on.',
      ],
      scene: asScene(two, 'Two triangles face down on opposite sides of the middle square, sewn.'),
    },
    {
      words: ['Open them and press the seams towards the corners. Trim the small ears that stick out.'],
      scene: asScene(opened, 'The middle square with two corner triangles pressed out.'),
    },
    {
      words: ['Sew triangles to the other two sides in the same way.'],
      scene: asScene(
        together(last, picture({ cloth: upper, lines: other.lines })),
        'Two more triangles face down on the other two sides, sewn.',
      ),
    },
  ];
}
