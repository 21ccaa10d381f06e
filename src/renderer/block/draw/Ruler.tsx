import { memo } from 'react';
import type { Point } from '../../../shared/drawing/turn.ts';
import styles from './draw.module.css';
import { RULER, type Sight } from './sight.ts';

interface RulerProps {
  readonly room: { readonly width: number; readonly height: number };
  readonly sight: Sight;
  readonly width: number;
  readonly height: number;
}

/** Numbers nearer than this would run into one another, pixels. */
const CLOSEST = 22;
const STEPS = [1, 2, 4, 5, 10, 20, 50, 100];

/** Numbers of the grid's lines, across the top and down the left side, as on a cutting mat. In pixels. */
export const Ruler = memo(function Ruler({ room, sight, width, height }: RulerProps) {
  const step = STEPS.find((one) => one * sight.scale >= CLOSEST) ?? 200;
  const inSight = (from: number, most: number) => (n: number) => {
    const at = from + n * sight.scale;
    return at >= RULER - 1 && at <= most;
  };
  const lines = (length: number) => Array.from({ length: Math.floor(length / step) + 1 }, (_, i) => i * step);
  const [top, left] = [Math.max(sight.y, RULER), Math.max(sight.x, RULER)];
  return (
    <g className={styles.ruler}>
      <rect width={room.width} height={Math.min(top, RULER)} />
      <rect width={Math.min(left, RULER)} height={room.height} />
      {lines(width)
        .filter(inSight(sight.x, room.width))
        .map((n) => (
          <g key={`x${n}`} transform={`translate(${sight.x + n * sight.scale} ${top})`}>
            <path d="M0 -5V-1" />
            <text y={-8} textAnchor="middle">
              {n}
            </text>
          </g>
        ))}
      {lines(height)
        .filter(inSight(sight.y, room.height))
        .map((n) => (
          <g key={`y${n}`} transform={`translate(${left} ${sight.y + n * sight.scale})`}>
            <path d="M-5 0H-1" />
            <text x={-8} dy="0.34em" textAnchor="end">
              {n}
            </text>
          </g>
        ))}
    </g>
  );
});

/** Where the hand is, on both rulers. */
export function RulerPointer({ sight, at }: { readonly sight: Sight; readonly at: Point }) {
  const [x, y] = [sight.x + at.x * sight.scale, sight.y + at.y * sight.scale];
  const [top, left] = [Math.max(sight.y, RULER), Math.max(sight.x, RULER)];
  return (
    <g className={styles.rulerPointer}>
      <path d={`M${x} ${top - 1}l-4 -6h8Z`} />
      <path d={`M${left - 1} ${y}l-6 -4v8Z`} />
    </g>
  );
}
