import { useState } from 'react';
import { Button } from '../parts/Button.tsx';
import { Dialog } from '../parts/Dialog.tsx';
import { Mark } from '../parts/Mark.tsx';
import { useStudio, useStudioState } from '../state/hooks.tsx';
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
      <NotKept isOpen={asked} onClose={() => setAsked(false)} changed={kept.refusal.kind === 'changed-elsewhere'}>
        {kept.refusal.words}
      </NotKept>
    </>
  );
}

interface NotKeptProps {
  readonly isOpen: boolean;
  readonly onClose: () => void;
  /** Another window kept a newer one. */
  readonly changed: boolean;
  readonly children: string;
}

function NotKept({ isOpen, onClose, changed, children }: NotKeptProps) {
  const studio = useStudio();
  const then = (act: () => Promise<void>) => () => {
    onClose();
    void act();
  };
  const foot = changed ? (
    <>
      <Button tone="stops" onPress={then(() => studio.keepAgain(true))}>
        Keep only this one
      </Button>
      <Button tone="strong" onPress={then(() => studio.keepBoth())}>
        Keep both
      </Button>
    </>
  ) : (
    <>
      <Button onPress={onClose}>Go on working</Button>
      <Button tone="strong" onPress={then(() => studio.keepAgain())}>
        Try again
      </Button>
    </>
  );
  return (
    <Dialog title="Not kept yet" isOpen={isOpen} onClose={onClose} foot={foot}>
      <p>{children}</p>
      <p className="quiet">
        {changed
          ? 'Keep both, and this one becomes a copy beside the other.'
          : 'Nothing is lost while this window is open. You can go on working.'}
      </p>
    </Dialog>
  );
}
