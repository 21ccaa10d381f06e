import type { ComponentType } from 'react';
import type { WorkedOut } from '../../shared/workroom/workedOut.ts';
import { useCommands } from '../commands/context.ts';
import { Choice } from '../parts/Choice.tsx';
import { useWorked } from '../state/hooks.tsx';
import { BundlePart } from './bundle/BundlePart.tsx';
import { ClothSidePanel } from './ClothSidePanel.tsx';
import { Charts } from './charts/Charts.tsx';
import styles from './cloth.module.css';
import { type ClothPart, clothStore, useClothState } from './clothStore.ts';
import { Cutting } from './cutting/Cutting.tsx';
import { Fabrics } from './fabrics/Fabrics.tsx';
import { Finishing } from './finishing/Finishing.tsx';
import { Kits } from './kits/Kits.tsx';
import { CLOTH_COMMANDS, PARTS } from './parts.ts';

const VIEW_OF: Readonly<Record<ClothPart, ComponentType<{ readonly worked: WorkedOut }>>> = {
  charts: Charts,
  cutting: Cutting,
  fabrics: Fabrics,
  bundle: BundlePart,
  finishing: Finishing,
  kits: Kits,
};

/** What is bought, how it is cut, and what it is cut from. */
export function ClothView() {
  const worked = useWorked();
  const part = useClothState((state) => state.part);
  useCommands(CLOTH_COMMANDS);
  const Part = VIEW_OF[part];
  return (
    <div className={styles.view}>
      <header className={styles.head}>
        <Choice
          label="What of the cloth"
          bare
          value={part}
          options={PARTS}
          onChange={(next) => clothStore.setState({ part: next, under: null })}
        />
      </header>
      {worked === null ? null : <Part worked={worked} />}
      <ClothSidePanel />
    </div>
  );
}
