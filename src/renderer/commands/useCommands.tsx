import { createContext, type ReactNode, useContext, useEffect, useMemo, useRef, useState } from 'react';
import { useStudio } from '../state/hooks.tsx';
import { singleKeysOn } from '../theme/appearance.ts';
import { COMMANDS } from './all.ts';
import type { Command } from './command.ts';
import { commandFor, isSingleKey, isTyping, keysOf } from './keys.ts';

interface Registry {
  readonly all: readonly Command[];
  readonly add: (commands: readonly Command[]) => () => void;
}

const CommandContext = createContext<Registry>({ all: COMMANDS, add: () => () => undefined });

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
      const typed = isTyping(event.target);
      if (isSingleKey(keys) && (typed || !singleKeysOn())) return;
      // A field takes back its own typing first.
      if (typed && /^mod\+(shift\+)?[zy]$/.test(keys)) return;
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

/** All commands there are now: those of the view first. */
export function useAllCommands(): readonly Command[] {
  return useContext(CommandContext).all;
}

/** Adds a view's own commands while it is shown. Pass a list that stays the same between renders. */
export function useCommands(commands: readonly Command[]): void {
  const { add } = useContext(CommandContext);
  const latest = useRef(add);
  latest.current = add;
  useEffect(() => latest.current(commands), [commands]);
}
