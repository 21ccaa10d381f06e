import type { Point } from '../../drawing/turn.ts';
import type { Cloth, Scene, SceneArrow, SceneLine, SceneNumber } from '../scene.ts';

/** A scene being put together, anywhere on the table: inches, y downwards. */
export interface Picture {
  readonly cloth: readonly Cloth[];
  readonly lines: readonly SceneLine[];
  readonly arrows: readonly SceneArrow[];
  readonly numbers: readonly SceneNumber[];
}

/** A picture of what is given and nothing else. */
export function picture(parts: Partial<Picture>): Picture {
  return { cloth: [], lines: [], arrows: [], numbers: [], ...parts };
}

/** Everything in one picture; what comes later lies on what came before. */
export function together(...pictures: readonly Picture[]): Picture {
  return {
    cloth: pictures.flatMap((one) => one.cloth),
    lines: pictures.flatMap((one) => one.lines),
    arrows: pictures.flatMap((one) => one.arrows),
    numbers: pictures.flatMap((one) => one.numbers),
  };
}

/** The picture moved over the table. */
export function moved({ cloth, lines, arrows, numbers }: Picture, by: Point): Picture {
  const move = (point: Point): Point => ({ x: point.x + by.x, y: point.y + by.y });
  const ends = <T extends SceneLine | SceneArrow>(one: T): T => ({ ...one, from: move(one.from), to: move(one.to) });
  return {
    cloth: cloth.map((piece) => ({ ...piece, corners: piece.corners.map(move) })),
    lines: lines.map(ends),
    arrows: arrows.map(ends),
    numbers: numbers.map((number) => ({ ...number, at: move(number.at) })),
  };
}

interface Bounds {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

function boundsOf({ cloth, lines, arrows }: Picture): Bounds {
  const ends = [...lines, ...arrows].flatMap(({ from, to }) => [from, to]);
  const points = [...cloth.flatMap(({ corners }) => corners), ...ends];
  const xs = points.map(({ x }) => x);
  const ys = points.map(({ y }) => y);
  return { left: Math.min(...xs), top: Math.min(...ys), right: Math.max(...xs), bottom: Math.max(...ys) };
}

/** Pictures in a row with a gap of so many inches between, their middles level. */
export function beside(gap: number, ...pictures: readonly Picture[]): Picture {
  let x = 0;
  const placed = pictures.map((one) => {
    const { left, right, top, bottom } = boundsOf(one);
    const here = moved(one, { x: x - left, y: -(top + bottom) / 2 });
    x += right - left + gap;
    return here;
  });
  return together(...placed);
}

/** Pictures one below another with a gap of so many inches between, their left edges level. */
export function below(gap: number, ...pictures: readonly Picture[]): Picture {
  let y = 0;
  const placed = pictures.map((one) => {
    const { left, top, bottom } = boundsOf(one);
    const here = moved(one, { x: -left, y: y - top });
    y += bottom - top + gap;
    return here;
  });
  return together(...placed);
}

/**
 * Pieces that were cut apart, drawn moved away from `centre`, each the further the further its own middle lies: pieces
 * on two sides of a straight cut through the centre stay on their sides.
 */
export function spread(centre: Point, pieces: readonly Picture[]): Picture {
  const SHARE = 0.2;
  const apart = pieces.map((piece) => {
    const corners = piece.cloth[0]?.corners ?? [centre];
    const mean = (of: (point: Point) => number) => corners.reduce((sum, point) => sum + of(point), 0) / corners.length;
    const middle = { x: mean((point) => point.x), y: mean((point) => point.y) };
    return moved(piece, { x: (middle.x - centre.x) * SHARE, y: (middle.y - centre.y) * SHARE });
  });
  return together(...apart);
}

/** The finished scene: the picture moved so that it starts at 0, 0. */
export function asScene(one: Picture, alt: string): Scene {
  const { left, top, right, bottom } = boundsOf(one);
  const { numbers, ...rest } = moved(one, { x: -left, y: -top });
  const scene = { width: right - left, height: bottom - top, alt, ...rest };
  return numbers.length === 0 ? scene : { ...scene, numbers };
}
