import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { inchesText, sizeText, yardsText } from '../../src/shared/measure/fraction.ts';
import { readPatternText, readRecipeText } from '../../src/shared/pattern/load.ts';
import { METHODS } from '../../src/shared/piecing/methods/index.ts';
import { readDrawnBody } from '../../src/shared/recipe/drawn.ts';
import { drawingBodySchema, roundsBodySchema } from '../../src/shared/recipe/schema.ts';
import type { WorkedSize } from '../../src/shared/workroom/workedOut.ts';
import { workOut } from '../../src/shared/workroom/workOut.ts';
import { run } from '../cli/run.ts';
import { starterRecipes } from '../helpers/starters.ts';

const page = readFileSync(new URL('../../docs/file-format.md', import.meta.url), 'utf8');

/** The files the page tells the reader to save, by the names it gives them. */
const files = new Map(
  [...page.matchAll(/Save this[^`]*`([\w-]+\.(?:recipe|pattern)\.json)`:\n\n```json\n([\s\S]*?)\n```/g)].map(
    ([, name = '', text = '']) => [name, `${text}\n`],
  ),
);

function worked() {
  const beside = (name: string) => files.get(name) ?? null;
  const read = readPatternText(files.get('shingle.pattern.json') ?? '', { starters: [], beside });
  if (!read.ok) throw new Error(read.findings.map(({ what }) => what).join(' '));
  return workOut(read.value);
}

/** The rows of the table of numbers: what is told for each size, by the row's name. */
const told = new Map(
  page
    .slice(page.indexOf('| | Cot | Sofa |'), page.indexOf('Change `"block"'))
    .split('\n')
    .slice(2)
    .map((line) => line.split('|').map((cell) => cell.trim()))
    .filter((cells) => cells.length > 4)
    .map(([, name = '', ...values]) => [name, values.slice(0, 2)]),
);

/** "40 of 2⅞″" for the pieces of a unit in one fabric. */
function pieces({ cloth }: WorkedSize, fabric: string, unit: string): string {
  const line = cloth.pieces.find((one) => one.fabric === fabric && one.use.some((use) => use.unit.startsWith(unit)));
  if (line === undefined) throw new Error(`no ${unit} of ${fabric}`);
  return `${line.count.value} of ${inchesText(line.width.value)}`;
}

function border({ cloth }: WorkedSize, words: string): string {
  const line = cloth.pieces.find(({ use }) => use.some((one) => one.words === words));
  return `${line?.count.value} of ${sizeText(line?.width.value ?? 0, line?.height.value ?? 0)}`;
}

const rows: Readonly<Record<string, (size: WorkedSize) => string>> = {
  finished: ({ quilt }) => sizeText(quilt.finished.width.value, quilt.finished.height.value),
  'half-square triangles': ({ blocks }) => String(blocks[0]?.units.find(({ unit }) => unit.kind === 'hst')?.needed),
  'squares for them, of each fabric': (size) => pieces(size, 'slate', 'hst'),
  'plain squares, Sand': (size) => pieces(size, 'sand', 'plain'),
  'plain squares, Slate': (size) => pieces(size, 'slate', 'plain'),
  'border, sides': (size) => border(size, 'Edge, sides'),
  'border, ends': (size) => border(size, 'Edge, ends'),
  'binding strips': ({ cloth }) => String(cloth.binding.strips.value),
  backing: ({ cloth }) => yardsText(cloth.backing.yards.value),
};

describe('the page about the file formats', () => {
  const folder = mkdtempSync(join(tmpdir(), 'piecewright-doc-'));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  test('its example is also kept among the test patterns', () => {
    expect([...files.keys()]).toEqual(['pebble.recipe.json', 'shingle.pattern.json']);
    for (const [name, text] of files) {
      expect(text).toBe(readFileSync(new URL(`../fixtures/patterns/${name}`, import.meta.url), 'utf8'));
    }
  });

  test('its example gives the numbers it says', () => {
    const { sizes, findings } = worked();
    expect(findings).toEqual([]);
    const made = Object.entries(rows).map(([name, of]) => [name, sizes.map(of)]);
    expect([...told]).toEqual(made);
  });

  test('typed in, the example runs through every command it names', async () => {
    for (const [name, text] of files) writeFileSync(join(folder, name), text);
    const commands = [...page.matchAll(/^npm run -s piecewright -- (.*)$/gm)].map(([, words = '']) => words.split(' '));
    expect(commands.map(([name]) => name)).toEqual(['recipe', 'fit', 'cut', 'publish']);
    for (const words of commands) {
      const placed = words.map((word) => (/\.json$|^printed$/.test(word) ? join(folder, word) : word));
      expect(await run(...placed), words.join(' ')).toMatchObject({ code: 0, complained: '' });
    }
  });

  test('the change it proposes does what it says', async () => {
    const path = join(folder, 'changed.pattern.json');
    writeFileSync(path, (files.get('shingle.pattern.json') ?? '').replace('"block": 6 ', '"block": 6.1 '));
    const { code, said } = await run('fit', path);
    expect(code).toBe(1);
    expect(said).toMatch(/block A[\s\S]*Choose a block size[\s\S]*changed\.pattern\.json, line \d+, sizes\[0\]\.block/);
  });

  test('it names every method and every starter recipe with its roles', () => {
    for (const { id } of METHODS) expect(page).toContain(`\`${id}\``);
    const listed = page.slice(page.indexOf('### Starter recipes'));
    for (const { id, roles } of starterRecipes()) {
      expect(listed).toContain(`| \`${id}\` | ${roles.map((role) => `\`${role.id}\``).join(', ')} |`);
    }
  });

  test('its cells and rounds are what the program reads', () => {
    const cells = [...page.matchAll(/^\| `(\{ "(?:unit|recipe)".*\})` \|/gm)].map(([, text = '']) => JSON.parse(text));
    expect(cells).toHaveLength(14);
    const pebble = JSON.parse(files.get('pebble.recipe.json') ?? '');
    for (const cell of cells) {
      const body = { kind: 'grid', columns: [2], rows: [2], key: { C: cell }, layout: ['C'] };
      expect(readRecipeText(JSON.stringify({ ...pebble, body })).ok, JSON.stringify(cell)).toBe(true);
    }
    const rounds = page.match(/```json\n(\{\n {2}"kind": "rounds"[\s\S]*?)\n```/)?.[1] ?? '';
    expect(roundsBodySchema.safeParse(JSON.parse(rounds)).success).toBe(true);
  });

  test('its drawings are whole blocks, by patches and by cuts', () => {
    const drawings = [...page.matchAll(/```json\n(\{\n {2}"kind": "drawing"[\s\S]*?)\n```/g)].map(
      ([, text = '']) => text,
    );
    expect(drawings).toHaveLength(2);
    for (const text of drawings) {
      const drawing = readDrawnBody(drawingBodySchema.parse(JSON.parse(text)), 'body');
      expect(drawing.ok && drawing.value.patches.length, text).toBe(3);
    }
  });
});
