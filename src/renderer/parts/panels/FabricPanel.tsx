import { useState } from 'react';
import {
  removeFabric,
  renameFabric,
  setFabricColour,
  setFabricDirection,
  setFabricValue,
} from '../../../shared/pattern/edits/index.ts';
import type { Fabric } from '../../../shared/pattern/schema.ts';
import type { Value } from '../../../shared/recipe/schema.ts';
import { PanelPart, SidePanel } from '../../app/SidePanel.tsx';
import { useAct, usePattern } from '../../state/hooks.tsx';
import { BackTo } from '../BackTo.tsx';
import { Button } from '../Button.tsx';
import { Choice } from '../Choice.tsx';
import { ColourPick } from '../ColourPick.tsx';
import { Pick } from '../Pick.tsx';
import { PhotographPart } from '../photograph/PhotographPart.tsx';
import { TextField } from '../TextField.tsx';
import { BoughtPart } from './BoughtPart.tsx';
import { ScrapsPart } from './ScrapsPart.tsx';

const VALUES: readonly { readonly id: Value; readonly says: string }[] = [
  { id: 'light', says: 'Light' },
  { id: 'medium', says: 'Medium' },
  { id: 'dark', says: 'Dark' },
];

const PRINTS = [
  { id: 'none', says: 'Any way up' },
  { id: 'two-way', says: 'In lines' },
  { id: 'one-way', says: 'Has a top' },
] as const;

interface FabricPanelProps {
  /** The fabric's id. */
  readonly fabric: string;
  readonly onBack: () => void;
  readonly backTo: string;
}

/** One fabric of the pattern: its name, colour and value, wherever it is cut. */
export function FabricPanel({ fabric: id, onBack, backTo }: FabricPanelProps) {
  const { fabrics } = usePattern();
  const act = useAct();
  const fabric = fabrics.find((one) => one.id === id);
  if (fabric === undefined) return null;
  return (
    <SidePanel title={fabric.name} kind="Fabric">
      <BackTo onPress={onBack}>{backTo}</BackTo>
      <TextField
        label="Name, as the pattern prints it"
        value={fabric.name}
        needed="A fabric needs a name."
        onChange={(name) => act(renameFabric, { fabric: id, name })}
      />
      <ColourPick
        of={fabric.name}
        colour={fabric.colour}
        onChange={(colour) => act(setFabricColour, { fabric: id, colour }, `colour ${id}`)}
      />
      <Choice
        label="Value"
        value={fabric.value}
        options={VALUES}
        onChange={(value) => act(setFabricValue, { fabric: id, value })}
      />
      <p className="quiet small">
        The value chooses the hatch that stands for this fabric where the pattern is printed without colour.
      </p>
      <Choice
        label="Its print"
        value={fabric.direction ?? 'none'}
        options={PRINTS}
        onChange={(way) => act(setFabricDirection, { fabric: id, direction: way === 'none' ? null : way })}
      />
      {fabric.direction === undefined ? null : (
        <p className="quiet small">Its pieces stand upright in the quilt, so they are never turned to save cloth.</p>
      )}
      <PhotographPart key={fabric.id} fabric={fabric} />
      <ScrapsPart fabric={fabric} />
      <BoughtPart fabric={fabric} />
      <RemoveFabric fabric={fabric} onGone={onBack} />
    </SidePanel>
  );
}

function RemoveFabric({ fabric, onGone }: { readonly fabric: Fabric; readonly onGone: () => void }) {
  const { fabrics } = usePattern();
  const act = useAct();
  const [chosen, choose] = useState<string | null>(null);
  const others = fabrics.filter(({ id }) => id !== fabric.id);
  const [first] = others;
  if (first === undefined) return null;
  const instead = others.some(({ id }) => id === chosen) ? (chosen as string) : first.id;
  return (
    <PanelPart title="Remove this fabric">
      <Pick label="What is cut instead" value={instead} options={others} onChange={choose} />
      <Button
        tone="stops"
        onPress={() => {
          act(removeFabric, { fabric: fabric.id, instead });
          onGone();
        }}
      >
        Remove {fabric.name}
      </Button>
    </PanelPart>
  );
}
