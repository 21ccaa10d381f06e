import { Button } from '../parts/Button.tsx';
import { useStudio, useStudioState } from '../state/hooks.tsx';
import styles from './Header.module.css';
import { Path } from './Path.tsx';

/** The top: which pattern, and the way through it. */
export function Header() {
  const studio = useStudio();
  const title = useStudioState(({ history }) => history?.now.title);
  return (
    <header className={styles.header}>
      <h1 className={styles.title} title={title}>
        {title ?? 'Piecewright'}
      </h1>
      <Path />
      <div className={styles.more}>
        <Button tone="bare" onPress={() => studio.openDialog('commands')}>
          Commands <kbd>?</kbd>
        </Button>
        <Button tone="bare" onPress={() => studio.openDialog('settings')}>
          Settings
        </Button>
      </div>
    </header>
  );
}
