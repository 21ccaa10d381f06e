import { focusPart } from '../app/focusPart.ts';
import type { Command } from './command.ts';

/** The parts of the window in the order of the eye; the same ids as the skip links. */
const PARTS = ['view', 'panel', 'sizes', 'fit'];

/** The part after the one that has the focus, leaving out those that are not shown. */
function nextPart(): HTMLElement | undefined {
  const shown = PARTS.map((id) => document.getElementById(id)).filter((part) => part !== null && !part.hidden);
  const at = shown.findIndex((part) => part?.contains(document.activeElement));
  return shown[(at + 1) % shown.length] ?? undefined;
}

export const goToNextPart: Command = {
  id: 'next-part',
  group: 'Go to',
  label: () => 'Next part of the window',
  keys: ['F6'],
  enabled: () => true,
  run: () => focusPart(nextPart()),
};
