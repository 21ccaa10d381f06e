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
  const again = (over: boolean) => {
    onClose();
    void studio.keepAgain(over);
  };
  const foot = (
    <>
      <Button onPress={onClose}>Go on working</Button>
      {changed ? (
        <Button tone="stops" onPress={() => again(true)}>
          Keep this one instead
        </Button>
      ) : (
        <Button tone="strong" onPress={() => again(false)}>
          Try again
        </Button>
      )}
    </>
  );
  return (
    <Dialog title="Not kept yet" isOpen={isOpen} onClose={onClose} foot={foot}>
      <p>{children}</p>
      <p className="quiet">Nothing is lost while this window is open. You can go on working.</p>
    </Dialog>
  );
}
