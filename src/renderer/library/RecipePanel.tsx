import { useState } from 'react';
import type { RecipeCard } from '../../shared/contract.ts';
import { fractionOf } from '../../shared/measure/fraction.ts';
import { fabricsForRoles } from '../../shared/pattern/fresh.ts';
import { PanelPart, SidePanel } from '../app/SidePanel.tsx';
import { Button } from '../parts/Button.tsx';
import { FabricSwatch } from '../parts/FabricSwatch.tsx';
import { Figure } from '../parts/figure/Figure.tsx';
import { useStudio } from '../state/hooks.tsx';
import { AddToPattern } from './AddToPattern.tsx';
import styles from './LibraryView.module.css';
import { MakePattern } from './MakePattern.tsx';
import { removeRecipe } from './recipeActs.ts';
import { useRecipePicture } from './useDrawn.ts';
import type { Shelf } from './useShelf.ts';

/** A block recipe on the shelf, and what can be made of it. */
export function RecipePanel({ card, shelf }: { readonly card: RecipeCard; readonly shelf: Shelf }) {
  const studio = useStudio();
  const picture = useRecipePicture(card);
  const [making, setMaking] = useState(false);
  const { recipe, usedIn } = card;
  return (
    <SidePanel kind="Block recipe" title={card.name}>
      <div className={styles.panelPicture}>
        {picture === null ? null : <Figure figure={picture.figure} inks={picture.inks} />}
      </div>
      {recipe.summary === '' ? null : <p>{recipe.summary}</p>}
      <div className={styles.acts}>
        <Button tone="strong" onPress={() => setMaking(true)}>
          Make a pattern from it
        </Button>
        <AddToPattern recipe={recipe} />
        {card.starter ? null : (
          <Button tone="stops" onPress={() => void removeRecipe(studio, recipe, shelf.again)}>
            Remove
          </Button>
        )}
      </div>
      <dl className={styles.facts}>
        <dt>Usual size</dt>
        <dd>{fractionOf(recipe.finished)}″ finished</dd>
        {recipe.parameters.map(({ id, name, default: usual, least, most }) => (
          <Parameter key={id} name={name} words={`${usual}, from ${least} to ${most}`} />
        ))}
        {usedIn.length === 0 ? null : <Parameter name="Used in" words={usedIn.join(', ')} />}
      </dl>
      <PanelPart title="Fabric roles">
        <ul>
          {fabricsForRoles(recipe.roles).map(({ id, name, value, colour }) => (
            <li key={id}>
              <FabricSwatch colour={colour} name={name} value={value} />
            </li>
          ))}
        </ul>
      </PanelPart>
      <MakePattern recipe={recipe} isOpen={making} onClose={() => setMaking(false)} />
    </SidePanel>
  );
}

function Parameter({ name, words }: { readonly name: string; readonly words: string }) {
  return (
    <>
      <dt>{name}</dt>
      <dd>{words}</dd>
    </>
  );
}
