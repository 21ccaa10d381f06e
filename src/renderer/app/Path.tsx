import { Button } from 'react-aria-components';
import { Stitch } from '../parts/Stitch.tsx';
import { useStudio, useStudioState } from '../state/hooks.tsx';
import { STAGES } from '../state/viewId.ts';
import styles from './Path.module.css';

/** The way through the pattern: words joined by a running stitch, sewn as far as the designer stands. */
export function Path() {
  const studio = useStudio();
  const view = useStudioState((state) => state.view);
  const closed = useStudioState(({ history }) => history === null);
  const at = STAGES.findIndex(({ id }) => id === view);
  return (
    <nav aria-label="The way through the pattern">
      <ol className={styles.path}>
        {STAGES.map(({ id, word }, index) => (
          <li key={id} className={styles.stage}>
            {index === 0 ? null : (
              <span className={styles.thread}>
                <Stitch tone={index <= at ? 'thread' : 'bare'} />
              </span>
            )}
            <Button
              className={styles.word ?? ''}
              isDisabled={closed && id !== 'library'}
              onPress={() => studio.show(id)}
              {...(id === view ? { 'aria-current': 'page' as const } : {})}
            >
              {word}
            </Button>
          </li>
        ))}
      </ol>
    </nav>
  );
}
