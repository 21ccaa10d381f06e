import { useState } from 'react';
import type { RecipeCard } from '../../shared/contract.ts';
import { fabricsForRoles } from '../../shared/pattern/fresh.ts';
import { standingOf } from '../../shared/pattern/revisions.ts';
import { PanelPart, SidePanel } from '../app/SidePanel.tsx';
import { Button } from '../parts/Button.tsx';
import { FabricSwatch } from '../parts/FabricSwatch.tsx';
import { useStudio, useStudioState } from '../state/hooks.tsx';
import { AddToPattern } from './AddToPattern.tsx';
import styles from './LibraryView.module.css';
import { MakePattern } from './MakePattern.tsx';
import { RecipeFacts } from './RecipeFacts.tsx';
import { RecipePicture } from './RecipePicture.tsx';
import { RevisionList } from './RevisionList.tsx';
import { giveRecipes, removeRecipe } from './recipeActs.ts';
import { TakeRecipe } from './TakeRecipe.tsx';
import type { Shelf } from './useShelf.ts';

/** A block recipe on the shelf, and what can be made of it. */
export function RecipePanel({ card, shelf }: { readonly card: RecipeCard; readonly shelf: Shelf }) {
  const studio = useStudio();
  const [making, setMaking] = useState(false);
  const { recipe } = card;
  return (
    <SidePanel kind="Block recipe" title={card.name}>
      <RecipePicture recipe={recipe} />
      {recipe.summary === '' ? null : <p>{recipe.summary}</p>}
      <NewsForPattern card={card} />
      <div className={styles.acts}>
        <Button tone="strong" onPress={() => setMaking(true)}>
          Make a pattern from it
        </Button>
        <AddToPattern card={card} />
        <Button onPress={() => void giveRecipes(studio, [card.id])}>Save as a file</Button>
        {card.starter ? null : (
          <Button tone="stops" onPress={() => void removeRecipe(studio, recipe, shelf.again)}>
            Remove
          </Button>
        )}
      </div>
      <RecipeFacts card={card} />
      <PanelPart title="Fabric roles">
        <ul>
          {fabricsForRoles(recipe.roles).map(({ id, name, value, colour }) => (
            <li key={id}>
              <FabricSwatch colour={colour} name={name} value={value} />
            </li>
          ))}
        </ul>
      </PanelPart>
      <PanelPart title="Revisions">
        <RevisionList card={card} shelf={shelf} />
      </PanelPart>
      <MakePattern card={card} isOpen={making} onClose={() => setMaking(false)} />
    </SidePanel>
  );
}

/** Told when the open pattern was made with an older revision of this recipe. */
function NewsForPattern({ card }: { readonly card: RecipeCard }) {
  const open = useStudioState(({ history }) => history?.now);
  const [shown, setShown] = useState(false);
  if (open === undefined) return null;
  const standing = standingOf(open, card.recipe, card.revision);
  if (standing !== 'newer' && standing !== 'apart') return null;
  const madeWith = open.revisions?.[card.id];
  const has = madeWith === undefined ? 'another revision' : `revision ${madeWith}`;
  return (
    <>
      <p>
        “{open.title}” has {has} of it; this is revision {card.revision}.
      </p>
      <Button onPress={() => setShown(true)}>See what taking it would change</Button>
      {shown ? <TakeRecipe news={card} onClose={() => setShown(false)} /> : null}
    </>
  );
}
