import type { WorkedOut, WorkedSize } from '../../shared/studio/workedOut.ts';

export interface SmallQuiltProps {
  readonly worked: WorkedOut;
  readonly sized: WorkedSize;
  /** Its height as a share of the tallest size's. */
  readonly share: number;
}

/** One size drawn small, to the scale of its neighbours. */
export function SmallQuilt({ worked, sized, share }: SmallQuiltProps) {
  const { width, height } = sized.quilt.finished;
  const colourOf = new Map(worked.pattern.fabrics.map(({ id, colour }) => [id, colour]));
  return (
    <svg
      viewBox={`0 0 ${width.value} ${height.value}`}
      style={{ height: `calc(var(--tall) * ${share})`, aspectRatio: `${width.value} / ${height.value}` }}
      aria-hidden="true"
      focusable="false"
    >
      {sized.quilt.strips.map(({ box, fabric }) => (
        <rect key={`${box.x} ${box.y} ${box.width}`} {...box} fill={colourOf.get(fabric) ?? 'none'} />
      ))}
    </svg>
  );
}
