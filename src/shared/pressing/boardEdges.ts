import { boardWork } from '../piecing/methods/board.ts';
import type { Board } from '../piecing/methods/boardSize.ts';
import { type Column, lyingSet } from '../piecing/methods/columns.ts';
import type { Edged, SeamEnd } from './ends.ts';
import type { Press } from './pressing.ts';

/** A unit of equal rectangles as its neighbours meet it: pressed as the ways of making it say, whichever is chosen. */
export function boardEdges(unit: Board): Edged {
  const { columns, toLeft, inRows } = boardWork(unit, { grid: 1, seam: 0, step: 1 });
  const { width, height } = unit;
  const [across, down] = inRows ? [height, width] : [width, height];
  const long = columns.slice(1).map((_, i): SeamEnd => {
    return { at: ((i + 1) * across) / columns.length, press: toLeft(i) ? 'left' : 'right' };
  });
  const [left, right] = [columnEnds(columns[0], down), columnEnds(columns.at(-1), down)];
  if (!inRows) return { width, height, ends: { top: long, bottom: long, left, right } };
  const turned = (ends: readonly SeamEnd[]) => ends.map(({ at, press }) => ({ at, press: EXCHANGED[press] }));
  return { width, height, ends: { left: turned(long), right: turned(long), top: turned(left), bottom: turned(right) } };
}

function columnEnds(column: Column | undefined, height: number): readonly SeamEnd[] {
  if (column === undefined) return [];
  const { pressedUp, roles } = lyingSet(column);
  return pressedUp.map((up, i) => ({ at: ((i + 1) * height) / roles.length, press: up ? 'up' : 'down' }));
}

/** Across and down exchanged. */
const EXCHANGED: Readonly<Record<Press, Press>> = {
  up: 'left',
  left: 'up',
  down: 'right',
  right: 'down',
  open: 'open',
};
