import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ALL_TURNS } from '../../src/shared/drawing/turn.ts';
import {
  addBorder,
  placeBlocks,
  removeBorder,
  resizeMotif,
  setBorderFirst,
  setBorderWidth,
  setBorderWidthIn,
  setMethod,
  setSizeBlock,
  setSizeBlocks,
  turnBlocks,
  turnMotif,
} from '../../src/shared/pattern/edits/index.ts';
import type { Pattern } from '../../src/shared/pattern/schema.ts';
import { workOut } from '../../src/shared/workroom/workOut.ts';
import { demoPattern } from '../helpers/starters.ts';

type Change = (pattern: Pattern) => Pattern;

const size = fc.constantFrom('cot', 'lap', 'bed');
const border = fc.constantFrom('rope', 'quay');
const turn = fc.constantFrom(...ALL_TURNS);
const cell = fc.record({ column: fc.nat(8), row: fc.nat(8) });
const cells = fc.array(cell, { minLength: 1, maxLength: 5 });

/** Eighths of an inch, as a ruler has them. */
function eighths(least: number, most: number): fc.Arbitrary<number> {
  return fc.integer({ min: least * 8, max: most * 8 }).map((n) => n / 8);
}

/** A block this wide puts every unit of the demo, whose grid is eight, on the marks of the ruler. */
const wholeInches = fc.integer({ min: 6, max: 20 });

function edits(block: fc.Arbitrary<number>, width: fc.Arbitrary<number>): fc.Arbitrary<Change> {
  return fc.oneof(
    fc.record({ size, across: fc.integer({ min: 1, max: 12 }), down: fc.integer({ min: 1, max: 12 }) }).map(
      (args): Change =>
        (p) =>
          setSizeBlocks.apply(p, args),
    ),
    fc.record({ size, block }).map(
      (args): Change =>
        (p) =>
          setSizeBlock.apply(p, args),
    ),
    fc.record({ border, width }).map(
      (args): Change =>
        (p) =>
          setBorderWidth.apply(p, args),
    ),
    fc.record({ border, size, width: fc.option(fc.oneof(width, fc.constant(0))) }).map(
      (args): Change =>
        (p) =>
          setBorderWidthIn.apply(p, args),
    ),
    fc.record({ border, first: fc.constantFrom('sides' as const, 'ends' as const) }).map(
      (args): Change =>
        (p) =>
          setBorderFirst.apply(p, args),
    ),
    fc.record({ border }).map(
      (args): Change =>
        (p) =>
          removeBorder.apply(p, args),
    ),
    fc
      .record({ name: fc.constant('Wharf'), fabric: fc.constant('tide'), width, first: fc.constant('ends' as const) })
      .map(
        (args): Change =>
          (p) =>
            addBorder.apply(p, args),
      ),
    fc.record({ cells, by: turn, size: fc.option(size) }).map(
      (args): Change =>
        (p) =>
          turnBlocks.apply(p, args),
    ),
    fc.record({ cells, block: fc.constantFrom('A', 'B'), size: fc.option(size) }).map(
      (args): Change =>
        (p) =>
          placeBlocks.apply(p, args),
    ),
    fc.record({ cells, by: turn }).map(
      (args): Change =>
        (p) =>
          turnMotif.apply(p, args),
    ),
    fc.record({ columns: fc.integer({ min: 1, max: 5 }), rows: fc.integer({ min: 1, max: 5 }) }).map(
      (args): Change =>
        (p) =>
          resizeMotif.apply(p, args),
    ),
    fc
      .record({
        block: fc.constantFrom('A', 'B'),
        of: fc.constantFrom('hst', 'geese', 'four-patch'),
        method: fc.constantFrom(null, 'hst-eight', 'geese-flip', 'four-patch-squares', 'nonsense'),
      })
      .map(
        (args): Change =>
          (p) =>
            setMethod.apply(p, args),
      ),
  );
}

const demo = demoPattern();

function edited(changes: readonly Change[]): Pattern {
  return changes.reduce((pattern, change) => change(pattern), demo);
}

describe('whatever is done to the demo', () => {
  test('on the ruler’s marks every size fits, whatever the turns, borders and methods', () => {
    fc.assert(
      fc.property(fc.array(edits(wholeInches, eighths(0.5, 9)), { maxLength: 12 }), (changes) => {
        const { findings, sizes, pattern } = workOut(edited(changes));
        expect(sizes).toHaveLength(pattern.sizes.length);
        const misfits = findings.filter(({ by }) => by !== undefined);
        expect(misfits).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });

  test('off the ruler it is still worked out, and every number in it is a number', () => {
    const anywhere = fc.double({ min: 0.01, max: 90, noNaN: true });
    fc.assert(
      fc.property(fc.array(edits(anywhere, anywhere), { maxLength: 10 }), (changes) => {
        const worked = workOut(edited(changes));
        for (const { quilt, cloth, points } of worked.sizes) {
          const yards = [...cloth.needs, cloth.binding, cloth.backing].map((need) => need.yards.value);
          const numbers = [quilt.finished.width.value, quilt.finished.height.value, points, ...yards];
          expect(numbers.filter((number) => !(Number.isFinite(number) && number >= 0))).toEqual([]);
        }
      }),
      { numRuns: 60 },
    );
  });

  test('working it out twice gives the same answer', () => {
    fc.assert(
      fc.property(fc.array(edits(wholeInches, eighths(0.5, 9)), { maxLength: 6 }), (changes) => {
        const pattern = edited(changes);
        const strip = (value: unknown) => JSON.stringify(value);
        expect(strip(workOut(structuredClone(pattern)))).toBe(strip(workOut(pattern)));
      }),
      { numRuns: 15 },
    );
  });
});
