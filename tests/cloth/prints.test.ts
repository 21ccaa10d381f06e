import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ALL_TURNS, afterTurn, type Turn, turnSize } from '../../src/shared/drawing/turn.ts';
import { same } from '../../src/shared/measure/inches.ts';
import { type Pattern, patternSchema } from '../../src/shared/pattern/schema.ts';
import { leavesOf } from '../../src/shared/piecing/tree.ts';
import type { WorkedOut, WorkedSize } from '../../src/shared/workroom/workedOut.ts';
import { workOut } from '../../src/shared/workroom/workOut.ts';
import { starter } from '../helpers/starters.ts';

/** A block of plain rectangles, a border and sashing, all of one print on a ground that may be turned. */
function bricks(changes: Record<string, unknown> = {}): Pattern {
  const parsed = patternSchema.parse({
    format: 'piecewright-pattern',
    version: 1,
    id: 'quay-wall',
    title: 'Quay Wall',
    edition: { number: 1, date: '2026-05-01' },
    words: { designer: 'Saltmarsh & Thread' },
    recipes: [
      {
        format: 'piecewright-recipe',
        version: 1,
        id: 'brick',
        name: 'Brick',
        finished: 6,
        roles: [
          { id: 'stone', name: 'Stone', value: 'dark' },
          { id: 'mortar', name: 'Mortar', value: 'light' },
        ],
        body: {
          kind: 'grid',
          columns: [2, 1],
          rows: [1, 2],
          key: { S: { unit: 'plain', role: 'stone' }, M: { unit: 'plain', role: 'mortar' } },
          layout: ['S M', 'M S'],
        },
      },
    ],
    blocks: [{ id: 'A', name: 'Brick', recipe: 'brick', fabrics: { stone: 'slate', mortar: 'sand' } }],
    fabrics: [
      { id: 'slate', name: 'Slate', value: 'dark', colour: '#3a4654', direction: 'one-way' },
      { id: 'sand', name: 'Sand', value: 'light', colour: '#e5dcc5' },
    ],
    setting: { kind: 'straight', motif: ['A'] },
    borders: [{ id: 'edge', name: 'Edge', fabric: 'slate', width: 3 }],
    binding: { fabric: 'sand' },
    backing: { fabric: 'sand' },
    sizes: [{ id: 'lap', name: 'Lap', across: 4, down: 10, block: 6 }],
    ...changes,
  });
  return parsed as Pattern;
}

/** How many pieces are laid on the cloth so wide and so high, seen with the print upright, by "width × height". */
function laid({ cloth }: WorkedSize, fabric: string): ReadonlyMap<string, number> {
  const found = new Map<string, number>();
  for (const { times, pieces } of cloth.needs.find((need) => need.fabric === fabric)?.plan.strips ?? []) {
    for (const { width, height, count } of pieces) add(found, width, height, count * times);
  }
  return found;
}

function add(to: Map<string, number>, width: number, height: number, many: number): void {
  const key = `${width} × ${height}`;
  to.set(key, (to.get(key) ?? 0) + many);
}

/** The same from the drawing: every plain patch of the print as it lies in the quilt, and a seam on each side. */
function standing(out: WorkedOut, { quilt }: WorkedSize, fabric: string): ReadonlyMap<string, number> {
  const found = new Map<string, number>();
  const seams = 2 * out.pattern.house.seam;
  for (const leaf of quilt.blocks) {
    const block = out.blocks.find(({ id }) => id === leaf.block);
    if (block === undefined) continue;
    const grid = 6 / block.piecing.drawing.width;
    for (const part of leavesOf(block.piecing.root)) {
      const unit = block.piecing.units.find(({ key }) => key === part.unit);
      if (unit?.kind !== 'plain' || block.fabricOf[unit.role] !== fabric) continue;
      const { width, height } = turnSize(unit.width, unit.height, afterTurn(part.turn, leaf.turn));
      add(found, width * grid + seams, height * grid + seams, 1);
    }
  }
  return found;
}

const turnText = ({ quarters, mirrored }: Turn) => `A:${mirrored ? 'm' : ''}${quarters * 90}`;
const anyMotif = fc
  .tuple(fc.integer({ min: 1, max: 3 }), fc.integer({ min: 1, max: 3 }))
  .chain(([across, down]) =>
    fc.array(fc.array(fc.constantFrom(...ALL_TURNS), { minLength: across, maxLength: across }), {
      minLength: down,
      maxLength: down,
    }),
  )
  .map((rows) => rows.map((row) => row.map(turnText).join(' ')));

describe('a print that has a direction', () => {
  test('is never turned, however the blocks are', () => {
    fc.assert(
      fc.property(anyMotif, fc.constantFrom('one-way' as const, 'two-way' as const), (motif, direction) => {
        const pattern = bricks({ setting: { kind: 'straight', motif }, borders: [] });
        const [slate, ...others] = pattern.fabrics;
        const out = workOut({ ...pattern, fabrics: [{ ...(slate as Pattern['fabrics'][0]), direction }, ...others] });
        const [size] = out.sizes as readonly [WorkedSize];
        expect(laid(size, 'slate')).toEqual(standing(out, size, 'slate'));
      }),
      { numRuns: 30 },
    );
  });

  test('has the sides of its borders cut along the cloth and the ends across it', () => {
    const [size] = workOut(bricks()).sizes as readonly [WorkedSize];
    // By hand: the blocks are 24 × 60; sides 60½ long in one piece along the cloth, ends 24 + 6 + ½ across it, both 3½ wide.
    const pieces = laid(size, 'slate');
    expect(pieces.get('3.5 × 60.5')).toBe(2);
    expect(pieces.get('30.5 × 3.5')).toBe(2);
    const sides = size.cloth.pieces.find(({ width }) => same(width.value, 60.5));
    expect(sides).toMatchObject({ lengthwise: true, upright: true });
    expect(sides?.joined).toBeUndefined();
  });

  test('takes two lines of the chart where pieces lie both ways, and the counts stay whole', () => {
    const [size] = workOut(bricks()).sizes as readonly [WorkedSize];
    // By hand: no piece of Slate in the block but one lying and one standing in each of 40 blocks: 4½ × 2½ cut.
    const lines = size.cloth.pieces.filter(({ width, height }) => same(width.value, 4.5) && same(height.value, 2.5));
    const slate = lines.filter(({ fabric }) => fabric === 'slate');
    expect(slate.map(({ count, lengthwise }) => [count.value, lengthwise === true])).toEqual([
      [40, false],
      [40, true],
    ]);
    expect(new Set(slate.map(({ letter }) => letter)).size).toBe(1);
  });

  test('stands along the width of a sheet', () => {
    const pattern = bricks({ borders: [] });
    const [slate, ...others] = pattern.fabrics as [Pattern['fabrics'][0]];
    const sheet = { name: 'fat quarter', width: 18, height: 21 };
    const [size] = workOut({ ...pattern, fabrics: [{ ...slate, sheet }, ...others] }).sizes as readonly [WorkedSize];
    const cut = size.cloth.needs.find(({ fabric }) => fabric === 'slate')?.sheets?.plans ?? [];
    for (const { lengthwise, strips } of cut) {
      for (const { width, height, letter } of strips.flatMap(({ pieces }) => pieces)) {
        const alongWidth = lengthwise ? height : width;
        const lines = size.cloth.pieces.filter((line) => line.letter === letter);
        const stands = lines.map((line) => (line.lengthwise ? line.width.value : line.height.value));
        expect(stands).toContain(alongWidth);
      }
    }
    const made = cut.flatMap(({ times, strips }) =>
      strips.flatMap((s) => s.pieces.map((p) => p.count * s.times * times)),
    );
    expect(made.reduce((sum, n) => sum + n, 0)).toBe(80);
  });

  test('is told when it is wider than the cloth as it stands', () => {
    const wide = bricks({ sizes: [{ id: 'bed', name: 'Bed', across: 2, down: 2, block: 66 }], borders: [] });
    const { findings } = workOut(wide);
    // By hand: two of three grid units of 66″ and two seams: 44½ × 22½ on 40″ of cloth; 4½ too wide.
    const told = findings.find(({ what }) => what.includes('as its print stands'));
    expect(told).toMatchObject({ level: 'stops', by: 4.5, where: { size: 'Bed' } });
  });
});

describe('a way of making units that turns a print', () => {
  const hst = (method: string, direction: 'one-way' | 'two-way') => {
    const pattern = bricks({
      blocks: [
        {
          id: 'A',
          name: 'Pinwheel',
          recipe: 'pinwheel',
          methods: { hst: method },
          fabrics: { background: 'sand', blades: 'slate' },
        },
      ],
      borders: [],
    });
    const fabrics = pattern.fabrics.map((fabric) => ({ ...fabric, direction }));
    return { ...pattern, fabrics };
  };

  test.each([
    ['hst-eight', 'two-way', true, 'Make half-square triangles, two at a time (“hst-two”), or take a print that'],
    ['hst-two', 'one-way', true, 'Take a print that looks alike every way.'],
    ['hst-two', 'two-way', false, ''],
  ] as const)('%s with a %s print', (method, direction, turned, mended) => {
    const pattern = { ...hst(method, direction), recipes: [starter('pinwheel')] };
    const told = workOut(pattern).findings.filter(({ what }) => what.includes('turn it in block A'));
    expect(told.length > 0).toBe(turned);
    for (const { level, mend, where } of told) {
      expect(level).toBe('look');
      expect(where.path).toBe('blocks[0].methods');
      expect(mend).toContain(mended);
    }
  });
});
