// @vitest-environment happy-dom
import { act, type ReactNode } from 'react';
import { createRoot, type Root } from 'react-dom/client';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { TextField } from '../../src/renderer/parts/TextField.tsx';

(globalThis as { IS_REACT_ACT_ENVIRONMENT?: boolean }).IS_REACT_ACT_ENVIRONMENT = true;
let root: Root | undefined;

function show(element: ReactNode): HTMLTextAreaElement {
  document.body.innerHTML = '<div></div>';
  root = createRoot(document.body.firstElementChild as Element);
  act(() => root?.render(element));
  return document.querySelector('textarea, input') as HTMLTextAreaElement;
}

function type(field: HTMLElement, text: string): void {
  const set = Object.getOwnPropertyDescriptor(Object.getPrototypeOf(field), 'value')?.set;
  act(() => {
    set?.call(field, text);
    field.dispatchEvent(new Event('input', { bubbles: true }));
  });
}

function leave(field: HTMLElement): void {
  act(() => {
    field.focus();
    field.blur();
  });
}

describe('a field for words', () => {
  beforeEach(() => {
    vi.useFakeTimers();
  });
  afterEach(() => {
    act(() => root?.unmount());
    vi.useRealTimers();
  });

  it('tells a long text whenever the hand rests, all under one mark', () => {
    const told = vi.fn();
    const field = show(<TextField label="Introduction" value="" long whileTyping onChange={told} />);
    type(field, 'Lanterns');
    act(() => vi.advanceTimersByTime(2000));
    type(field, 'Lanterns along a wall');
    leave(field);
    expect(told.mock.calls.map(([text]) => text)).toEqual(['Lanterns', 'Lanterns along a wall']);
    expect(new Set(told.mock.calls.map(([, mark]) => mark)).size).toBe(1);
  });

  it('tells a short one only when the field is left', () => {
    const told = vi.fn();
    const field = show(<TextField label="Title" value="Low Tide" onChange={told} />);
    type(field, 'High Tide');
    act(() => vi.advanceTimersByTime(5000));
    expect(told).not.toHaveBeenCalled();
    leave(field);
    expect(told).toHaveBeenCalledOnce();
  });

  it('does not take nothing where something must stand', () => {
    const told = vi.fn();
    const field = show(<TextField label="Title" value="Low Tide" needed="Give it a title." onChange={told} />);
    type(field, '  ');
    leave(field);
    expect(told).not.toHaveBeenCalled();
    expect(document.body.textContent).toContain('Give it a title.');
  });
});
