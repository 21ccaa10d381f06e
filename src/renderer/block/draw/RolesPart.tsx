import { useState } from 'react';
import { Button as AriaButton } from 'react-aria-components';
import { addRole, removeRole, renameRole, setRoleFabric, setRoleValue } from '../../../shared/pattern/edits/index.ts';
import type { BlockChoice } from '../../../shared/pattern/schema.ts';
import type { Role, Value } from '../../../shared/recipe/schema.ts';
import { PanelPart } from '../../app/SidePanel.tsx';
import { Button } from '../../parts/Button.tsx';
import { Choice } from '../../parts/Choice.tsx';
import { FabricPick } from '../../parts/FabricPick.tsx';
import { FabricSwatch } from '../../parts/FabricSwatch.tsx';
import { TextField } from '../../parts/TextField.tsx';
import { useAct } from '../../state/hooks.tsx';
import { drawStore } from './drawStore.ts';
import styles from './panel.module.css';
import type { DrawnBlock } from './useDrawn.ts';

const VALUES: readonly { readonly id: Value; readonly says: string }[] = [
  { id: 'light', says: 'Light' },
  { id: 'medium', says: 'Medium' },
  { id: 'dark', says: 'Dark' },
];

interface RolesPartProps {
  readonly drawn: DrawnBlock;
  readonly choice: BlockChoice;
}

/** The fabric roles of the drawing. One is opened at a time, to be named, valued, cut from another fabric, or taken away. */
export function RolesPart({ drawn, choice }: RolesPartProps) {
  const { recipe, colourOf } = drawn;
  const act = useAct();
  const [open, setOpen] = useState<string | null>(null);
  const add = () => {
    act(addRole, { recipe: recipe.id, name: `Fabric ${recipe.roles.length + 1}`, value: 'medium' });
    setOpen(null);
  };
  return (
    <PanelPart title="Fabric roles">
      <ul className={styles.roles}>
        {recipe.roles.map((role) => (
          <li key={role.id}>
            <AriaButton
              className={styles.role ?? ''}
              aria-expanded={open === role.id}
              onPress={() => {
                setOpen(open === role.id ? null : role.id);
                drawStore.setState({ brush: role.id });
              }}
            >
              <FabricSwatch colour={colourOf(role.id)} name={role.name} value={role.value} />
            </AriaButton>
            {open === role.id ? <RoleFields drawn={drawn} choice={choice} role={role} /> : null}
          </li>
        ))}
      </ul>
      <Button className={styles.start ?? ''} small isDisabled={recipe.roles.length >= 40} onPress={add}>
        Add a role
      </Button>
    </PanelPart>
  );
}

function RoleFields({ drawn, choice, role }: RolesPartProps & { readonly role: Role }) {
  const { recipe, drawing } = drawn;
  const act = useAct();
  const mine = { recipe: recipe.id, role: role.id };
  const instead = recipe.roles.find(({ id }) => id !== role.id);
  const used = drawing.patches.filter((patch) => patch.role === role.id).length;
  return (
    <div className={styles.roleFields}>
      <TextField
        label="Name"
        value={role.name}
        needed="A role needs a name."
        onChange={(name) => act(renameRole, { ...mine, name })}
      />
      <Choice
        label="Value"
        value={role.value}
        options={VALUES}
        onChange={(value) => act(setRoleValue, { ...mine, value })}
      />
      <FabricPick
        label="Cut from"
        value={choice.fabrics[role.id] ?? role.id}
        onChange={(fabric) => act(setRoleFabric, { block: choice.id, role: role.id, fabric })}
      />
      {instead === undefined ? null : (
        <Button
          className={styles.start ?? ''}
          small
          tone="stops"
          onPress={() => act(removeRole, { ...mine, instead: instead.id })}
        >
          {used === 0 ? 'Take it away' : `Take it away; ${instead.name} instead`}
        </Button>
      )}
    </div>
  );
}
