import { ALL_TURNS, type Point, type Turn, turnPoint } from './turn.ts';

/**
 * How an act is repeated over a block while it is drawn: mirrored left and right, top and bottom, over a diagonal, both ways,
 * turned by quarters, or all eight.
 */
export type Ways = 'once' | 'across' | 'down' | 'diagonal' | 'both' | 'turned' | 'all';

export const ALL_WAYS: readonly Ways[] = ['once', 'across', 'down', 'diagonal', 'both', 'turned', 'all'];

function turn(quarters: Turn['quarters'], mirrored = false): Turn {
  return { quarters, mirrored };
}

const TURNS: Readonly<Record<Ways, readonly Turn[]>> = {
  once: [turn(0)],
  across: [turn(0), turn(0, true)],
  down: [turn(0), turn(2, true)],
  diagonal: [turn(0), turn(1, true)],
  both: [turn(0), turn(0, true), turn(2, true), turn(2)],
  turned: [turn(0), turn(1), turn(2), turn(3)],
  all: ALL_TURNS,
};

/**
 * The turns that repeat an act, the one that leaves it where it is first. A block that is not square has only those that
 * fit into it.
 */
export function turnsOf(ways: Ways, width: number, height: number): readonly Turn[] {
  return width === height ? TURNS[ways] : TURNS[ways].filter(({ quarters }) => quarters % 2 === 0);
}

/** Whether a block of this shape can be drawn on in these ways: all their turns fit into it. */
export function waysFit(ways: Ways, width: number, height: number): boolean {
  return turnsOf(ways, width, height).length === TURNS[ways].length;
}

/** A place of a block and its images, the place itself first, each once. */
export function imagesOf(place: Point, ways: Ways, width: number, height: number): readonly Point[] {
  const all = turnsOf(ways, width, height).map((by) => turnPoint(place, by, width, height));
  return all.filter((one, i) => all.findIndex((other) => Math.hypot(one.x - other.x, one.y - other.y) < 1e-9) === i);
}
