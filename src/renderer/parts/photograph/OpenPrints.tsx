import type { ReactNode } from 'react';
import type { Fabric } from '../../../shared/pattern/schema.ts';
import { useStudioState } from '../../state/hooks.tsx';
import { PrintsContext } from '../figure/PrintsContext.ts';
import { usePrints } from './usePrints.ts';

const NONE: readonly Fabric[] = [];

/** Lets every figure inside show the open pattern's fabrics by their photographs. */
export function OpenPrints({ children }: { readonly children: ReactNode }) {
  const fabrics =
    useStudioState(({ history, view }) => (view === 'library' ? undefined : history?.now.fabrics)) ?? NONE;
  return <PrintsContext value={usePrints(fabrics)}>{children}</PrintsContext>;
}
