import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ALL_TURNS, afterTurn } from '../../src/shared/drawing/turn.ts';
import { plainSewn, type Sewn, turnSewn } from '../../src/shared/fit/sewn.ts';
import { sewUp } from '../../src/shared/fit/sewUp.ts';
import type { Part } from '../../src/shared/piecing/piecing.ts';

interface Cloth {
  readonly kind: 'cloth';
  readonly box: { x: number; y: number; width: number; height: number };
  /** What it really measures, finished. */
  readonly real: { width: number; height: number };
}

const cloth = (x: number, y: number, width: number, height: number, real = { width, height }): Cloth => ({
  kind: 'cloth',
  box: { x, y, width, height },
  real,
});
const measure = (leaf: Cloth): Sewn =>
  plainSewn(leaf.real.width, leaf.real.height, { width: leaf.box.width, height: leaf.box.height });
const row = (along: 'across' | 'down', parts: Part<Cloth>[]): Part<Cloth> => ({
  kind: 'row',
  along,
  parts,
  box: { x: 0, y: 0, width: 0, height: 0 },
});

describe('sewing up on paper', () => {
  test('two rows of true squares agree in length and at the point where their seams meet', () => {
    const tree = row('down', [
      row('across', [cloth(0, 0, 3, 3), cloth(3, 0, 3, 3)]),
      row('across', [cloth(0, 3, 3, 3), cloth(3, 3, 3, 3)]),
    ]);
    const up = sewUp(tree, measure);
    expect(up.misfits).toEqual([]);
    expect(up.points).toBe(1);
    expect(up.seams).toBe(3);
    expect([up.sewn.width, up.sewn.height]).toEqual([6, 6]);
  });

  test('a square cut an eighth narrow is told at the row it makes short', () => {
    const tree = row('down', [
      row('across', [cloth(0, 0, 3, 3), cloth(3, 0, 3, 3)]),
      row('across', [cloth(0, 3, 3, 3, { width: 2.875, height: 3 }), cloth(3, 3, 3, 3)]),
    ]);
    const [misfit] = sewUp(tree, measure).misfits;
    expect(misfit).toMatchObject({ kind: 'length', by: 0.125 });
  });

  test('rows of one length whose seams should meet and do not are told at the point', () => {
    const tree = row('down', [
      row('across', [cloth(0, 0, 3, 3), cloth(3, 0, 3, 3)]),
      row('across', [cloth(0, 3, 3, 3, { width: 2.875, height: 3 }), cloth(3, 3, 3, 3, { width: 3.125, height: 3 })]),
    ]);
    expect(sewUp(tree, measure).misfits).toEqual([expect.objectContaining({ kind: 'point', by: 0.125 })]);
  });

  test('a log that is too short for the core it is sewn to says by how much', () => {
    const core = cloth(0, 1, 4, 4);
    const log = cloth(0, 0, 4, 1, { width: 3.75, height: 1 });
    const box = { x: 0, y: 0, width: 4, height: 5 };
    const up = sewUp<Cloth>({ kind: 'rounds', core, logs: [{ side: 'top', part: log }], box }, measure);
    expect(up.misfits).toEqual([expect.objectContaining({ kind: 'length', by: 0.25, side: 'top' })]);
  });

  test('any grid of true rectangles sews up to the sum of its parts with every inner corner matched', () => {
    const lengths = fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 1, maxLength: 6 });
    fc.assert(
      fc.property(lengths, lengths, (widths, heights) => {
        const at = (all: number[], i: number) => all.slice(0, i).reduce((a, b) => a + b, 0);
        const rows = heights.map((height, r) =>
          row(
            'across',
            widths.map((width, c) => cloth(at(widths, c), at(heights, r), width, height)),
          ),
        );
        const up = sewUp(row('down', rows), measure);
        expect(up.misfits).toEqual([]);
        expect(up.sewn.width).toBe(at(widths, widths.length));
        expect(up.sewn.height).toBe(at(heights, heights.length));
        expect(up.points).toBe((widths.length - 1) * (heights.length - 1));
      }),
    );
  });

  test('turning what is sewn and turning it again is turning it once', () => {
    const edges = {
      top: [{ design: 1, sewn: 1.125 }],
      right: [{ design: 2, sewn: 2 }],
      bottom: [],
      left: [{ design: 0.5, sewn: 0.4375 }],
    };
    const sewn = plainSewn(3, 5, { width: 3, height: 5 }, edges);
    const turns = fc.constantFrom(...ALL_TURNS);
    fc.assert(
      fc.property(turns, turns, (first, second) => {
        expect(turnSewn(turnSewn(sewn, first), second)).toEqual(turnSewn(sewn, afterTurn(first, second)));
      }),
    );
  });
});
