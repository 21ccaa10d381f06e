import { Label, Slider, SliderThumb, SliderTrack } from 'react-aria-components';
import { Button } from '../parts/Button.tsx';
import { WHOLE, zoomedAt } from '../parts/stage/useZoom.ts';
import styles from './quilt.module.css';
import { quiltStore, useQuiltState } from './quiltStore.ts';

/** Below the quilt: how far its rows are pulled apart, and how closely it is looked at. */
export function SightStrip() {
  return (
    <div className={styles.sightStrip}>
      <Apart />
      <Zoom />
    </div>
  );
}

function Apart() {
  const apart = useQuiltState((state) => state.apart);
  return (
    <Slider
      className={styles.apart ?? ''}
      minValue={0}
      maxValue={1}
      step={0.05}
      value={apart}
      onChange={(next) => quiltStore.setState({ apart: next as number })}
    >
      <Label>Sewn together</Label>
      <SliderTrack className={styles.track ?? ''}>
        <SliderThumb className={styles.thumb ?? ''} aria-label="How far the rows are pulled apart" />
      </SliderTrack>
      <span aria-hidden="true">Pulled apart</span>
    </Slider>
  );
}

const MIDDLE = { x: 0, y: 0 };

/** Nearer or further by one step. */
export function zoomBy(by: number): void {
  quiltStore.setState(({ sight }) => ({ sight: zoomedAt(sight, by, MIDDLE) }));
}

export function lookAtWhole(): void {
  quiltStore.setState({ sight: WHOLE });
}

export const ZOOM_STEP = 1.5;

function Zoom() {
  const { zoom } = useQuiltState((state) => state.sight);
  return (
    <div className={styles.zoom}>
      <Button small aria-label="Look from further away" isDisabled={zoom <= 1} onPress={() => zoomBy(1 / ZOOM_STEP)}>
        −
      </Button>
      <span className="figures small">{zoom === 1 ? 'Whole' : `${Math.round(zoom * 10) / 10} ×`}</span>
      <Button small aria-label="Look closer" isDisabled={zoom >= 12} onPress={() => zoomBy(ZOOM_STEP)}>
        +
      </Button>
    </div>
  );
}
