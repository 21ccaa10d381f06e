import type { Point } from '../../drawing/turn.ts';
import type { Corner } from '../../recipe/schema.ts';
import type { Scene } from '../scene.ts';
import { asScene, below, beside, type Picture, picture, together } from './picture.ts';
import { at, cloth, falling, line, press, rectangle, rising } from './pieces.ts';

/** Figures of stitch-and-flip: squares laid on the corners of a rectangle, sewn on their diagonals and flipped open. */

/** A rectangle and the squares for its corners, in the order they are sewn; sizes as cut, inches. */
export interface Flip {
  readonly role: string;
  readonly width: number;
  readonly height: number;
  readonly corners: readonly FlipCorner[];
  readonly seam: number;
}

export interface FlipCorner {
  readonly at: Corner;
  readonly role: string;
  readonly side: number;
}

/** What is cut: the rectangle, and beside it its squares, wrong side up, marked. */
export function markedPieces(flip: Flip, alt: string): Scene {
  const gap = Math.min(flip.width, flip.height) / 5;
  const squares = flip.corners.map((corner) => {
    const { role, side } = corner;
    return picture({ cloth: [cloth(role, rectangle(0, 0, side, side), 'wrong')], lines: [diagonal(corner)] });
  });
  const columns: Picture[] = [];
  for (let i = 0; i < squares.length; i += 2) columns.push(below(gap, ...squares.slice(i, i + 2)));
  return asScene(beside(gap, base(flip), ...columns), alt);
}

/** Across the corner it is laid on: rising at top left and bottom right, falling at the other two. */
function diagonal({ at: corner, side }: FlipCorner) {
  const rises = corner === 'top-left' || corner === 'bottom-right';
  return rises ? rising('marked', side, side) : falling('marked', side, 0);
}

/** The whole rectangle: what is cut away under a flipped corner cannot be seen, because the flipped triangle covers it. */
function base({ role, width, height }: Flip): Picture {
  return picture({ cloth: [cloth(role, rectangle(0, 0, width, height))] });
}

/** A point so far across and down from a corner, towards the middle of the rectangle. */
function from(corner: Corner, { width, height }: Flip, across: number, down: number): Point {
  return at(corner.endsWith('left') ? across : width - across, corner.startsWith('top') ? down : height - down);
}

/** A square laid on its corner, sewn on the diagonal; cut a seam nearer the corner. */
function laid(corner: FlipCorner, flip: Flip): Picture {
  const { side } = corner;
  const spot = (across: number, down: number) => from(corner.at, flip, across, down);
  const leg = side - flip.seam * Math.SQRT2;
  const square = [spot(0, 0), spot(side, 0), spot(side, side), spot(0, side)];
  return picture({
    cloth: [cloth(corner.role, square, 'wrong')],
    lines: [line('sewn', spot(side, 0), spot(0, side)), line('cut', spot(leg, 0), spot(0, leg))],
  });
}

/** The square's inner half flipped over its seam: it fills the corner again. */
function opened(corner: FlipCorner, flip: Flip): Picture {
  const spot = (across: number, down: number) => from(corner.at, flip, across, down);
  return picture({ cloth: [cloth(corner.role, [spot(0, 0), spot(corner.side, 0), spot(0, corner.side)])] });
}

function arrow(corner: FlipCorner, flip: Flip): Picture {
  const { side } = corner;
  const middle = from(corner.at, flip, side / 2, side / 2);
  return picture({ arrows: [press(middle, from(corner.at, flip, 0, 0), side / 4)] });
}

/** The corners before `index` flipped open, and that one laid on and sewn. */
export function sewnCorner(flip: Flip, index: number, alt: string): Scene {
  const done = flip.corners.slice(0, index).map((corner) => opened(corner, flip));
  const next = flip.corners.slice(index, index + 1).map((corner) => laid(corner, flip));
  return asScene(together(base(flip), ...done, ...next), alt);
}

/** The first `many` corners flipped open, an arrow on those from `arrowsFrom` on. */
export function openedCorners(flip: Flip, many: number, arrowsFrom: number, alt: string): Scene {
  const done = flip.corners.slice(0, many);
  const arrows = done.slice(arrowsFrom).map((corner) => arrow(corner, flip));
  return asScene(together(base(flip), ...done.map((corner) => opened(corner, flip)), ...arrows), alt);
}
