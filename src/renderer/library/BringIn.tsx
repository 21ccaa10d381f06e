import { FileTrigger } from 'react-aria-components';
import { Button } from '../parts/Button.tsx';
import styles from './BringIn.module.css';
import { type Bringing, useBringing } from './bringing.ts';

/** The act that brings files in, as the keyboard finds it again. */
const ACT = 'bring-in';

/** Brings pattern and recipe files in from the disk; while it does, how far it is, and a way to stop it. */
export function BringIn({ onFiles }: { readonly onFiles: (files: readonly File[]) => void }) {
  const bringing = useBringing();
  return (
    <>
      {bringing === null ? null : <HowFar bringing={bringing} />}
      <FileTrigger acceptedFileTypes={['.json']} allowsMultiple onSelect={(files) => onFiles([...(files ?? [])])}>
        <Button id={ACT}>Bring in a file</Button>
      </FileTrigger>
    </>
  );
}

function HowFar({ bringing: { file, number, of, progress, doing, stop } }: { readonly bringing: Bringing }) {
  const which = of === 1 ? file : `${file}, ${number} of ${of}`;
  const press = () => {
    stop();
    // This goes away with what it stops.
    document.getElementById(ACT)?.focus();
  };
  return (
    <div className={styles.bringing}>
      <p className={styles.words}>
        <span className={styles.file}>{which}</span>
        <span className={styles.doing}>{doing}</span>
      </p>
      <progress
        className={styles.done}
        max={of}
        value={number - 1 + progress}
        aria-label="How far files are brought in"
      />
      <Button onPress={press}>Stop</Button>
    </div>
  );
}
