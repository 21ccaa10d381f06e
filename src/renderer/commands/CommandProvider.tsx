import { type ReactNode, useEffect, useMemo, useRef, useState } from 'react';
import { useStudio } from '../state/hooks.tsx';
import { singleKeysOn } from '../theme/appearance.ts';
import { COMMANDS } from './all.ts';
import type { Command } from './command.ts';
import { CommandContext, type Registry } from './context.ts';
import { belongTo, commandFor, isSingleKey, keysOf } from './keys.ts';

/** Knows every command of the frame and of the view that is shown, and runs them by their keys. */
export function CommandProvider({ children }: { readonly children: ReactNode }) {
  const [added, setAdded] = useState<readonly (readonly Command[])[]>([]);
  const registry = useMemo<Registry>(
    () => ({
      all: [...added.flat(), ...COMMANDS],
      add: (commands) => {
        setAdded((before) => [...before, commands]);
        return () => setAdded((before) => before.filter((one) => one !== commands));
      },
    }),
    [added],
  );
  useKeys(registry.all);
  return <CommandContext.Provider value={registry}>{children}</CommandContext.Provider>;
}

function useKeys(commands: readonly Command[]): void {
  const studio = useStudio();
  const latest = useRef(commands);
  latest.current = commands;
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (event.defaultPrevented || event.isComposing) return;
      const keys = keysOf(event);
      if (belongTo(event.target, keys) || (isSingleKey(keys) && !singleKeysOn())) return;
      if (studio.store.getState().dialog !== null || document.querySelector('[role="dialog"][data-rac]') !== null)
        return;
      const command = commandFor(keys, latest.current);
      if (command === undefined) return;
      event.preventDefault();
      if (command.enabled(studio.store.getState())) void command.run(studio);
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, [studio]);
}
