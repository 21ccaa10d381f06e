import { useState } from 'react';
import { Button } from '../../parts/Button.tsx';
import { DrawNew } from './DrawNew.tsx';

/** Begins a block of the designer's own. */
export function DrawNewBlock({ small = false }: { readonly small?: boolean }) {
  const [asking, setAsking] = useState(false);
  return (
    <>
      <Button small={small} onPress={() => setAsking(true)}>
        Draw a new block
      </Button>
      {asking ? <DrawNew onClose={() => setAsking(false)} /> : null}
    </>
  );
}
