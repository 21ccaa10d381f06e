import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { copyPart } from '../../src/shared/drawing/part.ts';
import { ALL_TURNS } from '../../src/shared/drawing/turn.ts';
import { ALL_WAYS } from '../../src/shared/drawing/ways.ts';
import type { Edit } from '../../src/shared/pattern/edit.ts';
import * as edits from '../../src/shared/pattern/edits/index.ts';
import { blockAt } from '../../src/shared/pattern/motif.ts';
import type { Pattern } from '../../src/shared/pattern/schema.ts';
import { drawnBody, readDrawnBody } from '../../src/shared/recipe/drawn.ts';
import type { DrawingBody, Recipe, UnitCell } from '../../src/shared/recipe/schema.ts';
import { checkEdit } from '../helpers/checkEdit.ts';
import { testPattern } from '../helpers/fixtures.ts';
import { motifTemplates } from '../helpers/motifs.ts';
import { demoPattern, starter, starterRecipes } from '../helpers/starters.ts';

const demo = demoPattern();

/** Patterns of every kind of setting: an edit must keep each of them sound. */
const patterns: readonly Pattern[] = [
  demo,
  testPattern('panes'),
  testPattern('causeway'),
  testPattern('nets'),
  testPattern('harbour-wall'),
  testPattern('brickwork'),
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
/** Settings of every kind, of this pattern and of others whose fabrics and blocks it may not have. */
const settingBefore = fc.constantFrom(...patterns.map(({ setting }) => setting));

/** Recipes of the demo as somebody may have changed them in the library, and one it has not. */
function otherRevisions(): readonly Recipe[] {
  const [first, ...rest] = demo.recipes;
  if (first === undefined) throw new Error('The demo carries no recipe');
  const role = { id: 'new-role', name: 'New role', value: 'medium' as const };
  return [
    { ...first, roles: [...first.roles, role] },
    { ...first, roles: first.roles.slice(1), parameters: [] },
    ...rest,
    { ...starter('pinwheel'), id: 'not-here' },
  ];
}

/** Arguments for an edit: sensible ones and the odd ones that a screen might let through. */
type AnyCase = readonly [Edit<never>, fc.Arbitrary<never>, Pattern | null];
function of<Args>(edit: Edit<Args>, args: fc.Arbitrary<NoInfer<Args>>, pattern: Pattern | null = null): AnyCase {
  return [edit as Edit<never>, args as fc.Arbitrary<never>, pattern];
}

const gridLine = {
  recipe: fc.constantFrom('lantern', 'mooring', 'slip', 'nowhere'),
  along: fc.constantFrom('columns' as const, 'rows' as const),
  at: fc.integer({ min: -1, max: 6 }),
};

/** One of each unit that a cell of a grid may hold, in roles of the demo and one it has not. */
const anyUnitCell: fc.Arbitrary<UnitCell> = fc
  .array(fc.constantFrom('foam', 'deep', 'lamp', 'tide', 'foam', 'deep', 'nowhere'), { minLength: 4, maxLength: 4 })
  .chain(([a = '', b = '', c = '', d = '']) =>
    fc.constantFrom<UnitCell>(
      { unit: 'plain', role: a },
      { unit: 'hst', roles: [a, b] },
      { unit: 'geese', roles: [a, b] },
      { unit: 'corners', role: a, corners: [{ at: 'top-left', role: b, size: 1 }] },
      { unit: 'four-patch', roles: [a, b] },
      { unit: 'qst', roles: [a, b, c, d] },
      { unit: 'three-patch', roles: [a, b, c] },
      { unit: 'square-in-square', role: a, roles: [b, c, d, b] },
      { unit: 'half-rectangle', diagonal: 'falling', roles: [a, b] },
      { unit: 'nine-patch', roles: [a, b, c] },
      { unit: 'checkerboard', columns: 4, rows: 2, roles: [a, b] },
      { unit: 'rails', roles: [a, b, c] },
      { unit: 'quarter-circle', roles: [a, b], radius: 1 },
    ),
  );

/** A square of four grid units, cut once across, once down its left half, and with a quarter circle in a corner. */
const body: DrawingBody = {
  kind: 'drawing',
  width: 4,
  height: 4,
  role: 'foam',
  splits: [
    { inside: [1, 1], from: [0, 2], to: [4, 2], role: 'deep' },
    { inside: [1, 1], from: [2, 0], to: [2, 2], role: 'lamp' },
    { inside: [3, 3], from: [4, 3], to: [3, 4], centre: [4, 4], role: 'tide' },
  ],
  pins: [
    {
      first: [
        [0, 2],
        [4, 2],
      ],
    },
  ],
};
const drawn = edits.startDrawing.apply(demo, { block: 'A', body });
const recipe = fc.constantFrom('lantern-drawn', 'mooring', 'nowhere');
const place = fc
  .record({ x: fc.integer({ min: -2, max: 20 }), y: fc.nat(20) })
  .map(({ x, y }) => ({ x: x / 4, y: y / 4 }));
const places = fc.array(place, { maxLength: 4 });
const ways = fc.constantFrom(...ALL_WAYS, undefined);
const role = fc.constantFrom('foam', 'lamp', 'deep', 'tide');
const ends = fc.tuple(place, place);
const square = (() => {
  const read = readDrawnBody(body, '');
  if (!read.ok) throw new Error(read.findings.map(({ what }) => what).join(' '));
  return copyPart(read.value, { x: 0, y: 0, width: 2, height: 2 });
})();
/** With an optional field left out when there is none, as a screen would. */
function spare<T extends object>(args: fc.Arbitrary<T>): fc.Arbitrary<T> {
  return args.map((one) => Object.fromEntries(Object.entries(one).filter(([, value]) => value !== undefined)) as T);
}

/** A plan of one strip for the demo's Sand. */
const SAND_PLAN = {
  size: demo.sizes[0]?.id ?? '',
  fabric: demo.fabrics[1]?.id ?? '',
  width: 40,
  bound: 2.5,
  strips: [{ height: 2.5, times: 1, pieces: [{ letter: 'A', width: 2.5, height: 2.5, count: 16 }] }],
};
const keptPlan = fc
  .record({ size, fabric, bound: fc.double({ min: 0, max: 90, noNaN: true }), times: fc.integer({ min: 0, max: 9 }) })
  .map(({ times, ...rest }) => ({
    ...SAND_PLAN,
    ...rest,
    strips: SAND_PLAN.strips.map((strip) => ({ ...strip, times })),
  }));

const cases: readonly AnyCase[] = [
  of(edits.renamePattern, fc.record({ title: anyText })),
  of(
    edits.setWords,
    fc.record({ field: fc.constantFrom('introduction', 'designer', 'contact', 'copyright', 'notes'), text: anyText }),
  ),
  of(edits.setHouseSpares, fc.record({ spares: anyNumber })),
  of(edits.setCautions, fc.record({ cautions: fc.array(anyText, { maxLength: 25 }) })),
  of(edits.setUsualCautions, fc.record({ without: fc.boolean() })),
  of(
    edits.setEdition,
    fc.record({ number: anyNumber, date: fc.constantFrom('2027-02-28', '2027-02-31', 'soon') }, { requiredKeys: [] }),
  ),
  of(
    edits.setHouse,
    fc.record(
      {
        seam: anyNumber,
        step: anyNumber,
        usableWidth: anyNumber,
        squaring: anyNumber,
        yardStep: anyNumber,
        shrinkage: anyNumber,
      },
      { requiredKeys: [] },
    ),
  ),
  of(edits.setHouseOversize, fc.record({ kind: fc.constantFrom('hst', 'qst'), inches: fc.option(anyNumber) })),
  of(edits.setOversize, fc.record({ block, of: fc.constantFrom('hst', 'geese'), inches: fc.option(anyNumber) })),
  of(
    edits.setRuler,
    fc.record(
      { units: fc.constantFrom('inches' as const, 'centimetres' as const), blocks: fc.dictionary(size, anyNumber) },
      { requiredKeys: ['units'] },
    ),
  ),
  of(edits.setHouseMethod, fc.record({ kind: fc.constant('hst'), method: fc.constantFrom('hst-eight', null) })),
  of(edits.renameBlock, fc.record({ block, name: anyText })),
  of(edits.addBlock, fc.record({ recipe: fc.constantFrom(...starterRecipes()) })),
  of(
    edits.takeRecipe,
    fc.record(
      {
        recipe: fc.constantFrom(...otherRevisions()),
        held: fc.constant([starter('nine-patch')]),
        revisions: fc.dictionary(fc.constantFrom('lantern', 'mooring', 'nine-patch'), fc.integer({ min: 1, max: 9 })),
      },
      { requiredKeys: ['recipe'] },
    ),
  ),
  of(edits.copyBlock, fc.record({ block })),
  of(edits.removeBlock, fc.record({ block, instead: block })),
  of(edits.setParameter, fc.record({ block, parameter: fc.constantFrom('rounds', 'nowhere'), value: anyNumber })),
  of(edits.setPlaces, fc.record({ block, places: anyNumber })),
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
  of(
    edits.putCells,
    fc.record({
      recipe: fc.constantFrom('lantern', 'mooring', 'slip', 'nowhere'),
      cells,
      holds: fc.oneof(
        anyUnitCell,
        fc.constantFrom('mooring', 'lantern', 'pinwheel').map((recipe) => ({ recipe })),
      ),
      turn: by,
      carried: fc.constant([starter('pinwheel')]),
      revisions: fc.constant({ pinwheel: 3 }),
    }),
  ),
  of(edits.addGridLine, fc.record(gridLine)),
  of(edits.removeGridLine, fc.record(gridLine)),
  of(edits.setGridSpan, fc.record({ ...gridLine, span: anyNumber })),
  of(edits.addFabric, fc.record({ name: anyText, value, colour })),
  of(edits.renameFabric, fc.record({ fabric, name: anyText })),
  of(edits.setFabricColour, fc.record({ fabric, colour })),
  of(edits.setFabricValue, fc.record({ fabric, value })),
  of(
    edits.setFabricSheet,
    fc.record({ fabric, sheet: fc.option(fc.record({ name: anyText, width: anyNumber, height: anyNumber })) }),
  ),
  of(edits.setFabricPrice, fc.record({ fabric, price: fc.option(anyNumber) })),
  of(
    edits.setFabricScraps,
    fc.record({ fabric, scraps: fc.array(fc.record({ name: anyText, colour }), { maxLength: 4 }) }),
  ),
  of(
    edits.setFabricDirection,
    fc.record({ fabric, direction: fc.constantFrom('one-way' as const, 'two-way' as const, null) }),
  ),
  of(
    edits.setFabricPhotograph,
    fc.record(
      {
        fabric,
        colour,
        photograph: fc.option(
          fc.record({
            id: fc.constantFrom('a'.repeat(64), 'a picture'),
            width: fc.constantFrom(640, 0),
            height: fc.constant(480),
            scale: fc.constantFrom(0.0125, 0),
          }),
        ),
      },
      { requiredKeys: ['fabric', 'photograph'] },
    ),
  ),
  of(edits.setFabricSpread, fc.record({ fabric, spread: fc.oneof(anyNumber, fc.nat(9)) })),
  of(edits.removeFabric, fc.record({ fabric, instead: fabric })),
  of(edits.turnBlocks, fc.record({ cells, by, size: fc.option(size) })),
  of(edits.placeBlocks, fc.record({ cells, block, size: fc.option(size) })),
  of(
    edits.swapBlocks,
    fc.record({
      a: fc.record({ column: fc.nat(8), row: fc.nat(8) }),
      b: fc.record({ column: fc.nat(8), row: fc.nat(8) }),
      size: fc.option(size),
    }),
  ),
  of(edits.returnToMotif, fc.record({ cells, size: fc.option(size) })),
  of(edits.turnMotif, fc.record({ cells, by })),
  of(edits.placeInMotif, fc.record({ cells, block })),
  of(edits.resizeMotif, fc.record({ columns: anyNumber, rows: anyNumber })),
  of(
    edits.takeMotif,
    fc.record({
      template: fc.constantFrom(...motifTemplates()),
      blocks: fc.array(block, { maxLength: 3 }),
      dark: fc.constantFrom('bottom-left' as const, 'top-left' as const, 'top-right' as const, 'bottom-right' as const),
    }),
  ),
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
  of(edits.setSewn, fc.record({ sewn: fc.constantFrom('rows' as const, 'columns' as const, null) })),
  of(edits.setStraight, fc.record({ was: settingBefore }, { requiredKeys: [] })),
  of(
    edits.setStrips,
    fc.record(
      { run: fc.constantFrom('rows' as const, 'columns' as const), was: settingBefore },
      { requiredKeys: ['run'] },
    ),
  ),
  of(
    edits.setShift,
    fc.record(
      { shift: fc.option(fc.constantFrom('1/2', '2/3', '5/6', '3/2', 'half')), fill: fc.option(fabric) },
      { requiredKeys: ['shift'] },
    ),
  ),
  of(edits.setOnPoint, fc.record({ fabric, was: settingBefore }, { requiredKeys: ['fabric'] })),
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
    edits.addRound,
    fc.record({
      name: anyText,
      units: fc.constantFrom('A', 'C:90 A', 'Z', ''),
      corner: fc.option(fc.constantFrom('A', 'Z')),
      fabric,
      width: anyNumber,
    }),
  ),
  of(edits.pieceBorderOf, fc.record({ border, recipe: fc.constantFrom(...starterRecipes()) })),
  of(edits.changeInside, fc.record({ border, size, wider: anyNumber, higher: anyNumber })),
  of(edits.setMedallion, fc.record({ block: fc.constantFrom('A', 'C', 'Z') })),
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
  of(
    edits.addFoundSize,
    fc.record({
      name: anyText,
      across: anyNumber,
      down: anyNumber,
      block: anyNumber,
      borders: fc.dictionary(border, anyNumber, { maxKeys: 2 }),
    }),
  ),
  of(edits.renameSize, fc.record({ size, name: anyText })),
  of(edits.setSizeBlocks, fc.record({ size, across: anyNumber, down: anyNumber })),
  of(edits.setSizeBlock, fc.record({ size, block: anyNumber })),
  of(edits.moveSize, fc.record({ size, to: fc.integer({ min: -3, max: 9 }) })),
  of(edits.removeSize, fc.record({ size })),
  of(edits.setBinding, fc.record({ fabric, strip: anyNumber }, { requiredKeys: [] })),
  of(edits.setBindingCut, fc.record({ cut: fc.constantFrom('straight', 'bias', 'continuous') })),
  of(edits.setBackingWay, fc.record({ run: fc.constantFrom('down', 'across'), wide: anyNumber }, { requiredKeys: [] })),
  of(edits.setBacking, fc.record({ fabric, beyond: anyNumber }, { requiredKeys: [] })),
  of(
    edits.setBundle,
    fc.record(
      {
        strip: anyNumber,
        length: anyNumber,
        values: fc.record({ light: anyNumber, medium: anyNumber, dark: anyNumber }),
        match: fc.array(fabric, { maxLength: 3 }),
        fabrics: fc.array(fabric, { maxLength: 3 }),
        price: anyNumber,
      },
      { requiredKeys: [] },
    ),
  ),
  of(edits.removeBundle, fc.constant({}), edits.setBundle.apply(demo, {})),
  of(edits.keepPlan, fc.record({ plan: keptPlan })),
  of(edits.forgetPlan, fc.record({ size, fabric }), edits.keepPlan.apply(demo, { plan: SAND_PLAN })),
  of(edits.startDrawing, fc.record({ block, body: fc.constant(body) })),
  of(
    edits.cutPatch,
    spare(fc.record({ recipe, places, ways, centre: fc.option(place, { nil: undefined }) })) as never,
    drawn,
  ),
  of(edits.mergePatches, spare(fc.record({ recipe, places, ways })) as never, drawn),
  of(edits.moveVertex, spare(fc.record({ recipe, from: place, to: place, ways })) as never, drawn),
  of(edits.setPatchRole, spare(fc.record({ recipe, places, role, ways })) as never, drawn),
  of(edits.floodPatchRole, spare(fc.record({ recipe, place, role, ways })) as never, drawn),
  of(edits.pastePart, fc.record({ recipe, part: fc.constant(square), at: place, by }), drawn),
  of(edits.refineDrawing, fc.record({ recipe, times: anyNumber }), drawn),
  of(edits.regridDrawing, fc.record({ recipe, across: anyNumber, down: anyNumber }), drawn),
  of(edits.turnDrawing, fc.record({ recipe, by }), drawn),
  of(
    edits.addPin,
    fc.oneof(
      fc.record({ recipe, first: ends }),
      fc.record({ recipe, unit: ends }),
      fc.record({ recipe, unit: ends, method: fc.constant('hst-two') }),
    ),
    drawn,
  ),
  of(edits.removePin, fc.record({ recipe, pin: fc.integer({ min: -1, max: 2 }) }), drawn),
  of(
    edits.addRole,
    fc.record({ recipe: fc.constantFrom('slip', 'lantern-drawn', 'nowhere'), name: anyText, value }),
    drawn,
  ),
  of(edits.renameRole, fc.record({ recipe, role, name: anyText }), drawn),
  of(edits.setRoleValue, fc.record({ recipe, role, value }), drawn),
  of(edits.removeRole, fc.record({ recipe: fc.constantFrom('lantern', 'mooring', 'log-cabin'), role, instead: role })),
  of(edits.renameRecipe, fc.record({ recipe, name: anyText }), drawn),
  of(edits.setUsualSize, fc.record({ recipe, finished: anyNumber }), drawn),
  of(edits.noteRevision, fc.record({ recipe, revision: anyNumber }), drawn),
];

describe('every edit', () => {
  test('is tried here', () => {
    const known = Object.values(edits).filter((one) => typeof one === 'object' && 'apply' in one);
    expect(cases.map(([edit]) => edit)).toEqual(expect.arrayContaining(known));
    expect(new Set(cases.map(([edit]) => edit.id)).size).toBe(cases.length);
  });

  test.each(cases.map(([edit, args, pattern]) => [edit.id, edit, args, pattern] as const))(
    '%s keeps the document sound, whatever it is asked',
    (_, edit, args, only) => {
      const among = only === null ? patterns : [only];
      fc.assert(
        fc.property(args, fc.constantFrom(...among), (asked, pattern) => {
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

test('a bundle is forty strips, half of them light, until something else is said of it', () => {
  const after = edits.setBundle.apply(demo, { match: ['foam', 'nowhere'] });
  expect(after.bundle).toEqual({ strip: 2.5, length: 42, values: { light: 20, medium: 0, dark: 20 }, match: ['foam'] });
  expect(edits.setBundle.apply(after, { match: ['foam'] })).toBe(after);
  const gone = edits.removeFabric.apply(after, { fabric: 'foam', instead: 'tide' });
  expect(gone.bundle?.match).toEqual(['tide']);
  expect(edits.removeBundle.apply(after, {})).toEqual(demo);
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

describe('drawing', () => {
  const recipeOf = (pattern: Pattern) => pattern.recipes.find(({ id }) => id === 'lantern-drawn');
  const bodyOf = (pattern: Pattern) => recipeOf(pattern)?.body as DrawingBody;

  test('a block drawn freely has a recipe of its own, and what only the old one needed goes', () => {
    expect(drawn.blocks[0]?.recipe).toBe('lantern-drawn');
    expect(recipeOf(drawn)?.name).toBe('Lantern, drawn');
    expect(drawn.recipes.some(({ id }) => id === 'lantern')).toBe(false);
    expect(edits.startDrawing.name({ block: 'A', body }, drawn)).toBe('Draw block A afresh');
  });

  test('a cut is named by its places, and what refuses it is said', () => {
    const cut = {
      recipe: 'lantern-drawn',
      places: [
        { x: 0, y: 0 },
        { x: 2, y: 2 },
      ],
      ways: 'both',
    } as const;
    expect(edits.cutPatch.name(cut, drawn)).toBe('Cut 4 ways from 0, 0 to 2, 2');
    const after = edits.cutPatch.maybe(drawn, cut);
    // Four corners cut; the one with the quarter circle takes two pieces of cut, and all its parts stay sound.
    expect(after.ok && bodyOf(after.value).patches?.length).toBeGreaterThan(7);
    const dangling = edits.cutPatch.maybe(drawn, {
      ...cut,
      places: [
        { x: 0, y: 1 },
        { x: 1, y: 1 },
      ],
    });
    expect(dangling.ok ? '' : dangling.findings[0]?.what).toBe('The cut ends inside a patch, at 1 across, 1 down.');
    expect(
      edits.cutPatch.apply(drawn, {
        ...cut,
        places: [
          { x: 0, y: 1 },
          { x: 1, y: 1 },
        ],
      }),
    ).toBe(drawn);
  });

  test('a recipe that is no drawing says so', () => {
    const refused = edits.turnDrawing.maybe(drawn, { recipe: 'mooring', by: { quarters: 1, mirrored: false } });
    expect(refused.ok ? '' : refused.findings[0]?.what).toBe('“Mooring” is not drawn freely.');
  });

  test('pins turn and scale with the drawing, and stay through every cut', () => {
    const recipe = 'lantern-drawn';
    const turned = edits.turnDrawing.apply(drawn, { recipe, by: { quarters: 1, mirrored: false } });
    expect(bodyOf(turned).pins).toEqual([
      {
        first: [
          [2, 0],
          [2, 4],
        ],
      },
    ]);
    const finer = edits.refineDrawing.apply(drawn, { recipe, times: 2 });
    expect(bodyOf(finer)).toMatchObject({
      width: 8,
      pins: [
        {
          first: [
            [0, 4],
            [8, 4],
          ],
        },
      ],
    });
    const other = edits.regridDrawing.apply(drawn, { recipe, across: 6, down: 6 });
    expect(bodyOf(other)).toMatchObject({
      width: 6,
      pins: [
        {
          first: [
            [0, 3],
            [6, 3],
          ],
        },
      ],
    });
    const cut = edits.cutPatch.apply(drawn, {
      recipe,
      places: [
        { x: 0, y: 1 },
        { x: 2, y: 1 },
      ],
    });
    expect(bodyOf(cut).pins).toEqual(body.pins);
  });

  test('a pin for a place takes the place of the one before it, and goes by its number', () => {
    const recipe = 'lantern-drawn';
    const unit = [
      { x: 0, y: 0 },
      { x: 2, y: 2 },
    ] as const;
    const one = edits.addPin.apply(drawn, { recipe, unit });
    const other = edits.addPin.apply(one, { recipe, unit: [unit[1], unit[0]], method: 'template' });
    expect(bodyOf(other).pins?.slice(1)).toEqual([
      {
        unit: [
          [2, 2],
          [0, 0],
        ],
        method: 'template',
      },
    ]);
    expect(bodyOf(edits.removePin.apply(other, { recipe, pin: 1 })).pins).toEqual(body.pins);
    expect(edits.addPin.apply(one, { recipe, unit })).toBe(one);
  });

  test('a grid of another shape is refused with one that fits, and taken while the block is blank', () => {
    const refused = edits.regridDrawing.maybe(drawn, { recipe: 'lantern-drawn', across: 6, down: 4 });
    expect(refused.ok ? '' : refused.findings[0]?.mend).toContain('6 by 6');
    const blank = edits.startDrawing.apply(drawn, {
      block: 'A',
      body: { kind: 'drawing', width: 4, height: 4, role: 'foam' },
    });
    const wide = edits.regridDrawing.apply(blank, { recipe: 'lantern-drawn', across: 6, down: 4 });
    expect(bodyOf(wide)).toMatchObject({ width: 6, height: 4 });
  });

  test('three patches are joined in whatever order they are named', () => {
    const recipe = 'lantern-drawn';
    const rows = [1, 3].reduce(
      (now, y) =>
        edits.cutPatch.apply(now, {
          recipe,
          places: [
            { x: 0, y },
            { x: 2, y },
          ],
        }),
      edits.startDrawing.apply(drawn, { block: 'A', body: { kind: 'drawing', width: 2, height: 4, role: 'foam' } }),
    );
    const joined = edits.mergePatches.apply(rows, {
      recipe,
      places: [
        { x: 1, y: 0.5 },
        { x: 1, y: 3.5 },
        { x: 1, y: 2 },
      ],
    });
    expect(bodyOf(joined).patches).toHaveLength(1);
  });

  test('a new role has a fabric at once, in recipes that hold this one too', () => {
    const after = edits.addRole.apply(demo, { recipe: 'lantern', name: 'Rope', value: 'medium' });
    expect(after.blocks[0]?.fabrics.rope).toBe(
      demo.fabrics.find(({ id, value }) => id === 'rope' || value === 'medium')?.id,
    );
  });

  test('a role that goes leaves its patches to another', () => {
    const after = edits.removeRole.apply(drawn, { recipe: 'lantern-drawn', role: 'lamp', instead: 'deep' });
    const read = readDrawnBody(bodyOf(after), '');
    expect(
      read.ok &&
        drawnBody(read.value)
          .patches?.map((patch) => patch.role)
          .sort(),
    ).toEqual(['deep', 'deep', 'foam', 'tide']);
    expect(after.blocks[0]?.fabrics.lamp).toBeUndefined();
  });
});

describe('a setting that is left and returned to', () => {
  const nets = testPattern('nets');
  const { setting } = nets;
  if (setting.kind !== 'on-point') throw new Error('The nets lie on point');
  const own: Pattern = {
    ...nets,
    setting: {
      ...setting,
      triangles: { ...setting.triangles, fit: 'floating', float: 2 },
      between: setting.motif,
      single: [
        { column: 0, row: 0, block: 'A:90' },
        { column: 0, row: 1, block: 'A:180' },
      ],
    },
  };
  const fabric = nets.fabrics[0]?.id ?? '';

  test('has its triangles, its blocks between and its single places again', () => {
    const straight = edits.setStraight.apply(own, {});
    expect(straight.setting.single).toEqual([{ column: 0, row: 0, block: 'A:90' }]);
    expect(edits.setOnPoint.apply(straight, { fabric, was: own.setting })).toEqual(own);
    const strips = edits.setStrips.apply(own, { run: 'rows' });
    const shifted = edits.setShift.apply(strips, { shift: '1/3', fill: fabric });
    const again = edits.setStrips.apply(edits.setStraight.apply(shifted, {}), { run: 'rows', was: shifted.setting });
    expect(again).toEqual(shifted);
  });

  test('has what still stands: not a fabric or a block that has gone since', () => {
    const straight = edits.setStraight.apply(own, {});
    const was = {
      ...own.setting,
      triangles: { fabric: 'washed-away' },
      between: ['Z'],
      single: [{ column: 0, row: 1, block: 'Z' }],
    } as typeof own.setting;
    const again = edits.setOnPoint.apply(straight, { fabric, was }).setting;
    expect(again).toMatchObject({ triangles: { fabric }, single: [{ column: 0, row: 0, block: 'A:90' }] });
    expect(again).not.toHaveProperty('between');
  });
});
