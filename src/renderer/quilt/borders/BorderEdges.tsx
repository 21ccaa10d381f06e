import { type CSSProperties, type KeyboardEvent, type PointerEvent, useRef, useState } from 'react';
import type { Box } from '../../../shared/drawing/turn.ts';
import type { Border } from '../../../shared/pattern/schema.ts';
import type { WorkedSize } from '../../../shared/workroom/workedOut.ts';
import { usePattern, useRuler, useSelection, useStudio } from '../../state/hooks.tsx';
import styles from '../quilt.module.css';
import { dragStep, type Edge, setEdge, widthAt } from './dragEdge.ts';
import { type BorderRing, borderRings } from './ring.ts';

const EDGES: readonly Edge[] = ['left', 'right', 'top', 'bottom'];

/** The outer edges of all borders: each can be drawn in and out, from step to step of the ruler. */
export function BorderEdges({ worked }: { readonly worked: WorkedSize }) {
  const pattern = usePattern();
  return borderRings(pattern, worked.size, worked.quilt).flatMap((ring) => {
    const border = pattern.borders.find(({ id }) => id === ring.border);
    if (border === undefined) return [];
    return EDGES.map((edge) => (
      <EdgeHandle key={`${ring.border} ${edge}`} worked={worked} ring={ring} border={border} edge={edge} />
    ));
  });
}

interface EdgeHandleProps {
  readonly worked: WorkedSize;
  readonly ring: BorderRing;
  readonly border: Border;
  readonly edge: Edge;
}

function EdgeHandle({ worked: { size, quilt }, ring, border, edge }: EdgeHandleProps) {
  const studio = useStudio();
  const pattern = usePattern();
  const [selection, select] = useSelection();
  const { drawn, handlers } = useDraw(ring, edge, dragStep(pattern.house.step), quilt.finished.width.value);
  const say = useRuler().length;
  const now = isUpright(edge) ? ring.widths.sides : ring.widths.ends;
  const set = (width: number) => setEdge(studio, pattern, size, border.id, edge, width);
  const step = dragStep(pattern.house.step);
  const onKeyDown = (event: KeyboardEvent) => {
    const by = STEPS[event.key];
    if (by === undefined) return;
    event.preventDefault();
    event.stopPropagation();
    set(widthAt(now + by * step, step));
  };
  // One of a pair speaks for both: the keyboard need not pass four edges that do the same.
  const spoken = edge === 'right' || edge === 'bottom';
  const picked = selection.kind === 'border' && selection.border === border.id;
  const { width, height } = quilt.finished;
  return (
    <>
      <div
        className={styles.edge}
        data-edge={edge}
        style={lineStyle(ring.outer, edge, width.value, height.value)}
        {...(spoken
          ? {
              role: 'slider',
              tabIndex: picked ? 0 : -1,
              'aria-label': `${border.name}, ${edge === 'right' ? 'sides' : 'top and bottom'}`,
              'aria-orientation': edge === 'right' ? ('horizontal' as const) : ('vertical' as const),
              'aria-valuenow': now,
              'aria-valuemin': step,
              'aria-valuemax': 60,
              'aria-valuetext': say(now),
              onKeyDown,
            }
          : { 'aria-hidden': true })}
        {...handlers({ begin: () => select({ kind: 'border', border: border.id }), end: set })}
      />
      {drawn === null ? null : (
        <div
          className={styles.drawnEdge}
          data-edge={edge}
          style={lineStyle(grownBy(ring, edge, drawn), edge, width.value, height.value)}
        >
          <span>{say(drawn)}</span>
        </div>
      )}
    </>
  );
}

const STEPS: Readonly<Record<string, number>> = { ArrowUp: 1, ArrowRight: 1, ArrowDown: -1, ArrowLeft: -1 };

function isUpright(edge: Edge): boolean {
  return edge === 'left' || edge === 'right';
}

interface Ends {
  readonly begin: () => void;
  readonly end: (width: number) => void;
}

/** An edge in the hand: where it would lie, on a step of the ruler. */
function useDraw(ring: BorderRing, edge: Edge, step: number, across: number) {
  const from = useRef<{ readonly at: number; readonly perInch: number } | null>(null);
  const [drawn, setDrawn] = useState<number | null>(null);
  const now = isUpright(edge) ? ring.widths.sides : ring.widths.ends;
  const place = (event: PointerEvent) => (isUpright(edge) ? event.clientX : event.clientY);
  const widthFor = (event: PointerEvent): number => {
    if (from.current === null) return now;
    const moved = (place(event) - from.current.at) / from.current.perInch;
    return widthAt(now + (edge === 'left' || edge === 'top' ? -moved : moved), step);
  };
  const handlers = ({ begin, end }: Ends) => ({
    onPointerDown: (event: PointerEvent<HTMLElement>) => {
      if (event.button !== 0) return;
      event.currentTarget.setPointerCapture(event.pointerId);
      const whole = event.currentTarget.parentElement?.getBoundingClientRect().width ?? across;
      from.current = { at: place(event), perInch: whole / across };
      begin();
    },
    onPointerMove: (event: PointerEvent<HTMLElement>) => {
      if (from.current !== null) setDrawn(widthFor(event));
    },
    onPointerUp: (event: PointerEvent<HTMLElement>) => {
      const width = widthFor(event);
      const was = from.current;
      from.current = null;
      setDrawn(null);
      if (was !== null && width !== now && Math.abs(place(event) - was.at) > 2) end(width);
    },
    onPointerCancel: () => {
      from.current = null;
      setDrawn(null);
    },
  });
  return { drawn, handlers };
}

/** The edge's box if the border were so wide on this side: the inner edge stays. */
function grownBy({ inner, outer }: BorderRing, edge: Edge, width: number): Box {
  if (edge === 'left') return { ...outer, x: inner.x - width };
  if (edge === 'right') return { ...outer, width: inner.x + inner.width + width - outer.x };
  if (edge === 'top') return { ...outer, y: inner.y - width };
  return { ...outer, height: inner.y + inner.height + width - outer.y };
}

function lineStyle(box: Box, edge: Edge, width: number, height: number): CSSProperties {
  const across = (inches: number) => `${(100 * inches) / width}%`;
  const down = (inches: number) => `${(100 * inches) / height}%`;
  if (edge === 'left') return { left: across(box.x), top: down(box.y), height: down(box.height) };
  if (edge === 'right') return { left: across(box.x + box.width), top: down(box.y), height: down(box.height) };
  if (edge === 'top') return { left: across(box.x), top: down(box.y), width: across(box.width) };
  return { left: across(box.x), top: down(box.y + box.height), width: across(box.width) };
}
