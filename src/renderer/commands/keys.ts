import type { Command } from './command.ts';

const MAC = typeof navigator !== 'undefined' && /Mac|iP(hone|ad)/.test(navigator.platform);

type Pressed = Pick<KeyboardEvent, 'key' | 'ctrlKey' | 'metaKey' | 'altKey' | 'shiftKey'>;

/** The keys of an event as commands write them. Shift counts only where it does not already make the character. */
export function keysOf(event: Pressed, mac: boolean = MAC): string {
  const key = event.key.length === 1 ? event.key.toLowerCase() : event.key;
  const letter = /^[a-z]$/.test(key) || key.length > 1;
  const mod = mac ? event.metaKey : event.ctrlKey;
  return [mod ? 'mod' : '', event.altKey ? 'alt' : '', event.shiftKey && letter ? 'shift' : '', key]
    .filter(Boolean)
    .join('+');
}

/** Keys as they are printed beside a command: `Ctrl Z`, on a Mac `⌘ Z`. */
export function keysText(keys: string, mac: boolean = MAC): string {
  const names: Readonly<Record<string, string>> = mac
    ? { mod: '⌘', alt: '⌥', shift: '⇧' }
    : { mod: 'Ctrl', alt: 'Alt', shift: 'Shift' };
  return keys
    .split('+')
    .map((part) => names[part] ?? (part.length === 1 ? part.toUpperCase() : part))
    .join(' ');
}

/** Whether a command's keys are one bare character, which can be switched off for those who speak to their machine. */
export function isSingleKey(keys: string): boolean {
  return !/^(mod|alt)\+/.test(keys);
}

/** Whether the designer is typing words, so that bare characters belong to the field. */
function isTyping(target: EventTarget | null): boolean {
  if (!(target instanceof HTMLElement)) return false;
  return (
    target.isContentEditable ||
    target.matches('textarea, select, input:not([type="radio"], [type="checkbox"], [type="button"])')
  );
}

/** Whether a field holds nothing but what is already in the pattern, so that undo is the pattern's and not the field's. */
function isSettled(target: EventTarget | null): boolean {
  return target instanceof HTMLElement && target.dataset.settled !== undefined;
}

/** Whether keys belong to what has the focus: words to a field, letters to a list that is searched by its first letters. */
export function belongTo(target: EventTarget | null, keys: string): boolean {
  if (isTyping(target)) return isSingleKey(keys) || (/^mod\+(shift\+)?[zy]$/.test(keys) && !isSettled(target));
  return /^[a-z]$/.test(keys) && target instanceof HTMLElement && target.closest('[role="listbox"]') !== null;
}

/** The command these keys run, if any. */
export function commandFor(keys: string, commands: readonly Command[]): Command | undefined {
  return commands.find((command) => command.keys?.includes(keys));
}
