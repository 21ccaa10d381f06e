import type { Ink } from '../../shared/diagrams/figure.ts';
import type { CaptionedFigure } from '../../shared/writing/book.ts';
import { Figure } from '../parts/figure/Figure.tsx';
import { BookWords } from './BookWords.tsx';
import styles from './sewing.module.css';

interface BookFiguresProps {
  readonly figures: readonly CaptionedFigure[];
  readonly inks: readonly Ink[];
  /** The room they share, pixels. */
  readonly room: { readonly width: number; readonly height: number };
}

/** Small units are not blown up beyond this, pixels for one inch of cloth. */
const LARGEST = 34;
const GAP = 24;

/** Figures in a row, all to one scale. */
export function BookFigures({ figures, inks, room }: BookFiguresProps) {
  if (figures.length === 0) return null;
  const width = figures.reduce((sum, { figure }) => sum + figure.width, 0);
  const height = Math.max(...figures.map(({ figure }) => figure.height));
  const scale = Math.min(LARGEST, (room.width - GAP * (figures.length - 1)) / width, room.height / height);
  return (
    <div className={styles.figures}>
      {figures.map(({ figure, caption }, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the figures are one fixed list that is replaced whole
        <figure key={i}>
          <Figure figure={figure} inks={inks} fit={scale} />
          {caption === undefined ? null : (
            <figcaption>
              <BookWords words={caption} />
            </figcaption>
          )}
        </figure>
      ))}
    </div>
  );
}
