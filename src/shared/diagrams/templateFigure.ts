import type { Point } from '../drawing/turn.ts';
import { centimetresOf, type Units } from '../measure/metric.ts';
import type { Template } from '../piecing/templates/template.ts';
import type { Figure, Mark } from './figure.ts';
import { boxAround, framed, letter, line } from './marks.ts';
import { roomInside } from './roomInside.ts';

/**
 * A template to be printed at its true size: the cutting line whole, the finished line as stitches, notches, an arrow along
 * the straight grain, and its name.
 * @param name what the chart calls the piece, such as its letter
 */
export function templateFigure({ cut, finished, notches }: Template, name: string, units: Units = 'inches'): Figure {
  const { width, height } = boxAround(cut);
  const marks: Mark[] = [
    { kind: 'line', pen: 'unit', points: closed(cut) },
    { kind: 'line', pen: 'sew', points: closed(finished) },
    ...notches.map(({ from, to }) => line(from, to, 'unit')),
    ...grainAndName(finished, name),
  ];
  const alt =
    `Template ${name}: its cutting line, ${round(width, units)} by ${round(height, units)} ${units}, its seam line inside it and the ` +
    'straight grain.';
  return framed(marks, alt);
}

function closed(points: readonly Point[]): readonly Point[] {
  return [...points, points[0] as Point];
}

function round(length: number, units: Units): string {
  return units === 'inches' ? String(Number(length.toFixed(2))) : centimetresOf(length);
}

/** The arrow runs up and down, as the patch lies in its unit; the name stands beside it. */
function grainAndName(outline: readonly Point[], name: string): readonly Mark[] {
  const { middle, up, down, left, right } = roomInside(outline);
  const reach = Math.min(up, down) * 0.7;
  const beside = left > right ? -left / 2 : right / 2;
  return [
    {
      kind: 'arrow',
      means: 'turn',
      from: { x: middle.x, y: middle.y + reach },
      to: { x: middle.x, y: middle.y - reach },
    },
    letter(name, { x: middle.x + beside, y: middle.y }),
  ];
}
