import { Label, Radio, RadioGroup } from 'react-aria-components';
import { ACTS, type Act, type ActWords } from './acts.ts';
import styles from './draw.module.css';
import { chooseAct, useDrawState } from './drawStore.ts';

/** What the hand does, as a list of words; the letter that stands out is the key. */
export function Acts() {
  const act = useDrawState((state) => state.act);
  return (
    <RadioGroup className={styles.acts ?? ''} value={act} onChange={(id) => chooseAct(id as Act)}>
      <Label className="heard">What the hand does</Label>
      {ACTS.map((one) => (
        <Radio key={one.id} value={one.id} className={styles.act ?? ''} aria-describedby={`how-${one.id}`}>
          <ActWord act={one} />
          <span id={`how-${one.id}`} hidden>
            {one.how} Key {one.key.toUpperCase()}.
          </span>
        </Radio>
      ))}
    </RadioGroup>
  );
}

function ActWord({ act: { word, key } }: { readonly act: ActWords }) {
  const at = word.toLowerCase().indexOf(key);
  return (
    <span className={styles.actWord}>
      {word.slice(0, at)}
      <span className={styles.actKey}>{word.slice(at, at + 1)}</span>
      {word.slice(at + 1)}
    </span>
  );
}
