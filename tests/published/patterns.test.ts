import { describe, expect, test } from 'vitest';
import type { PieceLine } from '../../src/shared/cloth/cloth.ts';
import { planStrips } from '../../src/shared/cloth/strips/planStrips.ts';
import { type Pattern, patternSchema } from '../../src/shared/pattern/schema.ts';
import { recipeSchema } from '../../src/shared/recipe/schema.ts';
import type { WorkedOut, WorkedSize } from '../../src/shared/workroom/workedOut.ts';
import { workOut } from '../../src/shared/workroom/workOut.ts';
import { testPattern } from '../helpers/fixtures.ts';

function sizeOf(worked: WorkedOut, id: string): WorkedSize {
  const size = worked.sizes.find((one) => one.size.id === id);
  if (size === undefined) throw new Error(`No size ${id}: ${worked.findings.map(({ what }) => what).join(' ')}`);
  return size;
}

/** "4½ by 2½" as numbers and how many, for the pieces of blocks, the largest first. */
function cuts(size: WorkedSize, keep: (line: PieceLine) => boolean = () => true): readonly (readonly number[])[] {
  return size.cloth.pieces
    .filter((line) => line.use.some(({ block }) => block !== null) && keep(line))
    .map(({ width, height, count }) => [width.value, height.value, count.value])
    .sort(([a = 0, b = 0], [c = 0, d = 0]) => c - a || d - b);
}

/** A quilt of one block that is one patch: only its measure matters, inches. */
function plainQuilt(width: number, height: number, change: Partial<Pattern> = {}): Pattern {
  const { recipes: _none, ...base } = testPattern('ebb');
  const recipe = recipeSchema.parse({
    format: 'piecewright-recipe',
    version: 1,
    id: 'sheet',
    name: 'Sheet',
    finished: width,
    roles: [{ id: 'sand', name: 'Sand', value: 'light' }],
    body: {
      kind: 'grid',
      columns: [2 * width],
      rows: [2 * height],
      key: { S: { unit: 'plain', role: 'sand' } },
      layout: ['S'],
    },
  });
  const block = { id: 'A', name: 'Sheet', recipe: 'sheet', parameters: {}, methods: {}, fabrics: {} };
  const size = { id: 'only', name: 'Only', across: 1, down: 1, block: width, borders: {} };
  const setting = { kind: 'straight', motif: ['A'], single: [] } as const;
  const pattern = { ...base, recipes: [recipe], blocks: [block], borders: [], sizes: [size], setting, ...change };
  return { ...patternSchema.parse(pattern), recipes: [recipe] };
}

describe('six stars in logs, two by three', () => {
  const worked = workOut(testPattern('six-lamps'));
  const size = sizeOf(worked, 'only');

  // Common practice: six such blocks set 2×3 and bordered finish about 41 × 57.
  test('finish 41 by 57, and nothing stands in the way', () => {
    expect([size.quilt.finished.width.value, size.quilt.finished.height.value]).toEqual([41, 57]);
    expect(worked.findings.filter(({ level }) => level !== 'note')).toEqual([]);
  });

  // Common practice: strips 2½ cut around an 8-inch finished core, two rounds: 8½ to 16½, block 16½ unfinished.
  test('the logs are cut to the published lengths and the block measures 16½', () => {
    const logs = cuts(size, (line) => line.use.some(({ unit }) => unit.startsWith('log')));
    const published = [16.5, 14.5, 14.5, 12.5, 12.5, 10.5, 10.5, 8.5];
    expect(logs).toEqual(published.map((length) => [length, 2.5, 6]));
    expect(size.blocks[0]?.unfinished.width.value).toBe(16.5);
  });

  // Common practice: points are 2½ squares on 2½×4½ rectangles, 2½ squares in the corners, a four-patch of 2½ squares.
  test('the core is cut from 2½ squares and 2½ by 4½ rectangles', () => {
    const core = cuts(size, (line) => !line.use.some(({ unit }) => unit.startsWith('log')));
    expect(core).toEqual([
      [4.5, 2.5, 4 * 6],
      [2.5, 2.5, (4 + 2) * 6],
      [2.5, 2.5, (8 + 2) * 6],
    ]);
  });

  test('the core by itself measures 8½', () => {
    const pattern = testPattern('six-lamps');
    const blocks = pattern.blocks.map((block) => ({ ...block, recipe: 'lamp' }));
    const sizes = pattern.sizes.map((one) => ({ ...one, block: 8 }));
    const core = sizeOf(workOut({ ...pattern, blocks, sizes }), 'only');
    expect(core.blocks[0]?.unfinished.width.value).toBe(8.5);
  });

  // Common practice: lights on two neighbouring sides, darks on the other two; seams pressed away from the centre.
  test('day lies on two neighbouring sides, night on the others, and seams are pressed outwards', () => {
    const [block] = worked.blocks;
    if (block?.piecing.root.kind !== 'rounds') throw new Error('the block is no rounds');
    const roles = new Map(block.piecing.units.map((unit) => [unit.key, 'role' in unit ? unit.role : '']));
    const sides = block.piecing.root.logs.map(({ side, part }) => [side, 'unit' in part ? roles.get(part.unit) : '']);
    expect(new Set(sides.map((pair) => pair.join(' ')))).toEqual(
      new Set(['top day', 'right day', 'bottom night', 'left night']),
    );
    const outwards = { top: 'up', right: 'right', bottom: 'down', left: 'left' };
    const pressed = block.pressing.parts.find(({ path }) => path === '')?.seams;
    expect(pressed).toEqual(block.piecing.root.logs.map(({ side }) => outwards[side]));
  });

  // Common practice: one bundle of forty 2½-inch strips, about half of them light and half dark.
  test('blocks, one border and the binding come from one bundle of forty strips, half of it light', () => {
    const values = new Map(worked.pattern.fabrics.map(({ id, value }) => [id, value]));
    const narrow = size.cloth.pieces.filter((line) => line.height.value === 2.5 && line.joined === undefined);
    const strips = (value: string) => {
      const own = narrow.filter(({ fabric }) => values.get(fabric) === value);
      const kinds = own.map((line) => ({
        width: line.width.value,
        height: 2.5,
        count: line.count.value,
        turns: false,
      }));
      return planStrips(kinds, worked.pattern.house.usableWidth).strips.reduce((sum, strip) => sum + strip.times, 0);
    };
    const joined = size.cloth.pieces.filter((line) => line.height.value === 2.5 && line.joined !== undefined);
    const border = joined.reduce((sum, line) => sum + (line.joined?.value ?? 0), 0);
    expect(strips('light') + border).toBeLessThanOrEqual(20);
    expect(strips('dark')).toBeLessThanOrEqual(20);
  });
});

describe('published blocks through a whole pattern', () => {
  // Block grids (quilting handbook pp. 10–11; Moonlight Quilters, guild): churn dash 3×3 with halved rails, 6-inch block cuts
  // 2⅞, 1½×2½, 2½.
  test('a churn dash of six inches', () => {
    const size = sizeOf(workOut(testPattern('ebb')), 'six');
    const ofA = cuts(size, ({ use }) => use.every(({ block }) => block === 'A'));
    expect(ofA.map(([width, height]) => [width, height])).toEqual([
      [2.875, 2.875],
      [2.875, 2.875],
      [2.5, 2.5],
      [2.5, 1.5],
      [2.5, 1.5],
    ]);
  });

  // Seven-patch family, bear's paw 7×7 (quilting handbook pp. 10–11; Moonlight Quilters).
  // Quilting magazine, August 2019 issue (scan): eight at a time from squares of 2 × (finished + ⅞).
  test.each([
    ['small', 1, 3.75],
    ['middle', 1.5, 4.75],
    ['large', 2, 5.75],
  ])('a bear’s paw, %s, on a grid of seven: claws of %d inch', (id, claw, square) => {
    const worked = workOut(testPattern('otter'));
    const size = sizeOf(worked, id);
    expect(worked.blocks[0]?.piecing.drawing.width).toBe(7);
    expect(size.quilt.block.width / 7).toBe(claw);
    const claws = cuts(size, ({ use }) => use.some(({ unit }) => unit.startsWith('hst')));
    expect(claws.map(([width]) => width)).toEqual([square, square]);
  });

  // Computed: 12 inches on a grid of five are 2⅖ a unit, which is on no ruler; 10 inches are 2.
  test('a five-grid block fits at ten inches and not at twelve', () => {
    const worked = workOut(testPattern('five-fathom'));
    expect(sizeOf(worked, 'ten').findings).toEqual([]);
    const twelve = sizeOf(worked, 'twelve').findings;
    expect(twelve.filter(({ level }) => level === 'stops').length).toBeGreaterThan(0);
    for (const { where, mend } of twelve)
      expect([where.size, mend]).toEqual(['Twelve inch', expect.stringContaining('ruler')]);
  });
});

describe('the 37½ × 43½ wall quilt', () => {
  // American Patchwork & Quilting, wall quilt pattern: 2×2 blocks 11×14 finished, three-strip sashing 3 finished in all,
  // also outside.
  const worked = workOut(testPattern('panes'));
  const size = sizeOf(worked, 'wall');
  const cutsOf = (unit: string) =>
    size.cloth.pieces
      .filter(({ use }) => use.some((one) => one.unit === unit))
      .map((line) => [line.fabric, line.count.value, line.height.value, line.width.value]);

  test('measures what is published, and nothing stands in the way', () => {
    expect([size.quilt.unfinished.width.value, size.quilt.unfinished.height.value]).toEqual([37.5, 43.5]);
    expect(worked.findings).toEqual([]);
  });

  test('cuts the published sashing strips and borders', () => {
    expect(cutsOf('sashing').sort()).toEqual([
      ['cream', 12, 1.5, 11.5],
      ['cream', 12, 1.5, 14.5],
      ['green', 6, 1.5, 11.5],
      ['green', 6, 1.5, 14.5],
    ]);
    expect(cutsOf('frame').map(([, count, width, length]) => [count, width, length])).toEqual([
      [2, 3.5, 37.5],
      [2, 3.5, 37.5],
    ]);
  });

  test('takes the published batting, backing and binding', () => {
    const { batting, backing, binding } = size.cloth;
    expect([batting.width.value, batting.height.value]).toEqual([46, 52]);
    expect(backing.yards.value).toBe(2 + 5 / 8);
    expect([binding.strips.value, binding.stripWidth.value]).toEqual([5, 2.5]);
  });

  // Three 1½ strips sewn side by side measure 3½ (seam test, common practice).
  test('every sashing of three strips is as wide as its cornerstone', () => {
    const corner = size.cloth.pieces.find(({ use }) => use.some(({ unit }) => unit === 'cornerstones'));
    expect([corner?.count.value, corner?.width.value]).toEqual([9, 3.5]);
  });
});

describe('published quilts through a whole pattern', () => {
  // Quilting magazine (scan): three rounds 1 finished on a 29½×19½ top, along the long edge first.
  test('butted borders', () => {
    const borders = ['first', 'second', 'third'].map((id) => ({
      id,
      name: id,
      fabric: 'wrack',
      width: 1,
      first: 'ends' as const,
    }));
    const { quilt } = sizeOf(workOut(plainQuilt(29, 19, { borders })), 'only');
    expect(quilt.strips.map(({ cutLength }) => cutLength.value)).toEqual([
      ...[29.5, 29.5, 21.5, 21.5],
      ...[31.5, 31.5, 23.5, 23.5],
      ...[33.5, 33.5, 25.5, 25.5],
    ]);
    expect([quilt.unfinished.width.value, quilt.unfinished.height.value]).toEqual([35.5, 25.5]);
  });

  // Quilting handbook, p. 150: quilt measure + 2 × border width + 4; a 3-inch border adds 10.
  test('mitred borders', () => {
    const borders = [
      { id: 'frame', name: 'Frame', fabric: 'wrack', width: 3, first: 'sides', corners: 'mitred' } as const,
    ];
    const { quilt, findings } = sizeOf(workOut(plainQuilt(29, 19, { borders })), 'only');
    expect(quilt.strips.map(({ cutLength }) => cutLength.value)).toEqual([29.5, 29.5, 39.5, 39.5]);
    expect([quilt.unfinished.width.value, quilt.unfinished.height.value]).toEqual([35.5, 25.5]);
    expect(findings).toEqual([]);
  });

  // American Patchwork & Quilting, patterns: binding strips 2½×42 follow from (perimeter + 10) ÷ 40, up.
  test.each([
    { width: 21.5, height: 21.5, beyond: 4, batting: [30, 30], backing: 7 / 8, binding: 3 },
    { width: 37.5, height: 43.5, beyond: 4, batting: [46, 52], backing: 2 + 5 / 8, binding: 5 },
    { width: 50.5, height: 59.5, beyond: 3, batting: [57, 66], backing: 3 + 1 / 4, binding: 6 },
  ])('binding, backing and batting of $width × $height', ({ width, height, beyond, batting, backing, binding }) => {
    const pattern = plainQuilt(width, height, {
      backing: { fabric: 'sand', beyond },
      binding: { fabric: 'sand', strip: 2.5 },
    });
    const { cloth } = sizeOf(workOut(pattern), 'only');
    expect(cloth.binding.strips.value).toBe(binding);
    expect(cloth.backing.yards.value).toBe(backing);
    expect([cloth.batting.width.value, cloth.batting.height.value]).toEqual(batting);
  });
});
