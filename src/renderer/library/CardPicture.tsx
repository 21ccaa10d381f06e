import { Figure } from '../parts/figure/Figure.tsx';
import type { Drawn } from '../state/away/pictures.ts';
import styles from './CardPicture.module.css';

interface CardPictureProps {
  /** Null when it cannot be drawn, undefined until it is. */
  readonly picture: Drawn | null | undefined;
  readonly of: 'block' | 'quilt';
}

/** A block or quilt as large as its place; until it is drawn bare cloth of about its size. */
export function CardPicture({ picture, of }: CardPictureProps) {
  if (picture === undefined) return <span className={styles.bare} data-of={of} />;
  if (picture === null) return <span className={styles.none}>Cannot be drawn yet</span>;
  return <Figure figure={picture.figure} inks={picture.inks} />;
}
