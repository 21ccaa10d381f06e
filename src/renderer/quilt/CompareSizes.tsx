import { useMemo } from 'react';
import { Button } from 'react-aria-components';
import { inksFor } from '../../shared/diagrams/hatches.ts';
import { quiltFigure } from '../../shared/diagrams/quiltFigure.ts';
import { sizeText } from '../../shared/measure/fraction.ts';
import type { WorkedOut, WorkedSize } from '../../shared/workroom/workedOut.ts';
import { Figure } from '../parts/figure/Figure.tsx';
import { Mark, markWord } from '../parts/Mark.tsx';
import { sizeLevel } from '../state/fit.ts';
import { useStudio } from '../state/hooks.tsx';
import type { Over } from './look.ts';
import styles from './quilt.module.css';

interface CompareSizesProps {
  readonly worked: WorkedOut;
  readonly over: ReadonlySet<Over>;
}

/** Every size side by side, all to one scale. */
export function CompareSizes({ worked, over }: CompareSizesProps) {
  const tallest = Math.max(...worked.sizes.map(({ quilt }) => quilt.finished.height.value));
  const widths = worked.sizes.reduce((sum, { quilt }) => sum + quilt.finished.width.value, 0);
  return (
    <ul
      className={styles.compare}
      data-grey={over.has('grey')}
      style={{ '--tallest': tallest, '--widths': widths } as React.CSSProperties}
    >
      {worked.sizes.map((size) => (
        <li key={size.size.id} style={{ flexGrow: size.quilt.finished.width.value }}>
          <OneSize worked={worked} size={size} share={size.quilt.finished.height.value / tallest} over={over} />
        </li>
      ))}
    </ul>
  );
}

interface OneSizeProps extends CompareSizesProps {
  readonly size: WorkedSize;
  /** Its height as a share of the tallest. */
  readonly share: number;
}

function OneSize({ worked, size, share, over }: OneSizeProps) {
  const studio = useStudio();
  const { quilt } = size;
  const [turns, letters] = [over.has('turns'), over.has('letters')];
  const figure = useMemo(
    () =>
      quiltFigure(quilt, worked.blocks, {
        borders: true,
        letters,
        name: size.size.name,
        ...(turns ? { turns: 'arrows' as const } : {}),
      }),
    [quilt, worked.blocks, size.size.name, turns, letters],
  );
  const inks = useMemo(() => inksFor(worked.pattern.fabrics), [worked.pattern.fabrics]);
  const level = sizeLevel(worked, size.size);
  return (
    <Button className={styles.compared ?? ''} onPress={() => studio.chooseSize(size.size.id)}>
      <span className={styles.comparedPicture} style={{ '--share': share } as React.CSSProperties}>
        <Figure figure={figure} inks={inks} />
      </span>
      <span className={styles.comparedName}>{size.size.name}</span>
      <span className={styles.facts}>{sizeText(quilt.finished.width.value, quilt.finished.height.value)}</span>
      <span className={styles.comparedFit}>
        <Mark of={level} /> {markWord(level)}
      </span>
    </Button>
  );
}
