import { useState } from 'react';
import type { RecipeCard, RecipeRevision } from '../../shared/contract.ts';
import { Button } from '../parts/Button.tsx';
import { Dialog } from '../parts/Dialog.tsx';
import { Rows } from '../parts/Rows.tsx';
import { useStudio } from '../state/hooks.tsx';
import { RecipePicture } from './RecipePicture.tsx';
import { keepRecipe } from './recipeActs.ts';
import { useRevisions } from './useRecipeFacts.ts';
import type { Shelf } from './useShelf.ts';

const WHEN = new Intl.DateTimeFormat('en-US', { dateStyle: 'medium', timeStyle: 'short' });

/** Every revision that was saved of a recipe; a press shows it as it was. */
export function RevisionList({ card, shelf }: { readonly card: RecipeCard; readonly shelf: Shelf }) {
  const revisions = useRevisions(card);
  const [shown, setShown] = useState<RecipeRevision | null>(null);
  const rows = revisions.map((one) => ({
    id: String(one.revision),
    name: `Revision ${one.revision}`,
    more: WHEN.format(new Date(one.changed)),
    end: one.revision === card.revision ? 'now' : '',
    onPress: () => setShown(one),
  }));
  return (
    <>
      <Rows label="Revisions" rows={rows} />
      {shown === null ? null : (
        <RevisionDialog card={card} shown={shown} shelf={shelf} onClose={() => setShown(null)} />
      )}
    </>
  );
}

interface RevisionDialogProps {
  readonly card: RecipeCard;
  readonly shown: RecipeRevision;
  readonly shelf: Shelf;
  readonly onClose: () => void;
}

function RevisionDialog({ card, shown, shelf, onClose }: RevisionDialogProps) {
  const studio = useStudio();
  const isNow = shown.revision === card.revision;
  const again = () => {
    onClose();
    void keepRecipe(studio, shown.recipe, shelf.again);
  };
  const foot = (
    <>
      <Button onPress={onClose}>Close</Button>
      {isNow ? null : (
        <Button tone="strong" onPress={again}>
          Make it the newest again
        </Button>
      )}
    </>
  );
  const title = `${shown.recipe.name}, revision ${shown.revision}${isNow ? ', the newest' : ''}`;
  return (
    <Dialog title={title} isOpen onClose={onClose} foot={foot}>
      <RecipePicture recipe={shown.recipe} />
      <p className="quiet small">Saved {WHEN.format(new Date(shown.changed))}.</p>
      {shown.recipe.summary === '' ? null : <p>{shown.recipe.summary}</p>}
    </Dialog>
  );
}
