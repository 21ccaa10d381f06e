import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ALL_TURNS } from '../../src/shared/drawing/turn.ts';
import type { Edit } from '../../src/shared/pattern/edit.ts';
import * as edits from '../../src/shared/pattern/edits/index.ts';
import { blockAt } from '../../src/shared/pattern/motif.ts';
import type { Pattern } from '../../src/shared/pattern/schema.ts';
import { checkEdit } from '../helpers/checkEdit.ts';
import { testPattern } from '../helpers/fixtures.ts';
import { demoPattern, starter, starterRecipes } from '../helpers/starters.ts';

const demo = demoPattern();

/** Patterns of every kind of setting: an edit must keep each of them sound. */
const patterns: readonly Pattern[] = [
  demo,
  testPattern('panes'),
  testPattern('causeway'),
  testPattern('nets'),
  testPattern('harbour-wall'),
];

const anyNumber = fc.oneof(
  fc.double({ min: -5, max: 300 }),
  fc.constantFrom(0, 1.5, 4, Number.NaN, Number.POSITIVE_INFINITY),
);
const anyText = fc.oneof(fc.string(), fc.constantFrom('Lap', '  ', 'Größe ½', 'x'.repeat(400)));
const block = fc.constantFrom('A', 'B', 'Z');
const fabric = fc.constantFrom('foam', 'deep', 'sand', 'cream', 'nowhere');
const border = fc.constantFrom('rope', 'quay', 'frame', 'geese', 'nowhere');
const size = fc.constantFrom('cot', 'lap', 'bed', 'throw', 'nowhere');
const strip = fc.integer({ min: -1, max: 3 });
const cells = fc.array(fc.record({ column: fc.nat(8), row: fc.nat(8) }), { minLength: 1, maxLength: 5 });
const by = fc.constantFrom(...ALL_TURNS);
const value = fc.constantFrom('light' as const, 'medium' as const, 'dark' as const);
const first = fc.constantFrom('sides' as const, 'ends' as const);
const colour = fc.constantFrom('#a1b2c3', '#FFFFFF', 'red');

/** Arguments for an edit: sensible ones and the odd ones that a screen might let through. */
type AnyCase = readonly [Edit<never>, fc.Arbitrary<never>];
function of<Args>(edit: Edit<Args>, args: fc.Arbitrary<NoInfer<Args>>): AnyCase {
  return [edit as Edit<never>, args as fc.Arbitrary<never>];
}

const cases: readonly AnyCase[] = [
  of(edits.renamePattern, fc.record({ title: anyText })),
  of(
    edits.setWords,
    fc.record({ field: fc.constantFrom('introduction', 'designer', 'contact', 'copyright', 'notes'), text: anyText }),
  ),
  of(edits.setCautions, fc.record({ cautions: fc.array(anyText, { maxLength: 25 }) })),
  of(edits.setUsualCautions, fc.record({ without: fc.boolean() })),
  of(
    edits.setEdition,
    fc.record({ number: anyNumber, date: fc.constantFrom('2027-02-28', '2027-02-31', 'soon') }, { requiredKeys: [] }),
  ),
  of(
    edits.setHouse,
    fc.record(
      { seam: anyNumber, step: anyNumber, usableWidth: anyNumber, squaring: anyNumber, yardStep: anyNumber },
      { requiredKeys: [] },
    ),
  ),
  of(edits.setHouseMethod, fc.record({ kind: fc.constant('hst'), method: fc.constantFrom('hst-eight', null) })),
  of(edits.renameBlock, fc.record({ block, name: anyText })),
  of(edits.addBlock, fc.record({ recipe: fc.constantFrom(...starterRecipes()) })),
  of(edits.removeBlock, fc.record({ block, instead: block })),
  of(edits.setParameter, fc.record({ block, parameter: fc.constantFrom('rounds', 'nowhere'), value: anyNumber })),
  of(
    edits.setMethod,
    fc.record({
      block,
      of: fc.constantFrom('geese', 'hst 2x2 buoy/sand'),
      method: fc.constantFrom('geese-flip', null),
    }),
  ),
  of(edits.setRoleFabric, fc.record({ block, role: fc.constantFrom('foam', 'lamp'), fabric })),
  of(edits.turnCells, fc.record({ recipe: fc.constantFrom('lantern', 'mooring', 'slip', 'nowhere'), cells, by })),
  of(edits.addFabric, fc.record({ name: anyText, value, colour })),
  of(edits.renameFabric, fc.record({ fabric, name: anyText })),
  of(edits.setFabricColour, fc.record({ fabric, colour })),
  of(edits.setFabricValue, fc.record({ fabric, value })),
  of(edits.removeFabric, fc.record({ fabric, instead: fabric })),
  of(edits.turnBlocks, fc.record({ cells, by, size: fc.option(size) })),
  of(edits.placeBlocks, fc.record({ cells, block, size: fc.option(size) })),
  of(edits.returnToMotif, fc.record({ cells, size: fc.option(size) })),
  of(edits.turnMotif, fc.record({ cells, by })),
  of(edits.placeInMotif, fc.record({ cells, block })),
  of(edits.resizeMotif, fc.record({ columns: anyNumber, rows: anyNumber })),
  of(
    edits.setReflect,
    fc.record(
      {
        reflect: fc.constantFrom('across' as const, 'down' as const, 'both' as const, null),
        reflected: fc.constantFrom('mirrored' as const, 'falling' as const, 'rising' as const),
      },
      { requiredKeys: ['reflect'] },
    ),
  ),
  of(edits.setSewn, fc.record({ sewn: fc.constantFrom('rows' as const, 'columns' as const) })),
  of(edits.setStraight, fc.constant({})),
  of(edits.setOnPoint, fc.record({ fabric })),
  of(
    edits.setTriangles,
    fc.record(
      {
        fabric,
        corners: fc.option(fabric),
        fit: fc.constantFrom('rounded-up' as const, 'exact' as const, 'floating' as const),
        float: anyNumber,
      },
      { requiredKeys: [] },
    ),
  ),
  of(
    edits.setBetween,
    fc.record({ motif: fc.option(fc.array(fc.constantFrom('A', 'C:90 A', 'A:m C', 'Z', ''), { maxLength: 3 })) }),
  ),
  of(edits.addSashing, fc.record({ fabric, width: anyNumber })),
  of(edits.removeSashing, fc.constant({})),
  of(edits.addSashStrip, fc.record({ fabric, width: anyNumber })),
  of(edits.removeSashStrip, fc.record({ strip })),
  of(edits.setSashStrip, fc.record({ strip, fabric, width: anyNumber }, { requiredKeys: ['strip'] })),
  of(edits.setCornerstones, fc.record({ fabric: fc.option(fabric) })),
  of(edits.setSashingOutside, fc.record({ outside: fc.boolean() })),
  of(edits.setSashWidthIn, fc.record({ strip, size, width: fc.option(anyNumber) })),
  of(edits.addBorder, fc.record({ name: anyText, fabric, width: anyNumber, first })),
  of(edits.removeBorder, fc.record({ border })),
  of(edits.renameBorder, fc.record({ border, name: anyText })),
  of(edits.setBorderWidth, fc.record({ border, width: anyNumber })),
  of(edits.setBorderWidthIn, fc.record({ border, size, width: fc.option(anyNumber) })),
  of(edits.setBorderFirst, fc.record({ border, first })),
  of(
    edits.setBorderCorners,
    fc.record(
      {
        border,
        corners: fc.constantFrom('butted' as const, 'cornerstones' as const, 'mitred' as const),
        cornerstones: fabric,
      },
      { requiredKeys: ['border', 'corners'] },
    ),
  ),
  of(
    edits.setBorderCut,
    fc.record({ border, way: fc.constantFrom('straight' as const, 'diagonal' as const, 'lengthwise' as const) }),
  ),
  of(edits.setBorderEnds, fc.record({ border, ends: fc.option(anyNumber) })),
  of(edits.setBorderEndsIn, fc.record({ border, size, ends: fc.option(anyNumber) })),
  of(
    edits.setBorderPieced,
    fc.record(
      {
        border,
        units: fc.option(fc.constantFrom('A', 'C:90 A', 'A:m', 'Z', '', 'A ?')),
        corner: fc.option(fc.constantFrom('A', 'C:270', 'Z', ' ')),
        run: fc.constantFrom('round' as const, 'middle' as const),
      },
      { requiredKeys: ['border', 'units'] },
    ),
  ),
  of(
    edits.addSpacer,
    fc.record({
      border,
      fabric,
      widths: fc.dictionary(size, fc.record({ sides: anyNumber, ends: anyNumber }), { maxKeys: 3 }),
    }),
  ),
  of(edits.setBorderFabric, fc.record({ border, fabric })),
  of(edits.moveBorder, fc.record({ border, to: fc.integer({ min: -3, max: 9 }) })),
  of(edits.addSize, fc.record({ name: anyText, across: anyNumber, down: anyNumber, block: anyNumber })),
  of(edits.renameSize, fc.record({ size, name: anyText })),
  of(edits.setSizeBlocks, fc.record({ size, across: anyNumber, down: anyNumber })),
  of(edits.setSizeBlock, fc.record({ size, block: anyNumber })),
  of(edits.moveSize, fc.record({ size, to: fc.integer({ min: -3, max: 9 }) })),
  of(edits.removeSize, fc.record({ size })),
  of(edits.setBinding, fc.record({ fabric, strip: anyNumber }, { requiredKeys: [] })),
  of(edits.setBacking, fc.record({ fabric, beyond: anyNumber }, { requiredKeys: [] })),
];

describe('every edit', () => {
  test('is tried here', () => {
    const known = Object.values(edits).filter((one) => typeof one === 'object' && 'apply' in one);
    expect(cases.map(([edit]) => edit)).toEqual(expect.arrayContaining(known));
    expect(new Set(cases.map(([edit]) => edit.id)).size).toBe(cases.length);
  });

  test.each(cases.map(([edit, args]) => [edit.id, edit, args] as const))(
    '%s keeps the document sound, whatever it is asked',
    (_, edit, args) => {
      fc.assert(
        fc.property(args, fc.constantFrom(...patterns), (asked, pattern) => {
          checkEdit(edit, asked, pattern);
        }),
        { numRuns: 90 },
      );
    },
  );
});

describe('turning blocks in the quilt', () => {
  const quarter = { quarters: 1, mirrored: false } as const;
  const here = [{ column: 1, row: 0 }];
  const turn = (pattern: Pattern) => edits.turnBlocks.apply(pattern, { cells: here, by: quarter, size: null });

  test('four quarter turns bring back the very setting, with no single block left behind', () => {
    expect([1, 2, 3, 4].reduce(turn, demo).setting).toEqual(demo.setting);
  });

  test('a block turned in one size is turned in no other', () => {
    const after = edits.turnBlocks.apply(demo, { cells: here, by: quarter, size: 'lap' });
    const at = blockAt(after);
    expect(at('lap', 1, 0)?.turn.quarters).toBe(1);
    expect(at('cot', 1, 0)?.turn.quarters).toBe(0);
  });

  test('returning a block to the motif undoes what was done to it alone', () => {
    expect(edits.returnToMotif.apply(turn(demo), { cells: here, size: null }).setting).toEqual(demo.setting);
  });
});

describe('an edit that changes nothing', () => {
  test.each([
    ['the same width', edits.setBorderWidth.apply(demo, { border: 'quay', width: 4 })],
    ['the same name', edits.renameSize.apply(demo, { size: 'lap', name: 'Lap' })],
    ['the same fabric', edits.setRoleFabric.apply(demo, { block: 'A', role: 'foam', fabric: 'foam' })],
    ['the same motif', edits.resizeMotif.apply(demo, { columns: 2, rows: 2 })],
    ['a place it has already', edits.moveBorder.apply(demo, { border: 'rope', to: 0 })],
  ])('%s gives back the very same document', (_, after) => {
    expect(after).toBe(demo);
  });
});

test('a fabric that goes leaves its roles, borders and binding to another', () => {
  const after = edits.removeFabric.apply(demo, { fabric: 'deep', instead: 'tide' });
  expect(after.borders[1]?.fabric).toBe('tide');
  expect(after.blocks[0]?.fabrics.deep).toBe('tide');
  expect(after.blocks[1]?.fabrics.deep).toBe('tide');
});

test('a border that goes is forgotten by every size', () => {
  const after = edits.removeBorder.apply(demo, { border: 'quay' });
  expect(after.sizes.flatMap((one) => Object.keys(one.borders))).toEqual(['rope']);
});

test('a new block brings its recipe and what that recipe holds, and takes fabrics by name or value', () => {
  const after = edits.addBlock.apply(demo, {
    recipe: starter('bears-paw'),
    others: [starter('paw'), starter('claws')],
  });
  const added = after.blocks.at(-1);
  expect(added).toMatchObject({
    id: 'C',
    recipe: 'bears-paw',
    fabrics: { background: 'foam', paw: 'deep', claws: 'deep' },
  });
});
