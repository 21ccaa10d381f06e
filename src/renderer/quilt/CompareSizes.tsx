import { useMemo, useRef } from 'react';
import { Button } from 'react-aria-components';
import { inksFor } from '../../shared/diagrams/hatches.ts';
import { quiltFigure } from '../../shared/diagrams/quiltFigure.ts';
import type { Mattress } from '../../shared/pattern/mattresses.ts';
import type { WorkedOut, WorkedSize } from '../../shared/workroom/workedOut.ts';
import { Figure } from '../parts/figure/Figure.tsx';
import { Mark, markWord } from '../parts/Mark.tsx';
import { useRoom } from '../parts/useRoom.ts';
import { sizeLevel } from '../state/fit.ts';
import { useRuler, useStudio } from '../state/hooks.tsx';
import { BedOver, bedWords, useBeds } from './bed/BedOver.tsx';
import type { Over } from './look.ts';
import styles from './quilt.module.css';

interface CompareSizesProps {
  readonly worked: WorkedOut;
  readonly over: ReadonlySet<Over>;
}

const GAP = 40;
const AROUND = 24;
/** Name, measure and fit below each quilt, pixels. */
const WORDS = 108;

/** Every size side by side, all to one scale. */
export function CompareSizes({ worked, over }: CompareSizesProps) {
  const list = useRef<HTMLUListElement>(null);
  const room = useRoom(list);
  const bedOf = useBeds();
  const tallest = Math.max(...worked.sizes.map(({ quilt }) => quilt.finished.height.value));
  const across = worked.sizes.reduce((sum, { quilt }) => sum + quilt.finished.width.value, 0);
  const free = room.width - 2 * AROUND - GAP * (worked.sizes.length - 1);
  const scale = Math.min(free / across, (room.height - 2 * AROUND - WORDS) / tallest);
  return (
    <ul ref={list} className={styles.compare} data-grey={over.has('grey')} data-squint={over.has('squint')}>
      {scale <= 0
        ? null
        : worked.sizes.map((size) => (
            <li key={size.size.id}>
              <OneSize worked={worked} size={size} scale={scale} over={over} bed={bedOf(size.quilt)} />
            </li>
          ))}
    </ul>
  );
}

interface OneSizeProps extends CompareSizesProps {
  readonly size: WorkedSize;
  /** Pixels for one inch. */
  readonly scale: number;
  readonly bed: Mattress | null;
}

function OneSize({ worked, size, scale, over, bed }: OneSizeProps) {
  const studio = useStudio();
  const { quilt } = size;
  const ruler = useRuler();
  const [turns, letters] = [over.has('turns'), over.has('letters')];
  const figure = useMemo(
    () =>
      quiltFigure(quilt, worked.blocks, {
        borders: true,
        letters,
        name: size.size.name,
        units: ruler.units,
        ...(turns ? { turns: 'arrows' as const } : {}),
      }),
    [quilt, worked.blocks, size.size.name, turns, letters, ruler],
  );
  const inks = useMemo(() => inksFor(worked.pattern.fabrics), [worked.pattern.fabrics]);
  const level = sizeLevel(worked, size.size);
  return (
    <Button className={styles.compared ?? ''} onPress={() => studio.chooseSize(size.size.id)}>
      <span className={styles.onBed}>
        <Figure figure={figure} inks={inks} fit={scale} />
        {bed === null ? null : <BedOver quilt={quilt} bed={bed} />}
      </span>
      <span className={styles.comparedName}>{size.size.name}</span>
      <span className={styles.facts}>{ruler.size(quilt.finished.width.value, quilt.finished.height.value)}</span>
      {bed === null ? null : <span className={styles.facts}>{bedWords(quilt, bed, ruler)}</span>}
      <span className={styles.comparedFit}>
        <Mark of={level} /> {markWord(level)}
      </span>
    </Button>
  );
}
