import { useDeferredValue, useEffect, useMemo, useRef } from 'react';
import { inksFor } from '../../shared/diagrams/hatches.ts';
import { quiltFigure } from '../../shared/diagrams/quiltFigure.ts';
import { sewingOrderFigure } from '../../shared/diagrams/sewingOrderFigure.ts';
import type { WorkedOut, WorkedSize } from '../../shared/workroom/workedOut.ts';
import { ZoomStage } from '../parts/stage/Stage.tsx';
import { type Sight, WHOLE } from '../parts/stage/useZoom.ts';
import { useRuler } from '../state/hooks.tsx';
import { BorderEdges } from './borders/BorderEdges.tsx';
import { PickedBorder } from './borders/PickedBorder.tsx';
import { FindingsOver } from './FindingsOver.tsx';
import type { Over as Shown } from './look.ts';
import { PlacePicker } from './PlacePicker.tsx';
import styles from './quilt.module.css';
import { quiltStore, useQuiltState } from './quiltStore.ts';
import { SightStrip } from './SightStrip.tsx';

interface QuiltPictureProps {
  readonly worked: WorkedOut;
  readonly size: WorkedSize;
  readonly over: ReadonlySet<Shown>;
}

/** One size, whole; its blocks and borders can be picked, and what does not fit is drawn on it. */
export function QuiltPicture({ worked, size, over }: QuiltPictureProps) {
  const { quilt } = size;
  const { units } = useRuler();
  const painting = useQuiltState((state) => state.brush !== null);
  const apart = useDeferredValue(useQuiltState((state) => state.apart));
  const turns = over.has('turns');
  const letters = over.has('letters');
  const figure = useMemo(
    () =>
      apart > 0
        ? sewingOrderFigure(quilt, worked.blocks, apart, units)
        : quiltFigure(quilt, worked.blocks, {
            borders: true,
            letters,
            lines: turns || letters,
            name: size.size.name,
            units,
            ...(turns ? { turns: 'arrows' as const } : {}),
          }),
    [quilt, worked.blocks, size.size.name, turns, letters, apart, units],
  );
  const inks = useMemo(() => inksFor(worked.pattern.fabrics), [worked.pattern.fabrics]);
  const sight = useSight(size.size.id);
  return (
    <div className={styles.cloth} data-grey={over.has('grey')} data-squint={over.has('squint')}>
      <ZoomStage figure={figure} inks={inks} sight={sight} onSight={(next) => quiltStore.setState({ sight: next })}>
        {apart > 0 ? null : <Over worked={worked} size={size} painting={painting} />}
      </ZoomStage>
      <SightStrip />
    </div>
  );
}

interface OverProps {
  readonly worked: WorkedOut;
  readonly size: WorkedSize;
  readonly painting: boolean;
}

/** What lies over the cloth while it is sewn together. */
function Over({ worked, size, painting }: OverProps) {
  return (
    <>
      <PickedBorder worked={size} />
      <PlacePicker worked={worked} size={size} />
      {painting ? null : <BorderEdges worked={size} />}
      <FindingsOver worked={worked} size={size} />
    </>
  );
}

/** How closely the quilt is looked at; another size is looked at whole. */
function useSight(size: string): Sight {
  const sight = useQuiltState((state) => state.sight);
  const before = useRef(size);
  useEffect(() => {
    if (before.current !== size) quiltStore.setState({ sight: WHOLE });
    before.current = size;
  }, [size]);
  return sight;
}
