import { memo } from 'react';
import { ListBox, ListBoxItem } from 'react-aria-components';
import type { PatternCard } from '../../shared/contract.ts';
import { Stitch } from '../parts/Stitch.tsx';
import { useStudio, useStudioState } from '../state/hooks.tsx';
import { CardPicture } from './CardPicture.tsx';
import styles from './PatternShelf.module.css';
import { openPattern } from './patternActs.ts';
import { usePatternPicture } from './useDrawn.ts';
import type { Shelf } from './useShelf.ts';

export interface ShelfProps {
  readonly shelf: Shelf;
  /** Id of the card that is picked. */
  readonly picked: string | undefined;
  readonly onPick: (id: string) => void;
}

/** The patterns as quilts standing on a shelf, the last changed first. A double click or Enter opens one. */
export const PatternShelf = memo(function PatternShelf({ shelf, picked, onPick }: ShelfProps) {
  const studio = useStudio();
  return (
    <section className={styles.shelf} aria-labelledby="patterns">
      <h2 id="patterns">Patterns</h2>
      <ListBox
        className={styles.row ?? ''}
        aria-labelledby="patterns"
        orientation="horizontal"
        items={shelf.patterns}
        selectionMode="single"
        selectionBehavior="replace"
        disallowEmptySelection
        selectedKeys={picked === undefined ? [] : [picked]}
        onSelectionChange={(keys) => keys !== 'all' && onPick(String([...keys][0]))}
        onAction={(id) => void openPattern(studio, String(id))}
        renderEmptyState={() => <Empty waiting={shelf.waiting} words={shelf.wishes.words} />}
      >
        {(card) => <PatternItem card={card} />}
      </ListBox>
      <Stitch tone="bare" />
    </section>
  );
});

function Empty({ waiting, words }: { readonly waiting: boolean; readonly words: string }) {
  if (waiting) return null;
  if (words.trim() !== '') return <p className="quiet">No pattern of that name.</p>;
  return <p className="quiet">No pattern yet. Pick a block below and make one from it.</p>;
}

function PatternItem({ card }: { readonly card: PatternCard }) {
  const picture = usePatternPicture(card);
  const open = useStudioState(({ history }) => history?.now.id === card.id);
  const sizes = card.sizes === 1 ? '1 size' : `${card.sizes} sizes`;
  return (
    <ListBoxItem id={card.id} textValue={card.title} className={styles.card ?? ''}>
      <span className={styles.picture} aria-hidden="true">
        <CardPicture picture={picture} of="quilt" />
      </span>
      <span className={styles.title}>{card.title}</span>
      <span className={styles.more}>{open ? `${sizes}, open now` : sizes}</span>
    </ListBoxItem>
  );
}
