import { type ReactNode, useState } from 'react';
import type { DrawingEdit } from '../../../shared/pattern/edits/drawn.ts';
import { useStudio } from '../../state/hooks.tsx';
import styles from './panel.module.css';

/** Does acts on a drawing from the side panel; why one cannot be is told beside what was pressed. */
export function useTold(): {
  readonly trouble: ReactNode;
  attempt<Args>(edit: DrawingEdit<Args>, args: Args, mark?: string): boolean;
} {
  const studio = useStudio();
  const [words, setWords] = useState<string | null>(null);
  function attempt<Args>(edit: DrawingEdit<Args>, args: Args, mark?: string): boolean {
    const pattern = studio.store.getState().history?.now;
    if (pattern === undefined) return false;
    const after = edit.maybe(pattern, args);
    setWords(after.ok ? null : after.findings.map(({ what, mend }) => `${what} ${mend ?? ''}`.trim()).join(' '));
    if (after.ok) studio.act(edit, args, mark);
    return after.ok;
  }
  const trouble =
    words === null ? null : (
      <p className={styles.trouble} role="alert">
        {words}
      </p>
    );
  return { trouble, attempt };
}
