import { useState } from 'react';
import { useCompare, useCurrentSize, useWorked } from '../state/hooks.tsx';
import { CompareSizes } from './CompareSizes.tsx';
import type { Over } from './look.ts';
import { QuiltHead } from './QuiltHead.tsx';
import { QuiltPicture } from './QuiltPicture.tsx';
import { QuiltSidePanel } from './QuiltSidePanel.tsx';
import styles from './quilt.module.css';
import { type Scope, ScopeProvider } from './scope.tsx';
import { Unlaid, useUnlaid } from './Unlaid.tsx';

/** The quilt as large as can be, and everything that can be chosen about it. */
export default function QuiltView() {
  const [over, setOver] = useState<ReadonlySet<Over>>(new Set());
  const [scope, setScope] = useState<Scope>('every');
  return (
    <ScopeProvider value={{ scope, setScope }}>
      <div className={styles.view}>
        <QuiltHead over={over} onOver={setOver} />
        <Cloth over={over} />
        <QuiltSidePanel />
      </div>
    </ScopeProvider>
  );
}

function Cloth({ over }: { readonly over: ReadonlySet<Over> }) {
  const worked = useWorked();
  const size = useCurrentSize();
  const compare = useCompare();
  const unlaid = useUnlaid();
  if (worked === null) return null;
  if (compare) return <CompareSizes worked={worked} over={over} />;
  if (size === null || unlaid !== null) return <Unlaid size={unlaid} />;
  return <QuiltPicture worked={worked} size={size} over={over} />;
}
