import { useEffect, useState } from 'react';
import type { KeptRecipe } from '../../../shared/contract.ts';
import { noteRevision, renameRecipe, setUsualSize } from '../../../shared/pattern/edits/index.ts';
import { isAlike } from '../../../shared/pattern/revisions.ts';
import type { Recipe } from '../../../shared/recipe/schema.ts';
import { PanelPart } from '../../app/SidePanel.tsx';
import { Button } from '../../parts/Button.tsx';
import { NumberField } from '../../parts/NumberField.tsx';
import { TextField } from '../../parts/TextField.tsx';
import { useStudio } from '../../state/hooks.tsx';
import { refusalOf } from '../../state/host.ts';
import type { Studio } from '../../state/studio.ts';
import styles from './panel.module.css';

/** The recipe behind the block: what the library calls it, its usual size, and keeping it there as it is now. */
export function KeepPart({ recipe }: { readonly recipe: Recipe }) {
  const studio = useStudio();
  const [kept, ask] = useKept(recipe.id);
  const same = kept !== null && isAlike(kept.recipe, recipe);
  const keep = async () => {
    await keepRecipe(studio, recipe);
    ask();
  };
  return (
    <PanelPart title="In the library">
      <TextField
        label="Recipe’s name"
        value={recipe.name}
        needed="A recipe needs a name."
        onChange={(name) => studio.act(renameRecipe, { recipe: recipe.id, name })}
      />
      <NumberField
        label="Usual finished width"
        value={recipe.finished}
        least={0.5}
        most={120}
        onChange={(finished) => studio.act(setUsualSize, { recipe: recipe.id, finished })}
      />
      <p className="quiet small">{standing(kept, same)}</p>
      <Button className={styles.start ?? ''} small isDisabled={same} onPress={() => void keep()}>
        {kept === null ? 'Keep it in the library' : `Keep it as revision ${kept.revision + (same ? 0 : 1)}`}
      </Button>
    </PanelPart>
  );
}

function standing(kept: KeptRecipe | null, same: boolean): string {
  if (kept === null) return 'Only this pattern has it so far.';
  if (same) return `The library has it as it is here: revision ${kept.revision}.`;
  return `It has changed since the library’s revision ${kept.revision}, which stays there.`;
}

/** What the library has under the recipe's id; asked again when told to. */
function useKept(id: string): readonly [KeptRecipe | null, () => void] {
  const { host } = useStudio();
  const [kept, setKept] = useState<KeptRecipe | null>(null);
  const [asked, setAsked] = useState(0);
  // biome-ignore lint/correctness/useExhaustiveDependencies: it is asked anew when told to
  useEffect(() => {
    let wanted = true;
    host
      .keptRecipes([id])
      .then(([one]) => wanted && setKept(one ?? null))
      .catch(() => undefined);
    return () => {
      wanted = false;
    };
  }, [host, id, asked]);
  return [kept, () => setAsked((before) => before + 1)];
}

async function keepRecipe(studio: Studio, recipe: Recipe): Promise<void> {
  try {
    const { revision } = await studio.host.saveRecipe(recipe);
    studio.act(noteRevision, { recipe: recipe.id, revision });
    studio.say(`“${recipe.name}” is in the library, revision ${revision}.`);
  } catch (thrown) {
    studio.say(refusalOf(thrown).words, { tone: 'stops' });
  }
}
