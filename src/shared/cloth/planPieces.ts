import { type Inches, longer } from '../measure/inches.ts';
import { times } from '../measure/traced.ts';
import type { House } from '../pattern/schema.ts';
import type { PieceLine } from './cloth.ts';
import { lastWidth, widthsFor } from './join.ts';
import type { Kind } from './strips/kinds.ts';

/** Equal pieces to be laid on the cloth, and the line of the chart they are for. */
export interface LetteredKind extends Kind {
  readonly letter: string;
}

/**
 * What is really laid on the cloth for one line of the chart.
 * - Pieces lie with the long side along the strip or, where that saves cloth, across it; those of a print that has a direction
 *   lie as they must.
 * - Strips for sets, for binding and for borders lie along the strip.
 * - Joined border strips are whole widths of cloth and one shorter end; those cut lengthwise stand upright in theirs.
 * - A piece wider than the cloth both ways is pieced from panels as a backing is; a finding says so elsewhere.
 */
export function laidFor(line: PieceLine, house: House): readonly LetteredKind[] {
  const { letter, width, height, count, cutAs, joined, lostInJoin, lengthwise, upright } = line;
  const kind = (w: number, h: number, n: number, turns: boolean) => ({ letter, width: w, height: h, count: n, turns });
  if (joined !== undefined) {
    const reach = times(count, width);
    return joinedKinds(joined.value, lastWidth(reach, joined, house, lostInJoin), height.value, house, kind);
  }
  if (lengthwise && !longer(height.value, house.usableWidth))
    return [kind(height.value, width.value, count.value, false)];
  if (cutAs !== 'piece' && !longer(width.value, house.usableWidth))
    return [kind(width.value, height.value, count.value, false)];
  const [across, along] = upright ? [width, height] : [height, width];
  if (!longer(across.value, house.usableWidth)) return [kind(width.value, height.value, count.value, !upright)];
  const panels = widthsFor(across, house);
  const laid = joinedKinds(panels.value, lastWidth(across, panels, house), along.value, house, kind);
  return laid.map((one) => ({ ...one, count: one.count * count.value }));
}

/** Whether pieces of this line are wider than the cloth however they may lie. */
export function tooWide(line: PieceLine, house: House): boolean {
  return line.joined === undefined && longer(acrossOf(line), house.usableWidth);
}

/** How much of the width of the cloth a piece needs at the least. */
export function acrossOf({ width, height, upright, lengthwise }: PieceLine): Inches {
  return upright && !lengthwise ? width.value : height.value;
}

function joinedKinds(
  widths: number,
  last: number,
  height: number,
  house: House,
  kind: (w: number, h: number, n: number, turns: boolean) => LetteredKind,
): readonly LetteredKind[] {
  const ends = kind(last, height, 1, false);
  return widths > 1 ? [kind(house.usableWidth, height, widths - 1, false), ends] : [ends];
}
