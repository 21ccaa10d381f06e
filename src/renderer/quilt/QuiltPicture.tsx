import { useMemo } from 'react';
import { inksFor } from '../../shared/diagrams/hatches.ts';
import { quiltFigure } from '../../shared/diagrams/quiltFigure.ts';
import type { WorkedOut, WorkedSize } from '../../shared/workroom/workedOut.ts';
import { Stage } from '../parts/stage/Stage.tsx';
import { BorderEdges } from './borders/BorderEdges.tsx';
import { PickedBorder } from './borders/PickedBorder.tsx';
import { FindingsOver } from './FindingsOver.tsx';
import type { Over } from './look.ts';
import { PlacePicker } from './PlacePicker.tsx';
import styles from './quilt.module.css';
import { useQuiltState } from './quiltStore.ts';

interface QuiltPictureProps {
  readonly worked: WorkedOut;
  readonly size: WorkedSize;
  readonly over: ReadonlySet<Over>;
}

/** One size, whole; its blocks and borders can be picked, and what does not fit is drawn on it. */
export function QuiltPicture({ worked, size, over }: QuiltPictureProps) {
  const { quilt } = size;
  const painting = useQuiltState((state) => state.brush !== null);
  const turns = over.has('turns');
  const letters = over.has('letters');
  const figure = useMemo(
    () =>
      quiltFigure(quilt, worked.blocks, {
        borders: true,
        letters,
        lines: turns || letters,
        name: size.size.name,
        ...(turns ? { turns: 'arrows' as const } : {}),
      }),
    [quilt, worked.blocks, size.size.name, turns, letters],
  );
  const inks = useMemo(() => inksFor(worked.pattern.fabrics), [worked.pattern.fabrics]);
  return (
    <div className={styles.cloth} data-grey={over.has('grey')}>
      <Stage figure={figure} inks={inks}>
        <PickedBorder worked={size} />
        <PlacePicker worked={worked} size={size} />
        {painting ? null : <BorderEdges worked={size} />}
        <FindingsOver worked={worked} size={size} />
      </Stage>
    </div>
  );
}
