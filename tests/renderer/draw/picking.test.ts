import { describe, expect, test } from 'vitest';
import {
  boxAbout,
  isSameStretch,
  patchesWithin,
  pickedAt,
  seamsRound,
  toggled,
} from '../../../src/renderer/block/draw/picking.ts';
import { middleOf, nextPatch, stepped, wayOf } from '../../../src/renderer/block/draw/towards.ts';
import { at, drawn, three } from './blocks.ts';

const drawing = drawn(4, three);
const BLOCK = { kind: 'block', block: 'A' } as const;
const pick = (x: number, y: number, more = false, before: Parameters<typeof toggled>[0] = BLOCK) =>
  pickedAt(drawing, 'A', at(x, y), 0.1, more, before);

describe('picking on a drawing', () => {
  test('a click takes the patch, near a line the whole straight seam, beside the block the block', () => {
    expect(pick(3, 1)).toEqual({ kind: 'patches', block: 'A', patches: [0] });
    const whole = expect.arrayContaining([at(0, 2), at(4, 2)]);
    const near = expect.arrayContaining([at(0, 2), at(2, 2)]);
    expect(pick(1, 2.05)).toEqual({ kind: 'seam', block: 'A', seam: whole, whole, near });
    expect(pick(9, 9)).toEqual(BLOCK);
  });

  test('with Shift one more, and one fewer', () => {
    const one = pick(3, 1, true);
    const two = pick(1, 3, true, one);
    expect(two).toMatchObject({ patches: [0, 1] });
    expect(pick(3, 1, true, two)).toMatchObject({ patches: [1] });
    expect(toggled({ kind: 'patches', block: 'A', patches: [1] }, 'A', 1)).toEqual(BLOCK);
  });

  test('a box takes what lies whole in it', () => {
    expect(patchesWithin(drawing, { x: -1, y: -1, width: 6, height: 3.5 })).toEqual([0, 2]);
    expect(boxAbout(drawing, [0, 2])).toEqual({ x: 0, y: 0, width: 4, height: 2 });
  });

  test('the seams round a patch, each once', () => {
    const seams = seamsRound(drawing, 'A', 0);
    expect(seams).toHaveLength(2);
    expect(seams.some(({ whole }) => isSameStretch(whole, [at(4, 2), at(0, 2)]))).toBe(true);
  });
});

describe('arrow keys', () => {
  test('go from grid line to grid line, and back onto one from between two', () => {
    const right = wayOf('ArrowRight') ?? at(0, 0);
    expect(stepped(at(1, 1), right, 1, drawing)).toEqual(at(2, 1));
    expect(stepped(at(1.3, 1), right, 0.5, drawing)).toEqual(at(1.5, 1));
    expect(stepped(at(4, 1), right, 1, drawing)).toEqual(at(4, 1));
    expect(stepped(at(1.3, 1), wayOf('ArrowLeft') ?? at(0, 0), 1, drawing)).toEqual(at(1, 1));
    expect(wayOf('Enter')).toBeNull();
  });

  test('go from patch to patch, and stay where there is none', () => {
    expect(nextPatch(drawing, 2, at(1, 0))).toBe(0);
    expect(nextPatch(drawing, 0, at(0, 1))).toBe(1);
    expect(nextPatch(drawing, 2, at(-1, 0))).toBe(2);
    expect(middleOf(drawing, 1).y).toBe(3);
  });
});
