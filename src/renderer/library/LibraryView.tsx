import { useCallback, useMemo, useState } from 'react';
import { type DropItem, DropZone } from 'react-aria-components';
import type { Imported } from '../../shared/contract.ts';
import { DrawNewBlock } from '../block/draw/DrawNewBlock.tsx';
import { Search } from '../parts/Search.tsx';
import { useStudio, useStudioState } from '../state/hooks.tsx';
import { BringIn } from './BringIn.tsx';
import { bringFiles } from './bringing.ts';
import styles from './LibraryView.module.css';
import { PatternPanel } from './PatternPanel.tsx';
import { PatternShelf } from './PatternShelf.tsx';
import { RecipePanel } from './RecipePanel.tsx';
import { RecipeShelf } from './RecipeShelf.tsx';
import { useRecipeCard } from './useRecipeCard.ts';
import { useShelf } from './useShelf.ts';
import { NO_FILTERS } from './wishes.ts';

/** One thing on the shelf. */
interface Picked {
  readonly kind: 'pattern' | 'recipe';
  readonly id: string;
}

/** What to show of a file that came in; null when all of it was here already. */
function whatCame(imported: Imported): Picked | null {
  if (imported.kind !== 'recipes') return imported;
  const [id] = imported.ids;
  return id === undefined ? null : { kind: 'recipe', id };
}

function filesAmong(items: readonly DropItem[]): Promise<readonly File[]> {
  return Promise.all(items.flatMap((item) => (item.kind === 'file' ? [item.getFile()] : [])));
}

/** What a pattern or recipe file may call itself when it is dropped; systems differ. */
const TAKEN = ['application/json', 'text/plain', 'application/octet-stream'];

/** The library: patterns on a shelf, the house's block recipes below, what is picked at the side. */
export function LibraryView() {
  const [words, setWords] = useState('');
  const [filters, setFilters] = useState(NO_FILTERS);
  const wishes = useMemo(() => ({ words, filters }), [words, filters]);
  const open = useStudioState(({ history }) => history?.now.id);
  // What is picked is named by what stays the same when the shelf is asked for again.
  const [picked, setPicked] = useState<Picked | null>(open === undefined ? null : { kind: 'pattern', id: open });
  const shelf = useShelf(wishes);
  const studio = useStudio();
  const bringIn = (files: readonly File[]) =>
    void bringFiles(studio, files, (came) => {
      setPicked((before) => whatCame(came) ?? before);
      shelf.again();
    });
  const pickPattern = useCallback((id: string) => setPicked({ kind: 'pattern', id }), []);
  const pickRecipe = useCallback((id: string) => setPicked({ kind: 'recipe', id }), []);
  const pattern = picked?.kind === 'pattern' ? shelf.patterns.find(({ id }) => id === picked.id) : undefined;
  const recipe = useRecipeCard(picked?.kind === 'recipe' ? picked.id : undefined, shelf);

  return (
    <DropZone
      className={styles.library ?? ''}
      aria-label="Library. Files may be dropped here."
      getDropOperation={(types) => (TAKEN.some((type) => types.has(type)) ? 'copy' : 'cancel')}
      onDrop={({ items }) => void filesAmong(items).then(bringIn)}
    >
      <div className={styles.top}>
        <div className={styles.search}>
          <Search label="Find a pattern or a block" value={words} onChange={setWords} />
        </div>
        <div className={styles.acts}>
          <BringIn onFiles={bringIn} />
          <DrawNewBlock />
        </div>
      </div>
      <PatternShelf shelf={shelf} picked={pattern?.id} onPick={pickPattern} />
      <RecipeShelf shelf={shelf} picked={recipe?.id} onPick={pickRecipe} filters={filters} onFilter={setFilters} />
      {pattern === undefined ? null : <PatternPanel key={pattern.id} card={pattern} shelf={shelf} />}
      {recipe === undefined ? null : <RecipePanel key={recipe.id} card={recipe} shelf={shelf} />}
    </DropZone>
  );
}
