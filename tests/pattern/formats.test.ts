import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { anyStops } from '../../src/shared/measure/finding.ts';
import { readPatternText, readRecipeText } from '../../src/shared/pattern/load.ts';
import { documentText } from '../../src/shared/pattern/save.ts';
import { PATTERN_FORMAT } from '../../src/shared/pattern/schema.ts';
import { RECIPE_FORMAT } from '../../src/shared/recipe/schema.ts';
import { workOut } from '../../src/shared/workroom/workOut.ts';

// One file as each format wrote it, never changed once it is here: what somebody saved must always open.
const folder = new URL('../fixtures/formats/', import.meta.url);
const text = (name: string) => readFileSync(new URL(name, folder), 'utf8');
const upTo = (newest: number) => Array.from({ length: newest }, (_, i) => i + 1);
const around = { starters: [], beside: text };

describe('files of every format there has been', () => {
  test.each(upTo(PATTERN_FORMAT))('a pattern of format %i opens, fits, and is saved in the newest', (version) => {
    expect(JSON.parse(text(`v${version}.pattern.json`)).version).toBe(version);
    const read = readPatternText(text(`v${version}.pattern.json`), around);
    if (!read.ok) throw new Error(read.findings.map(({ what }) => what).join(' '));
    expect(read.value.version).toBe(PATTERN_FORMAT);
    expect(anyStops(workOut(read.value).findings)).toBe(false);
    expect(readPatternText(documentText(read.value), { ...around, beside: () => null })).toEqual(read);
  });

  test.each(upTo(RECIPE_FORMAT))('a recipe of format %i opens and is saved in the newest', (version) => {
    const read = readRecipeText(text(`v${version}.recipe.json`));
    if (!read.ok) throw new Error(read.findings.map(({ what }) => what).join(' '));
    expect(read.value.version).toBe(RECIPE_FORMAT);
    expect(readRecipeText(documentText(read.value))).toEqual(read);
  });

  test('nothing of what format 1 says is lost', () => {
    const read = readPatternText(text('v1.pattern.json'), around);
    if (!read.ok) throw new Error('not read');
    const { recipes, ...rest } = read.value;
    const { $schema: _schema, recipes: _recipes, ...written } = JSON.parse(text('v1.pattern.json'));
    expect(rest).toMatchObject(written);
    expect(recipes.map(({ id }) => id)).toEqual(['gull', 'knot']);
    expect(read.value.house).toEqual({ ...written.house });
  });
});
