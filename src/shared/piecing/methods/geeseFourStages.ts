import type { TracedSize } from '../../measure/traced.ts';
import type { Scale, Stage } from '../method.ts';
import { asScene, below, beside, moved, type Picture, picture, together } from './picture.ts';
import { at, cloth, falling, press, rectangle, rising, trimming } from './pieces.ts';
import { seamOf } from './sums.ts';

/** What the figures of flying geese four at a time are drawn from: roles, squares as cut, inches. */
export interface FourGeese {
  readonly goose: string;
  readonly sky: string;
  readonly large: number;
  readonly small: number;
  readonly scale: Scale;
  readonly unfinished: TracedSize;
}

export function geeseFourStages(four: FourGeese): readonly Stage[] {
  return [mark(four), sewTwo(four), openTwo(four), sewOne(four), trim(four)];
}

/** The distance, along an edge of a square, between its drawn diagonal and a seam beside it. */
function insetOf({ scale }: FourGeese): number {
  return scale.seam * Math.SQRT2;
}

function mark({ goose, sky, large, small }: FourGeese): Stage {
  const gap = large / 10;
  const marked = picture({
    cloth: [cloth(sky, rectangle(0, 0, small, small), 'wrong')],
    lines: [rising('marked', small, small)],
  });
  const two = below(gap, marked, marked);
  const one = picture({ cloth: [cloth(goose, rectangle(0, 0, large, large))] });
  const words = ['On the wrong side of each small square draw a line from corner to corner.'];
  const alt = 'A large square, and four small squares that lie wrong side up with a diagonal drawn on each.';
  return { words, scene: asScene(beside(gap, one, two, two), alt) };
}

/** The large square with small ones on its top left and bottom right corners; the drawn lines run as one. */
function sewTwo(four: FourGeese): Stage {
  const { goose, sky, large, small } = four;
  const inset = insetOf(four);
  const squareAt = (place: number) => cloth(sky, rectangle(place, place, small, small), 'wrong');
  const pile = picture({
    cloth: [cloth(goose, rectangle(0, 0, large, large)), squareAt(0), squareAt(large - small)],
    lines: [falling('marked', large, 0), falling('sewn', large, inset), falling('sewn', large, -inset)],
  });
  const words = [
    'Lay two small squares on opposite corners of the large square, right sides together, edges matched, so that their ' +
      'lines run as one. They overlap a little in the middle. Sew ',
    seamOf(four.scale),
    ' from the line, on both sides of it.',
  ];
  const alt = 'Two small squares on opposite corners of the large one; a seam on each side of the drawn diagonal.';
  return { words, scene: asScene(pile, alt) };
}

/** The lower left half after cutting, its two small triangles pressed out. */
function halfOpened(four: FourGeese): Picture {
  const { goose, sky, large, small } = four;
  const inset = insetOf(four);
  const leg = small - inset;
  const face = (place: number) =>
    cloth(sky, [at(place, place + inset), at(place + leg, place + inset), at(place + leg, place + inset + leg)]);
  const half = cloth(goose, [at(0, 0), at(large, large), at(0, large)]);
  return picture({ cloth: [half, face(0), face(large - small)] });
}

function openTwo(four: FourGeese): Stage {
  const inset = insetOf(four);
  const arrows = [four.large / 4, (four.large * 3) / 4].map((place) =>
    press(at(place - inset / 2, place + inset / 2), at(place, place), four.small / 4),
  );
  const words = ['Cut on the drawn line: two pieces. Press the small triangles out, the seams towards them.'];
  const alt = 'One of the two pieces: a large triangle with two small triangles pressed out along its long side.';
  return { words, scene: asScene(together(halfOpened(four), picture({ arrows })), alt) };
}

function sewOne(four: FourGeese): Stage {
  const { sky, large, small } = four;
  const inset = insetOf(four);
  const square = picture({
    cloth: [cloth(sky, rectangle(0, 0, small, small), 'wrong')],
    lines: [rising('marked', small, small), rising('sewn', small, small - inset), rising('sewn', small, small + inset)],
  });
  const words = [
    'Lay a small square on the free corner of each piece, right sides together, edges matched, its line running out ' +
      'between the two small triangles. Sew ',
    seamOf(four.scale),
    ' from the line, on both sides of it.',
  ];
  const alt = 'A small square on the square corner of the piece; a seam on each side of its drawn line.';
  return { words, scene: asScene(together(halfOpened(four), moved(square, at(0, large - small))), alt) };
}

/** One unit opened, its raw long edge along y = 0 and its point towards smaller y; the right sky was sewn last. */
function unitOpened(four: FourGeese): Picture {
  const { goose, sky, large, small } = four;
  const inset = insetOf(four);
  const top = inset - small;
  const whole = cloth(goose, [at(0, 0), at(large / 2, -large / 2), at(large, 0)]);
  const left = cloth(sky, [at(inset, 0), at(inset, top), at(small, top)]);
  const right = cloth(sky, [at(large - inset, 0), at(large - small, top), at(large - inset, top)]);
  return picture({ cloth: [whole, left, right] });
}

function trim(four: FourGeese): Stage {
  const { large, small, scale, unfinished } = four;
  const { width, height } = unfinished;
  const inset = insetOf(four);
  const point = inset - large / 2;
  const lines = trimming((large - width.value) / 2, point - scale.seam, width.value, height.value);
  const seamMiddle = at(large * 0.75, inset - large / 4);
  const arrows = [press(seamMiddle, at(large, -large / 2 + inset), small / 4)];
  const words = [
    'Cut on the drawn lines and press the last triangles out: four units. Trim each to ',
    width,
    ' × ',
    height,
    ', with the point of the goose ',
    seamOf(scale),
    ' below the top edge.',
  ];
  const alt = 'One goose between two sky triangles, with trimming lines; its point lies a seam below the top one.';
  return { words, scene: asScene(together(unitOpened(four), picture({ lines, arrows })), alt) };
}
