// @vitest-environment happy-dom
import { describe, expect, it } from 'vitest';
import { COMMANDS } from '../../src/renderer/commands/all.ts';
import { belongTo, commandFor, isSingleKey, keysOf, keysText } from '../../src/renderer/commands/keys.ts';

const pressed = (key: string, held: Partial<KeyboardEvent> = {}) => ({
  key,
  ctrlKey: false,
  metaKey: false,
  altKey: false,
  shiftKey: false,
  ...held,
});

function inPage(html: string): Element {
  document.body.innerHTML = html;
  return document.body.querySelector('[data-here]') as Element;
}

describe('keys belong', () => {
  it('to a field, as long as something is typed that is not in the pattern yet', () => {
    const field = inPage('<input data-here>');
    expect(belongTo(field, '?')).toBe(true);
    expect(belongTo(field, 'mod+z')).toBe(true);
    expect(belongTo(field, 'mod+k')).toBe(false);
    expect(belongTo(inPage('<input data-here data-settled="true">'), 'mod+z')).toBe(false);
  });

  it('to a list, when they may be the first letter of something in it', () => {
    const option = inPage('<div role="listbox"><div role="option" data-here></div></div>');
    expect(belongTo(option, 'a')).toBe(true);
    expect(belongTo(option, '3')).toBe(false);
    expect(belongTo(option, '?')).toBe(false);
  });

  it('to nobody else', () => {
    expect(belongTo(inPage('<button data-here></button>'), 'a')).toBe(false);
  });
});

describe('keys', () => {
  it('Control and Command are the same key on their own machines', () => {
    expect(keysOf(pressed('z', { ctrlKey: true }), false)).toBe('mod+z');
    expect(keysOf(pressed('z', { metaKey: true }), true)).toBe('mod+z');
  });

  it('a question mark is a question mark, wherever its key lies', () => {
    expect(keysOf(pressed('?', { shiftKey: true }), false)).toBe('?');
    expect(keysOf(pressed('Z', { ctrlKey: true, shiftKey: true }), false)).toBe('mod+shift+z');
  });

  it('are printed as they stand on the keyboard', () => {
    expect(keysText('mod+shift+z', false)).toBe('Ctrl Shift Z');
    expect(keysText('mod+shift+z', true)).toBe('⌘ ⇧ Z');
  });

  it('no two commands want the same keys', () => {
    const all = COMMANDS.flatMap(({ keys = [] }) => keys);
    expect(new Set(all).size).toBe(all.length);
  });

  it('find their command', () => {
    expect(commandFor('mod+z', COMMANDS)?.id).toBe('undo');
    expect(isSingleKey('?')).toBe(true);
    expect(isSingleKey('mod+z')).toBe(false);
  });
});
