import type { Command } from './command.ts';
import { goToViews } from './goTo.ts';
import { goToMisfit } from './goToMisfit.ts';
import { keepAgain } from './keepAgain.ts';
import { goToNextPart } from './nextPart.ts';
import { redo } from './redo.ts';
import { otherRuler } from './ruler.ts';
import { compareSizes, nextSize, previousSize } from './sizes.ts';
import { showCommands, showSettings } from './studio.ts';
import { undo } from './undo.ts';

/** Every command that is there in every view, in the order of the list. */
export const COMMANDS: readonly Command[] = [
  undo,
  redo,
  keepAgain,
  ...goToViews,
  goToMisfit,
  goToNextPart,
  nextSize,
  previousSize,
  compareSizes,
  showCommands,
  showSettings,
  otherRuler,
];
