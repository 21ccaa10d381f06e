import type { Recipe } from '../../shared/recipe/schema.ts';
import { Figure } from '../parts/figure/Figure.tsx';
import styles from './LibraryView.module.css';
import { useRecipePicture } from './useDrawn.ts';

/** A recipe's block, as large as a panel or dialog has room for. */
export function RecipePicture({ recipe }: { readonly recipe: Recipe }) {
  const picture = useRecipePicture({ recipe });
  return (
    <div className={styles.panelPicture}>
      {picture === null ? null : <Figure figure={picture.figure} inks={picture.inks} />}
    </div>
  );
}
