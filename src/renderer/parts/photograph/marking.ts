import type { Point } from '../../../shared/drawing/turn.ts';
import type { Crop } from '../../../shared/pattern/photograph.ts';

/** Two marks of a ruler that lies in a picture, pixels of the picture. */
export interface Ruler {
  readonly from: Point;
  readonly to: Point;
}

/** A spot of the picture's place on screen as a spot of the picture, kept inside it. */
export function inPicture(
  at: Point,
  place: { readonly left: number; readonly top: number; readonly width: number; readonly height: number },
  picture: { readonly width: number; readonly height: number },
): Point {
  const along = (from: number, of: number, pixels: number) => Math.min(pixels, Math.max(0, (from / of) * pixels));
  return {
    x: along(at.x - place.left, place.width, picture.width),
    y: along(at.y - place.top, place.height, picture.height),
  };
}

/** The part between two corners, in whole pixels, at least one each way. */
export function cropBetween(a: Point, b: Point): Crop {
  const [left, right] = [Math.floor(Math.min(a.x, b.x)), Math.ceil(Math.max(a.x, b.x))];
  const [top, bottom] = [Math.floor(Math.min(a.y, b.y)), Math.ceil(Math.max(a.y, b.y))];
  return { x: left, y: top, width: Math.max(1, right - left), height: Math.max(1, bottom - top) };
}
