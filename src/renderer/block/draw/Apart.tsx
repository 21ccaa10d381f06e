import { useId, useMemo } from 'react';
import { Label, Slider, SliderOutput, SliderThumb, SliderTrack } from 'react-aria-components';
import type { Piecing } from '../../../shared/piecing/piecing.ts';
import { leavesOf } from '../../../shared/piecing/tree.ts';
import { useSelection } from '../../state/hooks.tsx';
import { type Stages, stagesOf, takenApart } from './apart.ts';
import styles from './draw.module.css';
import { drawStore, useDrawState } from './drawStore.ts';
import { patchPath } from './paths.ts';

interface ApartProps {
  readonly block: string;
  readonly piecing: Piecing;
  readonly colourOf: (role: string) => string;
}

/** The block taken apart as it will be sewn: from the whole, through its parts and units, to single patches. */
export function Apart({ block, piecing, colourOf }: ApartProps) {
  const share = useDrawState((state) => state.apart);
  const stages = useMemo(() => stagesOf(piecing), [piecing]);
  const stage = stageAt(share, stages);
  const id = useId();
  return (
    <div className={styles.apart}>
      <ApartPicture block={block} piecing={piecing} colourOf={colourOf} stage={stage} />
      <Slider
        className={styles.slider ?? ''}
        aria-labelledby={id}
        minValue={0}
        maxValue={1}
        step={0.025}
        value={share}
        onChange={(apart) => drawStore.setState({ apart: apart as number })}
      >
        <Label id={id} className="heard">
          How far the block is pulled apart
        </Label>
        <SliderTrack className={styles.track ?? ''}>
          <SliderThumb className={styles.thumb ?? ''} />
        </SliderTrack>
        <span className={styles.ends}>
          <span aria-hidden="true">Whole</span>
          <span aria-hidden="true">Patches</span>
        </span>
        <SliderOutput className={styles.stage ?? ''}>{stageWords(stage, stages)}</SliderOutput>
      </Slider>
    </div>
  );
}

/** Half the slider is for the seams between units, half for those within them; a side without any gives its half away. */
function stageAt(share: number, { between, within }: Stages): number {
  if (between === 0 || within === 0) return share * (between + within);
  return share <= 0.5 ? share * 2 * between : between + (share - 0.5) * 2 * within;
}

function stageWords(stage: number, { between, within }: Stages): string {
  if (between + within === 0) return 'one patch';
  if (stage === 0) return 'sewn together';
  if (stage < between) return 'in parts';
  if (stage === between) return 'in units';
  return stage < between + within ? 'units opened' : 'in patches';
}

interface PictureProps extends ApartProps {
  readonly stage: number;
}

/** Air round the whole, as a share of it, for the outlines. */
const AIR = 0.02;

function ApartPicture({ block, piecing, colourOf, stage }: PictureProps) {
  const { drawing, root } = piecing;
  const [selection, select] = useSelection();
  const { by, box } = useMemo(() => takenApart(piecing, stage), [piecing, stage]);
  const unitOf = useMemo(
    () => new Map(leavesOf(root).flatMap(({ unit, patches }) => patches.map((patch) => [patch, unit] as const))),
    [root],
  );
  const paths = useMemo(() => drawing.patches.map((_, i) => patchPath(drawing, i)), [drawing]);
  const air = AIR * Math.max(box.width, box.height);
  const view = `${box.x - air} ${box.y - air} ${box.width + 2 * air} ${box.height + 2 * air}`;
  const picked = selection.kind === 'unit' && selection.block === block ? selection.unit : null;
  return (
    <svg className={styles.apartPicture} viewBox={view} aria-hidden="true" focusable="false">
      {drawing.patches.map(({ role }, i) => (
        // biome-ignore lint/a11y/noStaticElementInteractions: a second way to what the list of units offers
        <path
          // biome-ignore lint/suspicious/noArrayIndexKey: a patch is its place in the list
          key={i}
          className={styles.piece}
          data-picked={(picked !== null && unitOf.get(i) === picked) || undefined}
          d={paths[i]}
          fill={colourOf(role)}
          transform={`translate(${by[i]?.x ?? 0} ${by[i]?.y ?? 0})`}
          onClick={() => {
            const unit = unitOf.get(i);
            if (unit !== undefined) select({ kind: 'unit', block, unit });
          }}
        />
      ))}
    </svg>
  );
}
