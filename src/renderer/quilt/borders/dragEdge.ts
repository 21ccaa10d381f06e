import { rulerOn } from '../../../shared/measure/ruler.ts';
import {
  setBorderEnds,
  setBorderEndsIn,
  setBorderWidth,
  setBorderWidthIn,
} from '../../../shared/pattern/edits/index.ts';
import type { Pattern, Size } from '../../../shared/pattern/schema.ts';
import type { Studio } from '../../state/studio.ts';
import { quiltStore } from '../quiltStore.ts';

/** The side of the quilt an edge lies on, and which of a border's widths it is. */
export type Edge = 'left' | 'right' | 'top' | 'bottom';

/** How far an edge goes at once: a quarter inch, or half a centimetre; never finer than the ruler. */
export function dragStep(step: number): number {
  return Math.max(step, rulerOn(step).stepOf(1 / 4));
}

/** The width nearest to one asked for that falls on a step. */
export function widthAt(wished: number, step: number): number {
  return Math.min(60, Math.max(step, Math.round(wished / step) * step));
}

/**
 * Sets the width an edge was drawn to. A size that has a width of its own keeps one; with blocks changed in one size only,
 * borders are too.
 */
export function setEdge(studio: Studio, pattern: Pattern, size: Size, id: string, edge: Edge, width: number): void {
  const border = pattern.borders.find((one) => one.id === id);
  if (border === undefined) return;
  const ends = edge === 'top' || edge === 'bottom';
  const ownScope = quiltStore.getState().scope === 'one';
  const mark = `edge ${id} ${ends ? 'ends' : 'sides'}`;
  const inSize = ownScope || size.borders[id] !== undefined;
  const endsInSize = inSize || size.borderEnds?.[id] !== undefined;
  const endsDiffer = endsInSize ? size.borderEnds?.[id] !== undefined : border.ends !== undefined;
  if (ends && endsDiffer && border.pieced === undefined) {
    if (endsInSize) studio.act(setBorderEndsIn, { border: id, size: size.id, ends: width }, mark);
    else studio.act(setBorderEnds, { border: id, ends: width }, mark);
  } else if (inSize) studio.act(setBorderWidthIn, { border: id, size: size.id, width }, mark);
  else studio.act(setBorderWidth, { border: id, width }, mark);
}
