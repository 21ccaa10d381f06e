import type { Point } from '../drawing/turn.ts';
import type { Figure, Mark } from './figure.ts';

/** A figure turned upside down, its letters still to be read. */
export function halfTurned({ width, height, marks, alt }: Figure): Figure {
  const turned = ({ x, y }: Point): Point => ({ x: width - x, y: height - y });
  return { width, height, alt, marks: marks.map((mark) => turnedMark(mark, turned)) };
}

function turnedMark(mark: Mark, turned: (point: Point) => Point): Mark {
  switch (mark.kind) {
    case 'area':
      return { ...mark, outlines: mark.outlines.map((outline) => outline.map(turned)) };
    case 'line':
      return { ...mark, points: mark.points.map(turned) };
    case 'arrow':
      return { ...mark, from: turned(mark.from), to: turned(mark.to) };
    case 'letter':
      return { ...mark, at: turned(mark.at) };
  }
}
