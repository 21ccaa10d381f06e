import { type CSSProperties, type MouseEvent, useContext, useEffect, useRef, useState } from 'react';
import type { Figure as FigureData, Ink } from '../../../shared/diagrams/figure.ts';
import type { Manner } from '../../../shared/diagrams/fill.ts';
import { MARGIN, sheetSize } from '../../../shared/diagrams/sheet.ts';
import type { Point } from '../../../shared/drawing/turn.ts';
import { PrintsContext } from './PrintsContext.ts';
import { openPen, PIXELS_PER_POINT, type ScreenPen } from './penOnScreen.ts';
import { inTurn } from './turns.ts';
import { useInSight } from './useInSight.ts';

export interface Picked {
  /** The `of` of the area that was clicked; null beside every area that has one. */
  readonly of: string | null;
  /** Where, in the figure's inches. */
  readonly at: Point;
}

export interface FigureProps {
  readonly figure: FigureData;
  readonly inks: readonly Ink[];
  readonly manner?: Manner;
  /** 'width': as wide as its place, as high as that makes it. 'box': as large as fits its place. A number: pixels per inch. */
  readonly fit?: 'width' | 'box' | number;
  readonly className?: string;
  /** Stands in for the figure's own words, where the place says more. */
  readonly alt?: string;
  readonly onPick?: (picked: Picked) => void;
  /** What the pointer is over; null when it has left. */
  readonly onPoint?: (pointed: Picked | null) => void;
}

interface Room {
  readonly width: number;
  readonly height: number;
}

/**
 * A figure on screen: redrawn at its true size, so that lines and letters keep theirs whatever room it has. One that is far
 * from what can be seen is drawn when it comes near.
 */
export function Figure({ figure, inks, manner = 'colour', fit = 'box', className, alt, onPick, onPoint }: FigureProps) {
  const host = useRef<HTMLDivElement>(null);
  const pen = useRef<ScreenPen>(null);
  const room = useRoom(host);
  const pixelsPerInch = typeof fit === 'number' ? fit : fitting(figure, room);

  useEffect(() => {
    if (host.current === null) return;
    pen.current = openPen(host.current);
    return () => pen.current?.close();
  }, []);
  const prints = useContext(PrintsContext);
  const seen = useInSight(host);
  useEffect(() => {
    if (!seen || pixelsPerInch <= 0) return;
    return inTurn(() => pen.current?.draw(figure, { pixelsPerInch, inks, manner, prints }));
  }, [figure, inks, manner, pixelsPerInch, prints, seen]);

  const picked = (event: MouseEvent) => onPick?.(whatIsAt(event, pixelsPerInch));
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: a picture; the view around it gives the same choice to the keyboard
    <div
      ref={host}
      role="img"
      aria-label={alt ?? figure.alt}
      className={className}
      style={placeOf(figure, fit)}
      onClick={onPick === undefined ? undefined : picked}
      onPointerMove={onPoint === undefined ? undefined : (event) => onPoint(whatIsAt(event, pixelsPerInch))}
      onPointerLeave={onPoint === undefined ? undefined : () => onPoint(null)}
    />
  );
}

function placeOf(figure: FigureData, fit: FigureProps['fit']): CSSProperties {
  if (typeof fit === 'number') return { display: 'inline-block', ...sizeAt(figure, fit) };
  if (fit === 'width') return { width: '100%', aspectRatio: `${figure.width} / ${figure.height}`, overflow: 'hidden' };
  return { width: '100%', height: '100%', minHeight: 0, display: 'grid', placeContent: 'center', overflow: 'hidden' };
}

/** The size it has when it is drawn, so that nothing moves then. */
function sizeAt(figure: FigureData, pixelsPerInch: number): CSSProperties {
  const { width, height } = sheetSize(figure, pixelsPerInch / PIXELS_PER_POINT);
  return { width: width * PIXELS_PER_POINT, height: height * PIXELS_PER_POINT };
}

function fitting(figure: FigureData, room: Room): number {
  const margins = 2 * MARGIN * PIXELS_PER_POINT;
  return Math.min((room.width - margins) / figure.width, (room.height - margins) / figure.height);
}

/** The room an element has, kept up to date. */
function useRoom(host: { readonly current: HTMLElement | null }): Room {
  const [room, setRoom] = useState<Room>({ width: 0, height: 0 });
  useEffect(() => {
    const element = host.current;
    if (element === null) return;
    const measure = () => setRoom((old) => settled(old, element.clientWidth, element.clientHeight));
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, [host]);
  return room;
}

function settled(old: Room, width: number, height: number): Room {
  return old.width === width && old.height === height ? old : { width, height };
}

function whatIsAt(event: MouseEvent, pixelsPerInch: number): Picked {
  const target = event.target as Element;
  const sheet = event.currentTarget.querySelector('svg')?.getBoundingClientRect();
  const inches = (pixels: number) => (pixels - MARGIN * PIXELS_PER_POINT) / pixelsPerInch;
  const at = { x: inches(event.clientX - (sheet?.left ?? 0)), y: inches(event.clientY - (sheet?.top ?? 0)) };
  return { of: target.closest('[data-of]')?.getAttribute('data-of') ?? null, at };
}
