import type { Inches } from '../../measure/inches.ts';
import type { CutSheet } from '../sheets/sheet.ts';
import type { Group } from './wants.ts';

/** What of a square is cut for one group: a rectangle, which is parted when it is of several pieces. */
export interface LaidGroup {
  readonly group: Group;
  readonly x: Inches;
  readonly y: Inches;
  readonly width: Inches;
  readonly height: Inches;
}

/**
 * Where the groups of one square lie, from its corner.
 * @param take the next group for each rectangle of a kind
 */
export function laidGroups(cut: CutSheet, take: (kind: number) => Group | undefined): readonly LaidGroup[] {
  const found: LaidGroup[] = [];
  let along = 0;
  for (const { height, laid, times } of cut.strips) {
    for (let strip = 0; strip < times; strip++) {
      let across = 0;
      for (const { lie, count } of laid) {
        for (let n = 0; n < count; n++) {
          const group = take(lie.kind);
          const [x, y] = cut.lengthwise ? [along, across] : [across, along];
          const [w, h] = cut.lengthwise ? [lie.height, lie.width] : [lie.width, lie.height];
          if (group !== undefined) found.push({ group, x, y, width: w, height: h });
          across += lie.width;
        }
      }
      along += height;
    }
  }
  return found;
}
