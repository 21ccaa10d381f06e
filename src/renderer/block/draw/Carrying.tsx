import { buildDrawing } from '../../../shared/drawing/build.ts';
import styles from './draw.module.css';
import { patchPath } from './paths.ts';
import type { Sight } from './sight.ts';
import type { Carried } from './useSetting.ts';

interface CarryingProps {
  readonly carried: Carried;
  readonly colourOf: (role: string) => string;
  readonly sight: Sight;
}

/** A copied part over the place where it would be set in. In pixels. */
export function Carrying({ carried: { part, corner }, colourOf, sight }: CarryingProps) {
  const { width, height, polygons } = part;
  const drawing = buildDrawing(width, height, polygons);
  const [x, y] = [sight.x + corner.x * sight.scale, sight.y + corner.y * sight.scale];
  return (
    <g transform={`translate(${x} ${y}) scale(${sight.scale})`}>
      {drawing.patches.map(({ role }, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a patch is its place in the list
        <path key={i} className={styles.carried} d={patchPath(drawing, i)} fill={colourOf(role)} />
      ))}
      <rect className={styles.under} width={width} height={height} />
      <rect className={styles.basted} width={width} height={height} />
    </g>
  );
}
