import type { Point } from '../drawing/turn.ts';
import { inchesText } from '../measure/fraction.ts';
import type { Inches } from '../measure/inches.ts';
import type { Units } from '../measure/metric.ts';
import type { Figure, Mark } from './figure.ts';
import { boxOutline, framed, letter, line, plainArea } from './marks.ts';
import { measuredLine } from './measured.ts';

/** What bias strips are cut from, and how wide they are. */
export interface BiasToDraw {
  readonly fabric: string;
  /** Across the cloth and along it, inches. */
  readonly width: Inches;
  readonly height: Inches;
  readonly strip: Inches;
}

/** A piece of cloth, its length lying across the picture, and the cuts at 45° to its edges that make bias strips. */
export function biasStripsFigure({ fabric, width, height, strip }: BiasToDraw, units: Units = 'inches'): Figure {
  const cloth = { x: 0, y: 0, width: height, height: width };
  const cuts = slants(height, width, strip).map(([from, to]) => line(from, to, 'cut'));
  const out = Math.max(width, height) * 0.06;
  const alt = `Cloth of ${inchesText(width, units)} by ${inchesText(height, units)}, cut at 45 degrees to its edges into strips ${inchesText(strip, units)} wide.`;
  const marks: Mark[] = [
    plainArea([boxOutline(cloth)], fabric, 'pale', 'unit'),
    ...cuts,
    ...measuredLine({ x: 0, y: width + out }, { x: height, y: width + out }, inchesText(height, units), out * 0.6),
    ...measuredLine({ x: -out, y: 0 }, { x: -out, y: width }, inchesText(width, units), out * 0.6),
  ];
  return framed(marks, alt, { left: out * 0.5, bottom: out * 0.5 });
}

/** Cuts that climb to the right, the first through the corner at the lower left, the others so far apart on both sides. */
function slants(across: Inches, down: Inches, strip: Inches): readonly (readonly [Point, Point])[] {
  const apart = strip * Math.SQRT2;
  const first = Math.min(across, down);
  const start = first - Math.floor(first / apart - 1e-9) * apart;
  const found: (readonly [Point, Point])[] = [];
  for (let c = start; c < across + down - 1e-9; c += apart) {
    const left = Math.max(0, c - down);
    const right = Math.min(across, c);
    found.push([
      { x: left, y: c - left },
      { x: right, y: c - right },
    ]);
  }
  return found;
}

/** The square for a continuous bias strip, cut once on the diagonal. */
export function biasSquareFigure({ fabric, width }: BiasToDraw, units: Units = 'inches'): Figure {
  const out = width * 0.07;
  const cloth = { x: 0, y: 0, width, height: width };
  const marks: Mark[] = [
    plainArea([boxOutline(cloth)], fabric, 'full', 'unit'),
    line({ x: 0, y: 0 }, { x: width, y: width }, 'cut'),
    ...measuredLine({ x: 0, y: width + out }, { x: width, y: width + out }, inchesText(width, units), out * 0.6),
  ];
  const alt = `A square of ${inchesText(width, units)}, cut once from corner to corner.`;
  return framed(marks, alt, { bottom: out * 0.5 });
}

/** How many lines are drawn, so that they can be told apart, and how many are numbered: enough to see which come together. */
const DRAWN = 5;
const NUMBERED = 3;

/**
 * Its two triangles sewn together, wrong side up, with the lines that the strip is cut along. Equal numbers come together
 * when the two upright sides are sewn into a tube: each is one line further on the left than on the right. The lines are fewer than
 * on the cloth.
 */
export function biasTubeFigure({ fabric, width, strip }: BiasToDraw): Figure {
  const many = Math.min(DRAWN, Math.floor(width / (strip * Math.SQRT2) - 1e-9));
  const apart = width / (many + 0.5);
  const leaning = [
    { x: 0, y: -width },
    { x: width, y: 0 },
    { x: width, y: width },
    { x: 0, y: 0 },
  ];
  const drawn = Array.from({ length: many }, (_, i) => (i + 1) * apart);
  const aside = width * 0.1;
  const numbers = drawn.slice(0, NUMBERED).flatMap((_, i): Mark[] => {
    const right = { x: width + aside, y: width - (i + 1) * apart };
    const left = { x: -aside, y: -(i + 2) * apart };
    if (left.y < -width) return [];
    return [letter(String(i + 1), right, 'number'), letter(String(i + 1), left, 'number')];
  });
  const marks: Mark[] = [
    plainArea([leaning], fabric, 'wrong', 'unit'),
    ...drawn.map((down) => line({ x: 0, y: -down }, { x: width, y: width - down }, 'marked')),
    line({ x: 0, y: 0 }, { x: width, y: 0 }, 'sew'),
    ...numbers,
  ];
  const alt =
    'The two triangles sewn together, with lines along their slanted sides; equal numbers on the two upright sides come together, one line further on.';
  return framed(marks, alt);
}
