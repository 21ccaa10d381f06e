import { createContext, type ReactNode, useContext } from 'react';

/** Whether a turn or another block is meant for the place in every size, or in the size looked at alone. */
export type Scope = 'every' | 'one';

interface ScopeChoice {
  readonly scope: Scope;
  readonly setScope: (scope: Scope) => void;
}

const ScopeContext = createContext<ScopeChoice>({ scope: 'every', setScope: () => undefined });

export function ScopeProvider({ value, children }: { readonly value: ScopeChoice; readonly children: ReactNode }) {
  return <ScopeContext.Provider value={value}>{children}</ScopeContext.Provider>;
}

export function useScope(): ScopeChoice {
  return useContext(ScopeContext);
}
