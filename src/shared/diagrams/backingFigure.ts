import { inchesText } from '../measure/fraction.ts';
import type { Inches } from '../measure/inches.ts';
import type { Units } from '../measure/metric.ts';
import type { Figure, Mark } from './figure.ts';
import { boxLine, boxOutline, framed, line } from './marks.ts';
import { measuredLine } from './measured.ts';

/** What of a backing its figure shows, in inches. */
export interface BackingToDraw {
  readonly fabric: string;
  readonly width: Inches;
  readonly height: Inches;
  readonly panels: number;
  /** Which way the seams between panels run. */
  readonly seams: 'none' | 'across' | 'down';
}

/** The backing with its panel seams, the quilt top lying on it as an outline. */
export function backingFigure(
  backing: BackingToDraw,
  quilt: { readonly width: Inches; readonly height: Inches },
  units: Units = 'inches',
): Figure {
  const { fabric, width, height } = backing;
  const out = Math.max(width, height) * 0.07;
  const whole = { x: 0, y: 0, width, height };
  const top = { x: (width - quilt.width) / 2, y: (height - quilt.height) / 2, ...quilt };
  const marks: Mark[] = [
    { kind: 'area', outlines: [boxOutline(whole)], fabric, tone: 'wrong', edge: 'unit' },
    ...seamLines(backing),
    boxLine(top, 'patch'),
    ...measuredLine({ x: 0, y: height + out }, { x: width, y: height + out }, inchesText(width, units), out * 0.6),
    ...measuredLine({ x: -out, y: 0 }, { x: -out, y: height }, inchesText(height, units), out * 0.6),
  ];
  const seams =
    backing.seams === 'none' ? 'in one piece' : `in ${backing.panels} panels, seams running ${backing.seams}`;
  const alt = `The backing, ${inchesText(width, units)} by ${inchesText(height, units)}, ${seams}; the quilt top lies inside it.`;
  return framed(marks, alt, { left: out * 0.5, bottom: out * 0.5 });
}

/** Panels are drawn equal: how they are trimmed is the maker's choice. */
function seamLines({ width, height, panels, seams }: BackingToDraw): readonly Mark[] {
  if (seams === 'none') return [];
  return Array.from({ length: panels - 1 }, (_, i) => {
    const share = (i + 1) / panels;
    if (seams === 'down') return line({ x: width * share, y: 0 }, { x: width * share, y: height }, 'sew');
    return line({ x: 0, y: height * share }, { x: width, y: height * share }, 'sew');
  });
}
