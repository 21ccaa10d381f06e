import { useState } from 'react';
import type { Refusal } from '../../shared/contract.ts';
import { Button } from '../parts/Button.tsx';
import { Dialog } from '../parts/Dialog.tsx';
import { Mark } from '../parts/Mark.tsx';
import { useStudio, useStudioState } from '../state/hooks.tsx';
import type { Studio } from '../state/studio.ts';
import styles from './KeptSign.module.css';

/** Whether what is on screen is on disk: a quiet word, or a clear one when the disk refuses. */
export function KeptSign() {
  const kept = useStudioState((state) => state.kept);
  const [asked, setAsked] = useState(false);
  if (kept.state !== 'refused') {
    return (
      <p className={styles.kept} data-state={kept.state}>
        {kept.state === 'kept' ? 'Kept' : 'Keeping'}
      </p>
    );
  }
  return (
    <>
      <Button className={styles.refused ?? ''} tone="stops" small onPress={() => setAsked(true)}>
        <Mark of="stops" />
        Not kept: why?
      </Button>
      <p className="heard" role="alert">
        Not kept. {kept.refusal.words}
      </p>
      <NotKept isOpen={asked} onClose={() => setAsked(false)} refusal={kept.refusal} />
    </>
  );
}

interface NotKeptProps {
  readonly isOpen: boolean;
  readonly onClose: () => void;
  readonly refusal: Refusal;
}

/** Why it is not kept, and what can be done: the choice is the designer's wherever another window had its say. */
function NotKept({ isOpen, onClose, refusal: { kind, words } }: NotKeptProps) {
  const studio = useStudio();
  const then = (act: () => Promise<void>) => () => {
    onClose();
    void act();
  };
  const ways = WAYS_OUT[kind] ?? ONLY_LATER;
  return (
    <Dialog
      title="Not kept yet"
      isOpen={isOpen}
      onClose={onClose}
      foot={
        <>
          {ways.first === undefined ? (
            <Button onPress={onClose}>Go on working</Button>
          ) : (
            <Button tone="stops" onPress={then(() => studio.keepAgain(true))}>
              {ways.first}
            </Button>
          )}
          <Button tone="strong" onPress={then(() => ways.act(studio))}>
            {ways.says}
          </Button>
        </>
      }
    >
      <p>{words}</p>
      <p className="quiet">{ways.means}</p>
    </Dialog>
  );
}

interface WayOut {
  /** What the best act is called, and what it does. */
  readonly says: string;
  readonly act: (studio: Studio) => Promise<void>;
  /** Another, which overwrites. */
  readonly first?: string;
  readonly means: string;
}

const ONLY_LATER: WayOut = {
  says: 'Try again',
  act: (studio) => studio.keepAgain(),
  means: 'Nothing is lost while this window is open. You can go on working.',
};

const WAYS_OUT: { readonly [Kind in Refusal['kind']]?: WayOut } = {
  'changed-elsewhere': {
    says: 'Keep both',
    act: (studio) => studio.keepBoth(),
    first: 'Keep only this one',
    means: 'Keep both, and this one becomes a copy beside the other.',
  },
  'not-found': {
    says: 'Put it back',
    act: (studio) => studio.keepAgain(true),
    means: 'Put it back, and it stands in the library again as it is here.',
  },
};
