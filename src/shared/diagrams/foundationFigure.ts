import type { Point } from '../drawing/turn.ts';
import { centimetresOf, type Units } from '../measure/metric.ts';
import type { FoundationPaper } from '../piecing/foundation/paper.ts';
import type { Figure, Mark } from './figure.ts';
import { boxAround, framed, letter } from './marks.ts';
import { roomInside } from './roomInside.ts';

/**
 * A paper to be sewn on, printed at its true size and mirrored: fabric lies on its back, so that the unit comes out as drawn.
 * The lines between areas are sewn on in the order of the numbers, the whole line outside is trimmed on, and the stitches
 * inside it are where the section is sewn to others.
 */
export function foundationFigure(
  { letter: section, cut, finished, areas }: FoundationPaper,
  units: Units = 'inches',
): Figure {
  const seams = areas.flatMap(({ seam }): Mark[] => {
    return seam === null ? [] : [{ kind: 'line', pen: 'unit', points: seam.map(mirrored) }];
  });
  const names = areas.map(({ corners, role, name }) => {
    const { middle } = roomInside(corners.map(mirrored));
    return letter(role === null ? name : `${section}${name}`, middle, 'number');
  });
  const marks: Mark[] = [
    { kind: 'line', pen: 'unit', points: closed(cut) },
    { kind: 'line', pen: 'sew', points: closed(finished) },
    ...seams,
    ...names,
  ];
  const { width, height } = boxAround(cut);
  const which = section === '' ? 'Paper' : `Paper ${section}`;
  const alt = `${which}, mirrored, ${round(width, units)} by ${round(height, units)} ${units}: ${areas.length} areas numbered in sewing order.`;
  return framed(marks, alt);
}

function closed(points: readonly Point[]): readonly Point[] {
  return [...points, points[0] as Point].map(mirrored);
}

function mirrored({ x, y }: Point): Point {
  return { x: -x, y };
}

function round(length: number, units: Units): string {
  return units === 'inches' ? String(Number(length.toFixed(2))) : centimetresOf(length);
}
