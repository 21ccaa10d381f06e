import { setBundle } from '../../../shared/pattern/edits/index.ts';
import type { WorkedOut } from '../../../shared/workroom/workedOut.ts';
import { Button } from '../../parts/Button.tsx';
import { EmptyState } from '../../parts/EmptyState.tsx';
import { useAct, useCurrentSize } from '../../state/hooks.tsx';
import styles from '../cloth.module.css';
import { BundleSizes } from './BundleSizes.tsx';
import { Enough } from './Enough.tsx';
import { Recasts } from './Recasts.tsx';
import { StressTest } from './StressTest.tsx';
import { StripByStrip } from './StripByStrip.tsx';

/** The pattern made from a bundle of strips: is one enough, how is it cut, what does it bear, what else would do. */
export function BundlePart({ worked }: { readonly worked: WorkedOut }) {
  const size = useCurrentSize();
  const act = useAct();
  if (size?.bundle === undefined) {
    return (
      <EmptyState
        title="Not made from a bundle"
        act={
          <Button tone="strong" onPress={() => act(setBundle, {})} isDisabled={size === null}>
            Make it from a bundle of strips
          </Button>
        }
      >
        <p>
          Say how many strips a bundle has, how wide and long they are and how many are light, medium and dark. Here
          stands whether one is enough, how each strip is cut, and what breaks first when strips are fewer or shorter.
        </p>
      </EmptyState>
    );
  }
  return (
    <div className={styles.sheet}>
      <Enough worked={worked} size={size} answer={size.bundle} />
      <BundleSizes worked={worked} />
      <StripByStrip worked={worked} size={size} answer={size.bundle} />
      <StressTest size={size} answer={size.bundle} />
      <Recasts worked={worked} size={size} />
    </div>
  );
}
