import { createContext, useContext, useEffect, useRef } from 'react';
import type { Command } from './command.ts';

/** The commands there are now, and how a view adds its own; what it answers takes them away again. */
export interface Registry {
  readonly all: readonly Command[];
  readonly add: (commands: readonly Command[]) => () => void;
}

// Apart from the list of all commands, which knows every view, so that a view can add to it.
export const CommandContext = createContext<Registry>({ all: [], add: () => () => undefined });

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
