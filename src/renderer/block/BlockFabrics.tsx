import { setRoleFabric } from '../../shared/pattern/edits/index.ts';
import type { BlockChoice } from '../../shared/pattern/schema.ts';
import type { Recipe } from '../../shared/recipe/schema.ts';
import { PanelPart } from '../app/SidePanel.tsx';
import { Button } from '../parts/Button.tsx';
import { FabricPick } from '../parts/FabricPick.tsx';
import { useAct, useSelection } from '../state/hooks.tsx';
import styles from './block.module.css';

interface BlockFabricsProps {
  readonly choice: BlockChoice;
  readonly recipe: Recipe;
}

/** Each role of the recipe with the fabric it is cut from. */
export function BlockFabrics({ choice, recipe }: BlockFabricsProps) {
  const act = useAct();
  const [, select] = useSelection();
  return (
    <PanelPart title="Fabrics">
      <ul className={styles.roles}>
        {recipe.roles.map((role) => {
          const fabric = choice.fabrics[role.id] ?? role.id;
          return (
            <li key={role.id} className={styles.role}>
              <span className={styles.roleName}>
                {role.name} <span className="quiet">{role.value}</span>
              </span>
              <FabricPick
                label={`Fabric for ${role.name}`}
                bare
                value={fabric}
                onChange={(next) => act(setRoleFabric, { block: choice.id, role: role.id, fabric: next })}
              />
              <Button
                tone="bare"
                small
                aria-label={`Change the fabric of ${role.name}`}
                onPress={() => select({ kind: 'fabric', fabric })}
              >
                Change
              </Button>
            </li>
          );
        })}
      </ul>
    </PanelPart>
  );
}
