import { setBacking, setBinding } from '../../shared/pattern/edits/index.ts';
import { PanelPart } from '../app/SidePanel.tsx';
import { FabricPick } from '../parts/FabricPick.tsx';
import { NumberField } from '../parts/NumberField.tsx';
import { useAct, usePattern } from '../state/hooks.tsx';

/** Binding and backing. */
export function FinishingPart() {
  const { binding, backing } = usePattern();
  const act = useAct();
  return (
    <>
      <PanelPart title="Binding">
        <FabricPick
          label="Fabric of the binding"
          value={binding.fabric}
          onChange={(fabric) => act(setBinding, { fabric })}
        />
        <NumberField
          label="Cut width of the strips"
          value={binding.strip}
          least={0.5}
          most={6}
          onChange={(strip) => act(setBinding, { strip }, 'binding')}
        />
      </PanelPart>
      <PanelPart title="Backing and batting">
        <FabricPick
          label="Fabric of the backing"
          value={backing.fabric}
          onChange={(fabric) => act(setBacking, { fabric })}
        />
        <NumberField
          label="Reach beyond each side"
          value={backing.beyond}
          least={0}
          most={20}
          step={0.5}
          onChange={(beyond) => act(setBacking, { beyond }, 'backing')}
        />
      </PanelPart>
    </>
  );
}
