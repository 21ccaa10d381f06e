import type { Studio } from '../state/studio.ts';
import type { StudioState } from '../state/studioState.ts';

export type CommandGroup = 'Pattern' | 'Go to' | 'Sizes' | 'Here' | 'Studio';

/** One thing the designer can do from anywhere, by name. One command a file. */
export interface Command {
  readonly id: string;
  readonly group: CommandGroup;
  /** As it is read in the list: "Undo: widen outer border". */
  label(state: StudioState): string;
  /** Keys that run it, such as `mod+z`; `mod` is Control, on a Mac Command. */
  readonly keys?: readonly string[];
  enabled(state: StudioState): boolean;
  run(studio: Studio): void | Promise<void>;
}
