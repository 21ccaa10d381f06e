import { memo, useEffect, useMemo, useState } from 'react';
import { Collection, ListBox, ListBoxItem, ListBoxLoadMoreItem, Size, Virtualizer } from 'react-aria-components';
import type { RecipeCard } from '../../shared/contract.ts';
import { Button } from '../parts/Button.tsx';
import { useStudio } from '../state/hooks.tsx';
import { CardPicture } from './CardPicture.tsx';
import { FilterRow } from './FilterRow.tsx';
import type { ShelfProps } from './PatternShelf.tsx';
import styles from './RecipeShelf.module.css';
import { giveFound } from './recipeActs.ts';
import { useRecipePicture } from './useDrawn.ts';
import { useInSight } from './useInSight.ts';
import type { Shelf } from './useShelf.ts';
import { type Filters, isFiltered } from './wishes.ts';

/** A card's least width and its height; on a large screen the blocks are drawn larger. */
function cardSize(): { readonly width: number; readonly height: number } {
  return window.innerWidth >= 2000 && window.innerHeight >= 1100
    ? { width: 200, height: 250 }
    : { width: 132, height: 172 };
}

function useLayoutOptions() {
  const [{ width, height }, setSize] = useState(cardSize);
  useEffect(() => {
    const measure = () => setSize((before) => (cardSize().width === before.width ? before : cardSize()));
    window.addEventListener('resize', measure);
    return () => window.removeEventListener('resize', measure);
  }, []);
  return useMemo(
    () => ({
      minItemSize: new Size(width, height),
      maxItemSize: new Size(width * 1.4, height),
      minSpace: new Size(8, 8),
    }),
    [width, height],
  );
}

export interface RecipeShelfProps extends ShelfProps {
  /** What is asked for now; the shelf follows a moment later. */
  readonly filters: Filters;
  readonly onFilter: (filters: Filters) => void;
}

/** The house's block recipes, as many as there are: only those in sight are drawn. */
export const RecipeShelf = memo(function RecipeShelf({ shelf, picked, onPick, filters, onFilter }: RecipeShelfProps) {
  const sight = useInSight(picked, shelf);
  return (
    <section className={styles.shelf} aria-labelledby="recipes">
      <header className={styles.head}>
        <h2 id="recipes">Block recipes</h2>
        <FoundActs shelf={shelf} />
      </header>
      <FilterRow filters={filters} onChange={onFilter} />
      <Virtualizer layout={sight.layout} layoutOptions={useLayoutOptions()}>
        <ListBox
          ref={sight.shelf}
          className={styles.grid ?? ''}
          aria-labelledby="recipes"
          layout="grid"
          selectionMode="single"
          selectionBehavior="replace"
          disallowEmptySelection
          selectedKeys={picked === undefined ? [] : [picked]}
          onSelectionChange={(keys) => keys !== 'all' && onPick(String([...keys][0]))}
          renderEmptyState={() => <Empty shelf={shelf} />}
        >
          <Collection items={shelf.recipes}>{(card) => <RecipeItem card={card} />}</Collection>
          <ListBoxLoadMoreItem onLoadMore={shelf.more} />
        </ListBox>
      </Virtualizer>
    </section>
  );
});

/** How many there are, and a file of them all. */
function FoundActs({ shelf }: { readonly shelf: Shelf }) {
  const studio = useStudio();
  const { count } = shelf;
  if (count === 0) return null;
  return (
    <>
      <span className={styles.count} role="status">
        {count === 1 ? '1 recipe' : `${count} recipes`}
      </span>
      <Button tone="bare" small onPress={() => void giveFound(studio, shelf.wishes)}>
        Save them as a file
      </Button>
    </>
  );
}

function Empty({ shelf: { waiting, wishes } }: { readonly shelf: Shelf }) {
  if (waiting) return null;
  if (isFiltered(wishes.filters)) return <p className="quiet">No block is all of that. Take a filter away.</p>;
  return <p className="quiet">{wishes.words === '' ? 'No recipes yet.' : 'No block by those words.'}</p>;
}

function RecipeItem({ card }: { readonly card: RecipeCard }) {
  const picture = useRecipePicture(card);
  return (
    <ListBoxItem id={card.id} textValue={card.name} className={styles.card ?? ''}>
      <span className={styles.picture} aria-hidden="true">
        <CardPicture picture={picture} of="block" />
      </span>
      <span className={styles.name}>{card.name}</span>
      <span className={styles.tags}>{card.tags[0] ?? ''}</span>
    </ListBoxItem>
  );
}
