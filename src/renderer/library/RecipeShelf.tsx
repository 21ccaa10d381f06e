import { GridLayout, ListBox, ListBoxItem, ListBoxLoadMoreItem, Size, Virtualizer } from 'react-aria-components';
import type { RecipeCard } from '../../shared/contract.ts';
import { Figure } from '../parts/figure/Figure.tsx';
import type { ShelfProps } from './PatternShelf.tsx';
import styles from './RecipeShelf.module.css';
import { useRecipePicture } from './useDrawn.ts';

const CARD = {
  minItemSize: new Size(132, 172),
  maxItemSize: new Size(200, 172),
  minSpace: new Size(12, 12),
  preserveAspectRatio: false,
};

/** The house's block recipes, as many as there are: only those in sight are drawn. */
export function RecipeShelf({ shelf, picked, words, onPick }: ShelfProps) {
  return (
    <section className={styles.shelf} aria-labelledby="recipes">
      <h2 id="recipes">Block recipes</h2>
      <Virtualizer layout={GridLayout} layoutOptions={CARD}>
        <ListBox
          className={styles.grid ?? ''}
          aria-labelledby="recipes"
          layout="grid"
          items={shelf.recipes}
          selectionMode="single"
          selectionBehavior="replace"
          disallowEmptySelection
          selectedKeys={picked === undefined ? [] : [picked]}
          onSelectionChange={(keys) => keys !== 'all' && onPick(String([...keys][0]))}
          renderEmptyState={() =>
            shelf.waiting ? null : (
              <p className="quiet">{words === '' ? 'No recipes yet.' : 'No block by those words.'}</p>
            )
          }
        >
          {shelf.recipes.map((card) => (
            <RecipeItem key={card.id} card={card} />
          ))}
          <ListBoxLoadMoreItem onLoadMore={shelf.more} />
        </ListBox>
      </Virtualizer>
    </section>
  );
}

function RecipeItem({ card }: { readonly card: RecipeCard }) {
  const picture = useRecipePicture(card);
  return (
    <ListBoxItem id={card.id} textValue={card.name} className={styles.card ?? ''}>
      <span className={styles.picture} aria-hidden="true">
        {picture === null ? null : <Figure figure={picture.figure} inks={picture.inks} />}
      </span>
      <span className={styles.name}>{card.name}</span>
      <span className={styles.tags}>{card.tags.join(', ')}</span>
    </ListBoxItem>
  );
}
