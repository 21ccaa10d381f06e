import { type PointerEvent, useRef } from 'react';
import type { Point } from '../../../shared/drawing/turn.ts';
import type { Crop, Photograph } from '../../../shared/pattern/photograph.ts';
import { cropBetween, inPicture, type Ruler } from './marking.ts';
import styles from './photograph.module.css';
import { usePictures } from './pictures.ts';

interface CropPictureProps {
  readonly photograph: Photograph;
  readonly tool: 'crop' | 'ruler';
  readonly crop: Crop;
  readonly ruler: Ruler | null;
  readonly onCrop: (crop: Crop) => void;
  readonly onRuler: (ruler: Ruler) => void;
}

/** A drag shorter than this is a slip of the hand, pixels of the picture. */
const SLIP = 6;

/** The whole picture, on which a part or a length is drawn from corner to corner. */
export function CropPicture({ photograph, tool, crop, ruler, onCrop, onRuler }: CropPictureProps) {
  const url = usePictures([photograph.id]).get(photograph.id);
  const start = useRef<Point | null>(null);
  const { width, height } = photograph;
  const spot = (event: PointerEvent) =>
    inPicture({ x: event.clientX, y: event.clientY }, event.currentTarget.getBoundingClientRect(), photograph);
  const move = (event: PointerEvent) => {
    const from = start.current;
    if (from === null) return;
    const to = spot(event);
    if (Math.hypot(to.x - from.x, to.y - from.y) < SLIP) return;
    if (tool === 'crop') onCrop(cropBetween(from, to));
    else onRuler({ from, to });
  };
  const thin = Math.max(width, height) / 320;
  return (
    <svg
      className={styles.whole}
      style={{ aspectRatio: `${width} / ${height}` }}
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-label="The photograph; what is marked can also be typed below"
      onPointerDown={(event) => {
        event.currentTarget.setPointerCapture(event.pointerId);
        start.current = spot(event);
      }}
      onPointerMove={move}
      onPointerUp={() => {
        start.current = null;
      }}
    >
      {url === undefined ? null : <image href={url} width={width} height={height} />}
      <path
        className={styles.outside}
        d={`M0 0H${width}V${height}H0Z M${crop.x} ${crop.y}v${crop.height}h${crop.width}v${-crop.height}Z`}
      />
      <rect className={styles.frame} x={crop.x} y={crop.y} width={crop.width} height={crop.height} strokeWidth={thin} />
      {ruler === null ? null : (
        <g className={styles.ruler} strokeWidth={2 * thin}>
          <line x1={ruler.from.x} y1={ruler.from.y} x2={ruler.to.x} y2={ruler.to.y} />
          <circle cx={ruler.from.x} cy={ruler.from.y} r={3 * thin} />
          <circle cx={ruler.to.x} cy={ruler.to.y} r={3 * thin} />
        </g>
      )}
    </svg>
  );
}
