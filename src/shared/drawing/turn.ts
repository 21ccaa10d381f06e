/**
 * How something lies: mirrored left to right first (or not), then turned clockwise by quarters. The eight of them are
 * the symmetries of the square.
 */
export interface Turn {
  readonly quarters: 0 | 1 | 2 | 3;
  readonly mirrored: boolean;
}

export interface Point {
  readonly x: number;
  readonly y: number;
}

/** An upright rectangle; x and y are its top left corner, y grows downwards. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export const UNTURNED: Turn = { quarters: 0, mirrored: false };

function quarters(n: number): Turn['quarters'] {
  return (((n % 4) + 4) % 4) as Turn['quarters'];
}

/** The turn that is `first`, then `second`. */
export function afterTurn(first: Turn, second: Turn): Turn {
  // A mirror turns the sense of whatever quarter turn came before it.
  const carried = second.mirrored ? -first.quarters : first.quarters;
  return { quarters: quarters(carried + second.quarters), mirrored: first.mirrored !== second.mirrored };
}

/** The turn that undoes this one. */
export function undoTurn(turn: Turn): Turn {
  return turn.mirrored ? turn : { quarters: quarters(-turn.quarters), mirrored: false };
}

/** Where a point of a `width` × `height` thing goes when the thing is turned; the turned thing again starts at 0, 0. */
export function turnPoint(point: Point, turn: Turn, width: number, height: number): Point {
  const x = turn.mirrored ? width - point.x : point.x;
  const y = point.y;
  if (turn.quarters === 0) return { x, y };
  if (turn.quarters === 1) return { x: height - y, y: x };
  if (turn.quarters === 2) return { x: width - x, y: height - y };
  return { x: y, y: width - x };
}

/** Where a box of a `width` × `height` thing goes when the thing is turned. */
export function turnBox(box: Box, turn: Turn, width: number, height: number): Box {
  const a = turnPoint({ x: box.x, y: box.y }, turn, width, height);
  const b = turnPoint({ x: box.x + box.width, y: box.y + box.height }, turn, width, height);
  return { x: Math.min(a.x, b.x), y: Math.min(a.y, b.y), width: Math.abs(a.x - b.x), height: Math.abs(a.y - b.y) };
}

/** The width and height of a turned `width` × `height` thing. */
export function turnSize(
  width: number,
  height: number,
  turn: Turn,
): { readonly width: number; readonly height: number } {
  return turn.quarters % 2 === 0 ? { width, height } : { width: height, height: width };
}

/** Every way a thing can lie. */
export const ALL_TURNS: readonly Turn[] = [false, true].flatMap((mirrored) =>
  ([0, 1, 2, 3] as const).map((n) => ({ quarters: n, mirrored })),
);
