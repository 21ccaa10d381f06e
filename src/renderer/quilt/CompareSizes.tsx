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
/** Name, measure and fit below each quilt, pixels; and more for names that take three lines. */
const WORDS = 108;
const MORE_WORDS = 42;
const SHORT_NAME = 16;
/** The narrowest column that words can be read in, pixels. */
const NARROWEST = 104;

/** Pixels for an inch when quilts stand side by side and none is given less than the least room. */
export function scaleFor(widths: readonly number[], room: number, least: number): number {
  let [share, narrow]: [number, readonly number[]] = [0, []];
  for (let before = -1; before !== narrow.length; ) {
    before = narrow.length;
    const wide = widths.filter((width) => !narrow.includes(width)).reduce((sum, width) => sum + width, 0);
    const few = widths.filter((width) => narrow.includes(width)).length;
    if (wide === 0) return share;
    share = (room - few * least) / wide;
    narrow = widths.filter((width) => width * share < least);
  }
  return share;
}

/** Every size side by side, all to one scale. */
export function CompareSizes({ worked, over }: CompareSizesProps) {
  const list = useRef<HTMLUListElement>(null);
  const room = useRoom(list);
  const bedOf = useBeds();
  const tallest = Math.max(...worked.sizes.map(({ quilt }) => quilt.finished.height.value));
  const widths = worked.sizes.map(({ quilt }) => quilt.finished.width.value);
  const words = WORDS + (worked.sizes.some(({ size }) => size.name.length > SHORT_NAME) ? MORE_WORDS : 0);
  const free = room.width - 2 * AROUND - GAP * (worked.sizes.length - 1);
  const least = Math.min(NARROWEST, (0.8 * free) / widths.length);
  const scale = Math.min(scaleFor(widths, free, least), (room.height - 2 * AROUND - words) / tallest);
  return (
    <ul ref={list} className={styles.compare} data-grey={over.has('grey')} data-squint={over.has('squint')}>
      {scale <= 0
        ? null
        : worked.sizes.map((size) => (
            <li key={size.size.id} style={{ width: Math.max(least, size.quilt.finished.width.value * scale) }}>
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
      <span className={styles.comparedWords}>
        <span className={styles.comparedName} title={size.size.name}>
          {size.size.name}
        </span>
        <span className={styles.facts}>{ruler.size(quilt.finished.width.value, quilt.finished.height.value)}</span>
        {bed === null ? null : <span className={styles.facts}>{bedWords(quilt, bed, ruler)}</span>}
        <span className={styles.comparedFit}>
          <Mark of={level} /> {markWord(level)}
        </span>
      </span>
    </Button>
  );
}
