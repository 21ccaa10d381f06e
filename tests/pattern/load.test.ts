import { describe, expect, test } from 'vitest';
import { kindOfText, readPatternText, readRecipeText } from '../../src/shared/pattern/load.ts';
import { migrate } from '../../src/shared/pattern/migrations/index.ts';
import { ALONE, type Surroundings } from '../../src/shared/pattern/recipes.ts';
import { documentText } from '../../src/shared/pattern/save.ts';
import { demoPattern, starter, starterRecipes } from '../helpers/starters.ts';

const around: Surroundings = { starters: starterRecipes(), beside: () => null };
const demo = demoPattern();
const demoText = (change: (document: Record<string, unknown>) => void = () => {}): string => {
  const document = JSON.parse(documentText({ ...demo, recipes: demo.recipes.slice(0, 3) })) as Record<string, unknown>;
  change(document);
  return JSON.stringify(document);
};

/** "path: what" of everything that is wrong with a pattern's text. */
function wrongWith(text: string, surroundings = around): readonly string[] {
  const read = readPatternText(text, surroundings);
  return read.ok ? [] : read.findings.map(({ where, what }) => `${where.path}: ${what}`);
}

describe('a pattern file', () => {
  test('carries every recipe it needs once it is read, and no starter that it does not need', () => {
    const read = readPatternText(demoText(), around);
    if (!read.ok) throw new Error('the demo is not read');
    expect(read.value.recipes.map(({ id }) => id)).toEqual(['lantern', 'mooring', 'slip', 'pinwheel']);
  });

  test('comes back the same from what was saved, with nothing around it', () => {
    const read = readPatternText(documentText(demo), ALONE);
    expect(read).toEqual({ ok: true, value: demo });
  });

  test('may name a recipe file that lies beside it', () => {
    const text = demoText((document) => {
      document.recipes = [{ file: 'lantern.recipe.json' }, ...(document.recipes as unknown[]).slice(1)];
    });
    const beside = (name: string) => (name === 'lantern.recipe.json' ? documentText(demo.recipes[0] as never) : null);
    const read = readPatternText(text, { ...around, beside });
    expect(read.ok && read.value.recipes[0]).toEqual(demo.recipes[0]);
    expect(wrongWith(text)[0]).toBe('recipes[0].file: There is no file “lantern.recipe.json” beside this pattern.');
  });

  test('may not reach for files elsewhere', () => {
    const text = demoText((document) => {
      document.recipes = [{ file: '../elsewhere.recipe.json' }];
    });
    expect(wrongWith(text, { ...around, beside: () => documentText(starter('paw')) })[0]).toMatch(
      /no file “..\/elsewhere/,
    );
  });
});

describe('a file that is not a pattern is refused in one sentence with its place', () => {
  test.each([
    ['empty', '', ': The file is empty.'],
    ['torn', '{"format": "piecewright-pattern",\n "version": ', /^: This is not JSON/],
    ['no entry', '[]', ': This is not a pattern: it must be one entry in { }.'],
    ['of a drawing', '<svg xmlns="http://www.w3.org/2000/svg"/>', /^: This is neither a pattern nor a recipe/],
    [
      'of no format',
      '{}',
      'format: This is not a pattern: nothing in it says what it is. Ours begin with “format”: “piecewright-pattern”.',
    ],
    [
      'another format',
      '{"format":"something-else"}',
      'format: This is not a pattern: it says it is “something-else”, not “piecewright-pattern”.',
    ],
    ['of no version', '{"format":"piecewright-pattern"}', 'version: The version must be a whole number from 1.'],
  ])('%s', (_, text, expected) => {
    const [first] = wrongWith(text);
    if (typeof expected === 'string') expect(first).toBe(expected);
    else expect(first).toMatch(expected);
  });

  test('a torn file names the line at which it stops making sense', () => {
    expect(wrongWith('{\n  "format": piecewright\n}')[0]).toMatch(/at line 2, letter 1\d\./);
  });

  test('a newer format is refused with advice and told apart', () => {
    const read = readPatternText('{"format":"piecewright-pattern","version":2}', around);
    expect(read).toMatchObject({ ok: false, newer: true });
    if (read.ok) throw new Error('read');
    expect(read.findings[0]?.what).toMatch(/newer Piecewright \(format 2; this one reads up to 1\)/);
    expect(read.findings[0]?.mend).toMatch(/Update Piecewright/);
  });
});

describe('a pattern that breaks its schema is told where', () => {
  const sizes = (document: Record<string, unknown>) => document.sizes as Record<string, unknown>[];
  test.each<[string, (document: Record<string, unknown>) => void, string]>([
    [
      'a title on two lines',
      (d) => Object.assign(d, { title: 'Harbour\nLights' }),
      'title: title cannot be read: keep it on one line.',
    ],
    ['a title left out', (d) => delete d.title, 'title: title is missing: it must be words in quotes.'],
    [
      'no columns',
      (d) => Object.assign(sizes(d)[1] as object, { across: 0 }),
      'sizes[1].across: sizes[1].across must be at least 1.',
    ],
    [
      'a million blocks',
      (d) => Object.assign(sizes(d)[1] as object, { across: 1_000_000 }),
      'sizes[1].across: sizes[1].across must be at most 200.',
    ],
    [
      'words for a number',
      (d) => Object.assign(sizes(d)[0] as object, { block: 'nine' }),
      'sizes[0].block: sizes[0].block must be a number.',
    ],
    [
      'a block of no size',
      (d) => Object.assign(sizes(d)[0] as object, { block: 0 }),
      'sizes[0].block: sizes[0].block must be more than 0.',
    ],
    [
      'an unknown entry',
      (d) => Object.assign(sizes(d)[0] as object, { drop: 12 }),
      'sizes[0]: sizes[0] has “drop”, which does not belong there.',
    ],
    [
      'a colour in words',
      (d) => Object.assign((d.fabrics as object[])[0] as object, { colour: 'blue' }),
      'fabrics[0].colour: fabrics[0].colour cannot be read: write the colour as #rrggbb.',
    ],
    [
      'a date that is none',
      (d) => Object.assign(d.edition as object, { date: 'May' }),
      'edition.date: edition.date must be a date such as 2026-05-01.',
    ],
    ['no sizes', (d) => Object.assign(d, { sizes: [] }), 'sizes: sizes must not be empty.'],
  ])('%s', (_, change, expected) => {
    expect(wrongWith(demoText(change))[0]).toBe(expected);
  });

  test('a cell of a recipe that names an unknown role form says what the nearest form wants', () => {
    const recipe = JSON.parse(documentText(starter('pinwheel'))) as { body: { key: Record<string, unknown> } };
    recipe.body.key.H = { unit: 'hst', roles: ['blades'] };
    const read = readRecipeText(JSON.stringify(recipe));
    if (read.ok) throw new Error('read');
    expect(read.findings[0]?.where.path).toBe('body.key.H.roles');
  });
});

test('old formats are brought up a step at a time', () => {
  const steps = [
    { from: 1, up: (document: object) => ({ ...document, first: true }) },
    { from: 2, up: (document: object) => ({ ...document, second: 'first' in document }) },
  ];
  expect(migrate({ version: 1 }, steps, 3)).toEqual({ version: 3, first: true, second: true });
  expect(() => migrate({ version: 1 }, [], 2)).toThrow(/No step from format 1 to 2/);
});

test('a file says which kind it is', () => {
  expect(kindOfText(documentText(demo))).toBe('pattern');
  expect(kindOfText(documentText(starter('paw')))).toBe('recipe');
  expect(kindOfText('soup')).toBeNull();
});
