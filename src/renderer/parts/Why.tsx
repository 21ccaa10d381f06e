import { useRef, useState } from 'react';
import { Dialog, OverlayArrow, Popover } from 'react-aria-components';
import type { Traced } from '../../shared/measure/traced.ts';
import { useRuler } from '../state/hooks.tsx';
import styles from './Why.module.css';

export interface WhyProps {
  readonly traced: Traced;
  /** The number in other words than its own, such as "16 squares". */
  readonly children?: string;
}

/**
 * A number that can be asked why: it answers with the one short sum that made it. A chart has hundreds of them, so the
 * answer is only made when one is asked.
 */
export function Why({ traced, children }: WhyProps) {
  const [asked, setAsked] = useState(false);
  const ruler = useRuler();
  const number = useRef<HTMLButtonElement>(null);
  const text = children ?? ruler.traced(traced);
  return (
    <>
      <button
        ref={number}
        type="button"
        className={styles.number ?? ''}
        aria-label={`${text}, why?`}
        aria-haspopup="dialog"
        aria-expanded={asked}
        onClick={() => setAsked(true)}
      >
        {text}
      </button>
      {asked ? (
        <Popover
          className={styles.popover ?? ''}
          triggerRef={number}
          isOpen
          onOpenChange={setAsked}
          placement="top"
          offset={6}
        >
          <OverlayArrow className={styles.arrow ?? ''}>
            <svg viewBox="0 0 12 6" aria-hidden="true">
              <path d="M0 0 6 6 12 0" />
            </svg>
          </OverlayArrow>
          <Dialog className={styles.sum ?? ''} aria-label="Why this number">
            {ruler.why(traced)}
          </Dialog>
        </Popover>
      ) : null}
    </>
  );
}
