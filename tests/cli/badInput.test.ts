import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { DEMO, folderForTests, run, starterFile } from './run.ts';

const folder = folderForTests();
const out = join(folder, 'out');
const demoText = readFileSync(DEMO, 'utf8');

// biome-ignore lint/suspicious/noExplicitAny: what is written here is wrong on purpose
type Loose = any;

function file(name: string, content: string | Uint8Array): string {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
}

/** The demo's file with something changed in it. */
function changed(name: string, change: (pattern: Loose) => void): string {
  const pattern: Loose = JSON.parse(demoText);
  change(pattern);
  return file(name, JSON.stringify(pattern, null, 2));
}

/** The line on which a text first stands in a file. */
function lineWith(path: string, text: string): number {
  return (
    readFileSync(path, 'utf8')
      .split('\n')
      .findIndex((line) => line.includes(text)) + 1
  );
}

const torn = demoText.slice(0, 700);
const nested = (open: string, close: string) => `${open.repeat(10_000)}1${close.repeat(10_000)}`;

/** The file, and what the one message says after its name. */
const refused: readonly (readonly [what: string, path: () => string, words: RegExp])[] = [
  ['a missing file', () => join(folder, 'nowhere.pattern.json'), /” cannot be read: there is no such file\.$/],
  ['a folder', () => folder, /” is a folder, not a file\.$/],
  ['a device', () => '/dev/zero', /” is not a file that can be read whole\.$/],
  ['an empty file', () => file('empty', ''), /: The file is empty\.$/],
  ['a torn file', () => file('torn', torn), /: This is not JSON: it stops making sense at line \d+, letter \d+\.$/],
  ['no text', () => file('utf16', Buffer.from('\ufeff{}', 'utf16le')), /” is not text in UTF-8\. Save it as UTF-8/],
  ['fifty megabytes', () => file('huge', Buffer.alloc(50_000_000, '0 ')), /” has 50 MB; a pattern or recipe has 32 MB/],
  ['lists 10,000 deep', () => file('lists', nested('[', ']')), /: This is no file of ours: .* more than 40 deep/],
  ['entries 10,000 deep', () => file('deep', nested('{"a":', '}')), /: This is no file of ours: .* more than 40 deep/],
  ['a recipe', () => starterFile('paw'), /, line 2: This is not a pattern: it says it is “piecewright-recipe”/],
  [
    'a newer format',
    () => changed('newer', (p) => Object.assign(p, { version: 9 })),
    /, line 3: This pattern was saved by a newer Piecewright .* Update Piecewright/,
  ],
  [
    'no number',
    () => file('nan', demoText.replace('"across": 3', '"across": NaN')),
    /: This is not JSON: it stops making sense at line \d+/,
  ],
  [
    'a number beyond all numbers',
    () => file('infinite', demoText.replace('"across": 3', '"across": 1e999')),
    /: sizes\[0\]\.across must be a number\.$/,
  ],
  [
    'a size of no columns',
    () => changed('zero', (p) => Object.assign(p.sizes[0], { across: 0 })),
    /: sizes\[0\]\.across must be at least 1\.$/,
  ],
  [
    'a million blocks',
    () => changed('million', (p) => Object.assign(p.sizes[1], { across: 1000, down: 1000 })),
    /: sizes\[1\]\.across must be at most 200\.\n.*: sizes\[1\]\.down must be at most 200\.$/,
  ],
  [
    'a border of less than nothing',
    () => changed('border', (p) => Object.assign(p.borders[1], { width: -1 })),
    /: borders\[1\]\.width must be more than 0\.$/,
  ],
  [
    'a recipe that is not beside it',
    () => changed('beside', (p) => Object.assign(p, { recipes: [{ file: 'gone.recipe.json' }] })),
    /: There is no file “gone\.recipe\.json” beside this pattern\. Put the recipe file/,
  ],
];

describe('a file that cannot be used gets one message that names it, and nothing is written', () => {
  test.each(refused)('%s', async (_what, path, words) => {
    const named = path();
    for (const args of [['fit'], ['cut'], ['publish', '--out', out]]) {
      const ran = await run(...args, named);
      expect(ran).toMatchObject({ code: 2, said: '' });
      expect(ran.complained).toMatch(words);
      expect(ran.complained).toContain(basename(named));
    }
    expect(existsSync(out)).toBe(false);
  });

  test('the line of the place is told', async () => {
    const path = changed('placed', (p) => Object.assign(p.sizes[2], { down: 4.5 }));
    const { complained } = await run('fit', path);
    expect(complained).toContain(`placed, line ${lineWith(path, '"down": 4.5')}: sizes[2].down must be a whole number`);
  });

  test('a name of a recipe does not follow a link round in a circle', async () => {
    symlinkSync(join(folder, 'round'), join(folder, 'round'));
    expect(await run('fit', join(folder, 'round'))).toMatchObject({ code: 2, said: '' });
  });
});

/** Consistent files that cannot be sewn: findings, exit 1. */
const impossible: readonly (readonly [what: string, change: (pattern: Loose) => void, words: RegExp])[] = [
  ['a gap', (p) => p.recipes[0].body.layout.splice(0, 1, 'F G'), /Row 1 of the layout leaves a gap/],
  ['an overlap', (p) => Object.assign(p.recipes[0].body.key.W.corners[0], { size: 4 }), /corners .* overlap/],
  ['too many blocks', (p) => Object.assign(p.sizes[0], { across: 200, down: 200 }), /Cot would have 40,000 blocks/],
  ['a border of no pattern', (p) => Object.assign(p.sizes[0].borders, { wharf: 2 }), /border “wharf”/],
  ['a recipe in itself', (p) => Object.assign(p.recipes[2].body.key, { O: { recipe: 'slip' } }), /holds itself/],
  [
    'units off the ruler',
    (p) => Object.assign(p.sizes[1], { block: 9.7 }),
    /too short for the part it is sewn to in Lap/,
  ],
];

describe('a pattern that cannot be sewn is told of, and not written', () => {
  test.each(impossible)('%s', async (what, change, words) => {
    const path = changed(what.replaceAll(' ', '-'), change);
    const fit = await run('fit', path);
    expect(fit.code).toBe(1);
    expect(fit.said).toMatch(words);
    const published = await run('publish', path, '--out', out);
    expect(published).toMatchObject({ code: 1, said: '' });
    expect(published.complained).toMatch(words);
    expect(published.complained).toMatch(/Nothing was written\.$/);
    expect(existsSync(out)).toBe(false);
  });
});

describe('a byte order mark', () => {
  test('says nothing, and lines are counted the same', async () => {
    const path = file('marked', `\ufeff${demoText}`);
    expect(await run('fit', path)).toEqual(await run('fit', DEMO));
    const off = file('marked-off', `\ufeff${demoText.replace('"across": 3', '"across": 0')}`);
    expect((await run('fit', off)).complained).toContain(`marked-off, line ${lineWith(off, '"across": 0')}:`);
  });
});

describe('a folder that cannot be written to', () => {
  test('is refused before anything is worked out when it is a file', async () => {
    const ran = await run('publish', DEMO, '--out', DEMO);
    expect(ran).toMatchObject({ code: 2, said: '' });
    expect(ran.complained).toContain('is a file, so nothing can be put into it');
  });

  test('is refused when it cannot be made, and nothing is left of it', async () => {
    const before = readdirSync(folder);
    const ran = await run('publish', DEMO, '--out', join(DEMO, 'below', 'a', 'file'));
    expect(ran).toMatchObject({ code: 2, said: '' });
    expect(ran.complained).toContain('cannot be made, so nothing was written');
    expect(readdirSync(folder)).toEqual(before);
  });

  // Under /proc the system answers that there is no such folder, however often it is asked to make one.
  test.runIf(existsSync('/proc/self'))('is refused where no folder can ever be made', async () => {
    const ran = await run('publish', DEMO, '--out', '/proc/piecewright/out', '--paper', 'a4');
    expect(ran).toMatchObject({ code: 2, said: '' });
    expect(ran.complained).toContain('cannot be made, so nothing was written');
  });

  test('keeps what was there when one of the files has no place', async () => {
    const full = join(folder, 'taken');
    mkdirSync(join(full, 'harbour-lights-edition-1-cutting.csv', 'in-the-way'), { recursive: true });
    const ran = await run('publish', DEMO, '--out', full, '--paper', 'a4');
    expect(ran).toMatchObject({ code: 2, said: '' });
    expect(readdirSync(full)).toEqual(['harbour-lights-edition-1-cutting.csv']);
  });
});

describe('usage', () => {
  test.each([
    [['fit']],
    [['fit', DEMO, '--wide']],
    [['publish', DEMO]],
    [['publish', DEMO, '--out', out, '--paper', 'foolscap']],
    [['publish', DEMO, '--out', out, '--size', 'Giant']],
    [['mend', DEMO]],
    [[]],
  ])('%j ends with 2 and writes nothing', async (args) => {
    const ran = await run(...args);
    expect(ran).toMatchObject({ code: 2, said: '' });
    expect(ran.complained).not.toBe('');
    expect(existsSync(out)).toBe(false);
  });

  test('help is no failure', async () => {
    for (const args of [['--help'], ['publish', '--help']]) expect(await run(...args)).toMatchObject({ code: 0 });
  });

  test('the program itself ends with these codes', () => {
    const program = join(import.meta.dirname, '../../src/main/cli/index.ts');
    const code = (...args: string[]) => {
      try {
        execFileSync(process.execPath, [program, ...args], { stdio: 'pipe' });
        return 0;
      } catch (error) {
        return (error as { status: number }).status;
      }
    };
    expect(code('fit', DEMO)).toBe(0);
    expect(code('fit', join(folder, 'units-off-the-ruler'))).toBe(1);
    expect(code('fit', folder)).toBe(2);
  });
});
