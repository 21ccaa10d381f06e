import { Button, Dialog, DialogTrigger, OverlayArrow, Popover } from 'react-aria-components';
import { explain, type Traced, tracedText } from '../../shared/measure/traced.ts';
import styles from './Why.module.css';

export interface WhyProps {
  readonly traced: Traced;
  /** The number in other words than its own, such as "16 squares". */
  readonly children?: string;
}

/** A number that can be asked why: it answers with the one short sum that made it. */
export function Why({ traced, children }: WhyProps) {
  const text = children ?? tracedText(traced);
  return (
    <DialogTrigger>
      <Button className={styles.number ?? ''} aria-label={`${text}, why?`}>
        {text}
      </Button>
      <Popover className={styles.popover ?? ''} placement="top" offset={6}>
        <OverlayArrow className={styles.arrow ?? ''}>
          <svg viewBox="0 0 12 6" aria-hidden="true">
            <path d="M0 0 6 6 12 0" />
          </svg>
        </OverlayArrow>
        <Dialog className={styles.sum ?? ''} aria-label="Why this number">
          {explain(traced)}
        </Dialog>
      </Popover>
    </DialogTrigger>
  );
}
