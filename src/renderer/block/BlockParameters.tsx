import { setParameter } from '../../shared/pattern/edits/index.ts';
import type { BlockChoice } from '../../shared/pattern/schema.ts';
import type { Recipe } from '../../shared/recipe/schema.ts';
import { PanelPart } from '../app/SidePanel.tsx';
import { Stepper } from '../parts/Stepper.tsx';
import { useAct } from '../state/hooks.tsx';

interface BlockParametersProps {
  readonly choice: BlockChoice;
  readonly recipe: Recipe;
}

/** The numbers the recipe leaves open, and what it says of itself; nothing where it does neither. */
export function BlockParameters({ choice, recipe }: BlockParametersProps) {
  const act = useAct();
  if (recipe.summary === '' && recipe.parameters.length === 0) return null;
  return (
    <PanelPart title={`From the recipe “${recipe.name}”`}>
      {recipe.summary === '' ? null : <p className="quiet small">{recipe.summary}</p>}
      {recipe.parameters.map(({ id, name, default: usual, least, most }) => (
        <Stepper
          key={id}
          label={name}
          value={choice.parameters[id] ?? usual}
          least={least}
          most={most}
          onChange={(value) =>
            act(setParameter, { block: choice.id, parameter: id, value }, `parameter ${choice.id} ${id}`)
          }
        />
      ))}
    </PanelPart>
  );
}
