import { describe, expect, it } from 'vitest';
import { acted, opened, redone, undone } from '../../src/renderer/state/history.ts';
import { smallPattern, widen, widthOf } from './pattern.ts';

describe('what can be taken back', () => {
  it('remembers an act by its name, and undo brings back the very document before it', () => {
    const before = smallPattern();
    const after = acted(opened(before), widen, { to: 6 });
    expect(after.undo.map(({ name }) => name)).toEqual(['make outer border 6']);
    expect(undone(after).now).toBe(before);
  });

  it('redo makes the act again, under the same name', () => {
    const after = acted(opened(smallPattern()), widen, { to: 6 });
    const back = undone(after);
    expect(back.redo.map(({ name }) => name)).toEqual(['make outer border 6']);
    expect(redone(back).now).toBe(after.now);
    expect(redone(back).undo.map(({ name }) => name)).toEqual(['make outer border 6']);
  });

  it('an act that changes nothing leaves no trace', () => {
    const history = opened(smallPattern());
    expect(acted(history, widen, { to: 4 })).toBe(history);
  });

  it('acts of one drag are taken back as one', () => {
    const start = smallPattern();
    const dragged = [5, 6, 7].reduce((history, to) => acted(history, widen, { to }, 'drag 1'), opened(start));
    expect(dragged.undo).toHaveLength(1);
    expect(widthOf(dragged.now)).toBe(7);
    expect(undone(dragged).now).toBe(start);
  });

  it('another drag is another act', () => {
    const first = acted(opened(smallPattern()), widen, { to: 5 }, 'drag 1');
    expect(acted(first, widen, { to: 6 }, 'drag 2').undo).toHaveLength(2);
  });

  it('a new act after undo forgets what could have been made again', () => {
    const back = undone(acted(opened(smallPattern()), widen, { to: 6 }));
    expect(acted(back, widen, { to: 9 }).redo).toEqual([]);
  });

  it('nothing to take back leaves the document alone', () => {
    const history = opened(smallPattern());
    expect(undone(history)).toBe(history);
    expect(redone(history)).toBe(history);
  });
});
