// @vitest-environment happy-dom
import { act, type ReactNode } from 'react';
import { createRoot, type Root } from 'react-dom/client';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { NumberField } from '../../src/renderer/parts/NumberField.tsx';

(globalThis as { IS_REACT_ACT_ENVIRONMENT?: boolean }).IS_REACT_ACT_ENVIRONMENT = true;
let root: Root | undefined;

function show(element: ReactNode): HTMLInputElement {
  document.body.innerHTML = '<div></div>';
  root = createRoot(document.body.firstElementChild as Element);
  act(() => root?.render(element));
  return document.querySelector('input') as HTMLInputElement;
}

function type(input: HTMLInputElement, text: string): void {
  const set = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')?.set;
  act(() => {
    set?.call(input, text);
    input.dispatchEvent(new Event('input', { bubbles: true }));
  });
}

function press(input: HTMLInputElement, key: string, held: KeyboardEventInit = {}): void {
  act(() => {
    input.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true, ...held }));
  });
}

afterEach(() => act(() => root?.unmount()));

describe('a field for inches', () => {
  it('shows true fractions', () => {
    expect(show(<NumberField label="Width" value={8.5} onChange={() => undefined} />).value).toBe('8½');
  });

  it('takes a fraction typed by hand once Enter is pressed, not before', () => {
    const chosen = vi.fn();
    const input = show(<NumberField label="Width" value={4} onChange={chosen} />);
    type(input, '4 3/8');
    expect(chosen).not.toHaveBeenCalled();
    press(input, 'Enter');
    expect(chosen).toHaveBeenCalledExactlyOnceWith(4.375);
  });

  it('keeps what was typed and says what may stand there', () => {
    const chosen = vi.fn();
    const input = show(<NumberField label="Width" value={4} least={0.25} onChange={chosen} />);
    type(input, 'wide');
    press(input, 'Enter');
    expect(chosen).not.toHaveBeenCalled();
    expect(input.value).toBe('wide');
    expect(document.body.textContent).toContain('Write inches, such as 8½');
  });

  it('Escape takes back what was typed', () => {
    const input = show(<NumberField label="Width" value={4} onChange={() => undefined} />);
    type(input, '99');
    press(input, 'Escape');
    expect(input.value).toBe('4');
  });

  it('the arrow keys go by an eighth, with Shift by an inch, and stop at the ends', () => {
    const chosen = vi.fn();
    const input = show(<NumberField label="Width" value={4} least={3.5} onChange={chosen} />);
    press(input, 'ArrowUp');
    press(input, 'ArrowUp', { shiftKey: true });
    press(input, 'ArrowDown', { shiftKey: true });
    expect(chosen.mock.calls).toEqual([[4.125], [5], [3.5]]);
  });
});
