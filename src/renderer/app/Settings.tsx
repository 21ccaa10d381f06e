import { useState } from 'react';
import { Choice } from '../parts/Choice.tsx';
import { Dialog } from '../parts/Dialog.tsx';
import { useStudio, useStudioState } from '../state/hooks.tsx';
import {
  type Appearance,
  chooseAppearance,
  chosenAppearance,
  setSingleKeys,
  singleKeysOn,
} from '../theme/appearance.ts';

const APPEARANCES: readonly { readonly id: Appearance; readonly says: string }[] = [
  { id: 'system', says: 'As the system' },
  { id: 'light', says: 'Light' },
  { id: 'dark', says: 'Dark' },
];

const KEYS = [
  { id: 'on', says: 'Single keys work' },
  { id: 'off', says: 'Only with Ctrl' },
] as const;

/** What belongs to this machine rather than to a pattern. */
export function Settings() {
  const studio = useStudio();
  const isOpen = useStudioState(({ dialog }) => dialog === 'settings');
  const about = useStudioState((state) => state.about);
  const [appearance, setAppearance] = useState(chosenAppearance);
  const [keys, setKeys] = useState(singleKeysOn);
  return (
    <Dialog title="Settings" isOpen={isOpen} onClose={() => studio.openDialog(null)}>
      <Choice
        label="Appearance"
        options={APPEARANCES}
        value={appearance}
        onChange={(next) => {
          chooseAppearance(next);
          setAppearance(next);
        }}
      />
      <Choice
        label="Keys such as ? and [ without Ctrl"
        options={KEYS}
        value={keys ? 'on' : 'off'}
        onChange={(next) => {
          setSingleKeys(next === 'on');
          setKeys(next === 'on');
        }}
      />
      {about === null ? null : (
        <p className="quiet small">
          Piecewright {about.version}. Patterns are kept in <span className="figures">{about.folder}</span>.
        </p>
      )}
    </Dialog>
  );
}
