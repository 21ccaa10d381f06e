import type { Point } from '../../../shared/drawing/turn.ts';

/** How a drawing lies in its place on screen: pixels of one grid unit, and where the drawing's top left corner is. */
export interface Sight {
  readonly scale: number;
  readonly x: number;
  readonly y: number;
}

interface Extent {
  readonly width: number;
  readonly height: number;
}

/** Room for the ruler's numbers above and to the left, and a little air on the other sides, pixels. */
export const RULER = 22;
const AIR = 10;

/** The whole drawing, as large as its place. */
export function fitted(room: Extent, drawing: Extent): Sight {
  const [width, height] = [room.width - RULER - AIR, room.height - RULER - AIR];
  const scale = Math.max(1, Math.min(width / drawing.width, height / drawing.height));
  return {
    scale,
    x: RULER + Math.max(0, (width - drawing.width * scale) / 2),
    y: RULER + Math.max(0, (height - drawing.height * scale) / 2),
  };
}

/** How many times larger than fitted, at most. */
const LARGEST = 16;

/** Larger or smaller by a factor about a spot of the screen, which stays where it is; never smaller than fitted. */
export function zoomed(sight: Sight, by: number, spot: Point, fit: Sight): Sight {
  const scale = Math.min(fit.scale * LARGEST, Math.max(fit.scale, sight.scale * by));
  if (scale <= fit.scale * (1 + 1e-9)) return fit;
  const times = scale / sight.scale;
  return { scale, x: spot.x - (spot.x - sight.x) * times, y: spot.y - (spot.y - sight.y) * times };
}

/** Moved by pixels, but never so far that the drawing leaves its place. */
export function panned(sight: Sight, by: Point, room: Extent, drawing: Extent): Sight {
  return {
    scale: sight.scale,
    x: held(sight.x + by.x, drawing.width * sight.scale, room.width),
    y: held(sight.y + by.y, drawing.height * sight.scale, room.height),
  };
}

function held(at: number, length: number, room: number): number {
  const least = Math.min(RULER, room - AIR - length);
  return Math.min(Math.max(at, least), Math.max(RULER, room - AIR - length));
}

/** Moved so far that a place can be seen, with some of what lies around it. */
export function bringing(sight: Sight, place: Point, room: Extent, drawing: Extent): Sight {
  const { x, y } = toScreen(sight, place);
  const edge = 40;
  const over = (at: number, length: number) =>
    at < RULER + edge ? RULER + edge - at : at > length - edge ? length - edge - at : 0;
  const by = { x: over(x, room.width), y: over(y, room.height) };
  return by.x === 0 && by.y === 0 ? sight : panned(sight, by, room, drawing);
}

/** Where a place of the drawing is on screen, pixels. */
export function toScreen({ scale, x, y }: Sight, place: Point): Point {
  return { x: x + place.x * scale, y: y + place.y * scale };
}

/** The place of the drawing at a spot of the screen. */
export function toPlace({ scale, x, y }: Sight, spot: Point): Point {
  return { x: (spot.x - x) / scale, y: (spot.y - y) / scale };
}
