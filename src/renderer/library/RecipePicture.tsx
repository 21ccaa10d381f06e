import type { Recipe } from '../../shared/recipe/schema.ts';
import { CardPicture } from './CardPicture.tsx';
import styles from './LibraryView.module.css';
import { useRecipePicture } from './useDrawn.ts';

/** A recipe's block, as large as a panel or dialog has room for. */
export function RecipePicture({ recipe }: { readonly recipe: Recipe }) {
  const picture = useRecipePicture({ recipe });
  return (
    <div className={styles.panelPicture}>
      <CardPicture picture={picture} of="block" />
    </div>
  );
}
