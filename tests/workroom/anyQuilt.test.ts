import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ALL_TURNS } from '../../src/shared/drawing/turn.ts';
import { anyStops } from '../../src/shared/measure/finding.ts';
import type { Edit } from '../../src/shared/pattern/edit.ts';
import * as edits from '../../src/shared/pattern/edits/index.ts';
import type { Pattern } from '../../src/shared/pattern/schema.ts';
import { workOut } from '../../src/shared/workroom/workOut.ts';
import { testPattern } from '../helpers/fixtures.ts';
import { motifTemplates } from '../helpers/motifs.ts';

type Change = (pattern: Pattern) => Pattern;

/** An edit with arguments of its own; what it needs of the pattern is looked up when it is made. */
function of<Args>(edit: Edit<Args>, args: fc.Arbitrary<(pattern: Pattern) => NoInfer<Args>>): fc.Arbitrary<Change> {
  return args.map((make) => (pattern) => edit.apply(pattern, make(pattern)));
}

const eighths = (least: number, most: number) => fc.integer({ min: least * 8, max: most * 8 }).map((n) => n / 8);
const pick = fc.nat(7);
const fabricOf = (pattern: Pattern, n: number) => pattern.fabrics[n % pattern.fabrics.length]?.id ?? '';
const borderOf = (pattern: Pattern, n: number) => pattern.borders[n % Math.max(1, pattern.borders.length)]?.id ?? '';
const sizeOf = (pattern: Pattern, n: number) => pattern.sizes[n % pattern.sizes.length]?.id ?? '';
const always = <T>(make: (pattern: Pattern) => T) => fc.constant(make);

const changes: fc.Arbitrary<Change> = fc.oneof(
  of(
    edits.setStraight,
    always(() => ({})),
  ),
  of(
    edits.setOnPoint,
    pick.map((n) => (p: Pattern) => ({ fabric: fabricOf(p, n) })),
  ),
  of(
    edits.setStrips,
    fc.boolean().map((rows) => () => ({ run: rows ? ('rows' as const) : ('columns' as const) })),
  ),
  of(
    edits.setShift,
    fc.tuple(fc.constantFrom('1/2', '1/3', null), pick, fc.boolean()).map(([shift, n, fill]) => (p: Pattern) => ({
      shift,
      fill: fill ? fabricOf(p, n) : null,
    })),
  ),
  of(
    edits.setTriangles,
    fc
      .tuple(fc.constantFrom('rounded-up' as const, 'floating' as const), eighths(0.5, 3))
      .map(([fit, float]) => () => ({
        fit,
        float,
      })),
  ),
  of(
    edits.addSashing,
    fc.tuple(pick, eighths(0.5, 3)).map(([n, width]) => (p: Pattern) => ({ fabric: fabricOf(p, n), width })),
  ),
  of(
    edits.addSashStrip,
    fc.tuple(pick, eighths(0.5, 3)).map(([n, width]) => (p: Pattern) => ({ fabric: fabricOf(p, n), width })),
  ),
  of(
    edits.setCornerstones,
    fc.option(pick).map((n) => (p: Pattern) => ({ fabric: n === null ? null : fabricOf(p, n) })),
  ),
  of(
    edits.setSashingOutside,
    fc.boolean().map((outside) => () => ({ outside })),
  ),
  of(
    edits.removeSashing,
    always(() => ({})),
  ),
  of(
    edits.setSewn,
    fc.boolean().map((rows) => () => ({ sewn: rows ? ('rows' as const) : ('columns' as const) })),
  ),
  of(
    edits.setReflect,
    fc.constantFrom('across' as const, 'both' as const, null).map((reflect) => () => ({ reflect })),
  ),
  of(
    edits.takeMotif,
    fc.constantFrom(...motifTemplates()).map((template) => (p: Pattern) => {
      return { template, blocks: p.blocks.map(({ id }) => id), dark: 'bottom-left' as const };
    }),
  ),
  of(
    edits.addBorder,
    fc.tuple(pick, eighths(0.5, 8)).map(([n, width]) => (p: Pattern) => {
      return { name: 'Wharf', fabric: fabricOf(p, n), width, first: 'ends' as const };
    }),
  ),
  of(
    edits.setBorderCorners,
    fc
      .tuple(pick, fc.constantFrom('butted' as const, 'cornerstones' as const, 'mitred' as const))
      .map(([n, corners]) => (p: Pattern) => ({ border: borderOf(p, n), corners })),
  ),
  of(
    edits.setBorderEnds,
    fc.tuple(pick, eighths(0.5, 8)).map(([n, ends]) => (p: Pattern) => ({ border: borderOf(p, n), ends })),
  ),
  of(
    edits.setBorderWidth,
    fc.tuple(pick, eighths(0.5, 8)).map(([n, width]) => (p: Pattern) => ({ border: borderOf(p, n), width })),
  ),
  of(
    edits.setSizeBlocks,
    fc
      .tuple(pick, fc.integer({ min: 1, max: 7 }), fc.integer({ min: 1, max: 7 }))
      .map(([n, across, down]) => (p: Pattern) => ({ size: sizeOf(p, n), across, down })),
  ),
  of(
    edits.setSizeBlock,
    fc.tuple(pick, fc.constantFrom(6, 12, 18)).map(([n, block]) => (p: Pattern) => ({ size: sizeOf(p, n), block })),
  ),
  of(
    edits.turnBlocks,
    fc.tuple(fc.nat(6), fc.nat(6), fc.constantFrom(...ALL_TURNS)).map(([column, row, by]) => () => ({
      cells: [{ column, row }],
      by,
      size: null,
    })),
  ),
);

const patterns = ['ebb', 'causeway', 'quay-wall', 'net-loft', 'harbour-wall', 'brickwork', 'anchorage'].map(
  testPattern,
);

/** Blocks whose units all fall on eighths at the widths tried above. */
const even = patterns.map((pattern) => ({
  ...pattern,
  sizes: pattern.sizes.slice(0, 2).map((size) => ({ ...size, block: 12 })),
}));

describe('whatever is set, sashed, bordered and turned', () => {
  test('a quilt nothing stops has no seam whose two sides disagree, in any size', () => {
    let accepted = 0;
    fc.assert(
      fc.property(fc.constantFrom(...even), fc.array(changes, { maxLength: 10 }), (base, acts) => {
        const pattern = acts.reduce((now, act) => act(now), base);
        const { findings, sizes } = workOut(pattern);
        if (anyStops(findings)) return;
        accepted += 1;
        expect(sizes).toHaveLength(pattern.sizes.length);
        expect(findings.filter(({ by }) => by !== undefined)).toEqual([]);
        for (const { quilt, cloth } of sizes) {
          const numbers = [
            quilt.finished.width,
            quilt.finished.height,
            ...cloth.pieces.flatMap((line) => [line.width, line.height, line.count]),
          ];
          expect(numbers.filter(({ value }) => !(Number.isFinite(value) && value > 0))).toEqual([]);
          expect(cloth.pieces.filter(({ letter }) => letter === '')).toEqual([]);
        }
      }),
      { numRuns: 200 },
    );
    // Most of them are accepted: the test would be empty otherwise.
    expect(accepted).toBeGreaterThan(80);
  });

  test('a quilt that cannot be laid out says why, with a place', () => {
    fc.assert(
      fc.property(fc.constantFrom(...even), fc.array(changes, { maxLength: 10 }), (base, acts) => {
        const pattern = acts.reduce((now, act) => act(now), base);
        const { findings, sizes } = workOut(pattern);
        if (sizes.length === pattern.sizes.length) return;
        const reasons = findings.filter(({ level }) => level === 'stops');
        expect(reasons.length).toBeGreaterThan(0);
        for (const { what, where } of reasons) {
          expect(what).toMatch(/^[“A-Z].*\.$/);
          expect(where.path).not.toBe('');
        }
      }),
      { numRuns: 100 },
    );
  });
});
