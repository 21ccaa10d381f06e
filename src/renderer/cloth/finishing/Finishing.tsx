import { useMemo } from 'react';
import { inksFor } from '../../../shared/diagrams/hatches.ts';
import { finishingIn } from '../../../shared/workroom/clothWays.ts';
import type { WorkedOut } from '../../../shared/workroom/workedOut.ts';
import { EmptyState } from '../../parts/EmptyState.tsx';
import { useCurrentSize } from '../../state/hooks.tsx';
import styles from '../cloth.module.css';
import { BackingWays } from './BackingWays.tsx';
import { BindingWays } from './BindingWays.tsx';
import { BorderWays } from './BorderWays.tsx';

/** The ways there are to cut what goes round and behind the quilt, side by side. */
export function Finishing({ worked }: { readonly worked: WorkedOut }) {
  const size = useCurrentSize();
  const ways = useMemo(() => (size === null ? null : finishingIn(worked, size)), [worked, size]);
  const inks = useMemo(() => inksFor(worked.pattern.fabrics), [worked.pattern.fabrics]);
  if (size === null || ways === null)
    return <EmptyState title="Nothing to compare yet">No size can be laid out.</EmptyState>;
  return (
    <div className={styles.sheet}>
      <BorderWays worked={worked} size={size} ways={ways} />
      <BackingWays pattern={worked.pattern} size={size} ways={ways} inks={inks} />
      <BindingWays size={size} ways={ways} />
    </div>
  );
}
