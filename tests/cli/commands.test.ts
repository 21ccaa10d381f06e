import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { inchesText, sizeText } from '../../src/shared/measure/fraction.ts';
import { workOut } from '../../src/shared/workroom/workOut.ts';
import { demoPattern } from '../helpers/starters.ts';
import { DEMO, folderForTests, run, runIn, starterFile } from './run.ts';

const folder = folderForTests();
const worked = workOut(demoPattern());

describe('fit', () => {
  test('sets the sizes side by side with true fractions', async () => {
    const { code, said } = await run('fit', DEMO);
    expect(code).toBe(0);
    const line = (start: string) => said.split('\n').find((one) => one.trim().startsWith(start)) ?? '';
    for (const { quilt, points } of worked.sizes) {
      expect(line('Finished')).toContain(sizeText(quilt.finished.width.value, quilt.finished.height.value));
      expect(line('Unfinished top')).toContain(sizeText(quilt.unfinished.width.value, quilt.unfinished.height.value));
      expect(line('Points to match')).toContain(String(points));
    }
    expect(line('Quay border, sides')).toContain('2 of 3″ × 47½″');
    expect(said.endsWith('Fits in all 3 sizes.')).toBe(true);
  });

  test('as JSON every number comes with its sum', async () => {
    const { said } = await run('fit', DEMO, '--json');
    const { fits, sizes, findings } = JSON.parse(said);
    expect({ fits, findings }).toEqual({ fits: true, findings: [] });
    // Four inches of quay border, an inch and a half of rope border on both sides of seven 12-inch blocks.
    expect(sizes[2].finished.width).toMatchObject({ value: 95, unit: 'inch', text: '95″' });
    expect(sizes[2].finished.width.sum).toBe('95″ finished = 87 with rope border + 2 × 4 quay border finished');
  });

  test('a narrow terminal gets the sizes in several tables', async () => {
    const { said } = await runIn(60, 'fit', DEMO);
    const lines = said.split('\n');
    expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(60);
    expect(lines.filter((line) => line.trim().startsWith('Finished'))).toHaveLength(2);
  });

  test('findings name the place, the line and how to mend it', async () => {
    const path = join(folder, 'wide.pattern.json');
    writeFileSync(path, readFileSync(DEMO, 'utf8').replace('"block": 10', '"block": 9.7'));
    const { code, said } = await run('fit', path);
    expect(code).toBe(1);
    expect(said).toMatch(/Does not fit\n {2}In block A .* in Lap\./);
    expect(said).toMatch(/Choose a block size .*\n.*wide\.pattern\.json, line \d+, sizes\[1\]\.block/);
    expect(said.endsWith('Fits in 2 of 3 sizes; not in Lap.')).toBe(true);
  });
});

describe('cut', () => {
  test('says every piece by its letter, every plan with its proof, and the yardage with its sum', async () => {
    const { code, said } = await run('cut', DEMO);
    expect(code).toBe(0);
    const [, ...sizes] = said.split(/\n(?=\w+, [^\n]+ finished\n═)/);
    expect(sizes).toHaveLength(worked.sizes.length);
    worked.sizes.forEach(({ cloth }, i) => {
      const text = sizes[i] ?? '';
      for (const { letter, count } of cloth.pieces)
        expect(text).toMatch(new RegExp(`^ +${letter} +${count.value} `, 'm'));
      for (const { plan } of cloth.needs) {
        expect(text).toContain(`${inchesText(plan.length.value)} of 40″ cloth; ${plan.proven ? 'fewer' : ''}`);
      }
      expect(text).toContain(`Batting: at least ${inchesText(cloth.batting.width.value)}`);
    });
  });

  test('as JSON it is the core’s cloth', async () => {
    const { sizes } = JSON.parse((await run('cut', DEMO, '--json')).said);
    worked.sizes.forEach(({ cloth }, i) => {
      expect(sizes[i].needs.map((need: { yards: { value: number } }) => need.yards.value)).toEqual(
        cloth.needs.map(({ yards }) => yards.value),
      );
      expect(sizes[i].pieces).toHaveLength(cloth.pieces.length);
    });
  });
});

describe('recipe', () => {
  test('tells units with counts, ways of making them, seams and what is cut', async () => {
    const { code, said } = await run('recipe', starterFile('sawtooth-star'));
    expect(code).toBe(0);
    expect(said).toContain('Sawtooth star (sawtooth-star), 8″ × 8″ finished');
    // Quilter's World, June 2024: flying geese 2 × 4 four at a time, 5¼ and 2⅞.
    expect(said).toMatch(/Background +1 +5¼″ square/);
    expect(said).toMatch(/Star points +4 +2⅞″ square/);
    expect(said).toContain('geese-four, or geese-flip');
    expect(said).toMatch(/Down\n +Across: 1 {2}2 {2}1\n/);
  });

  test('takes several files, and a file with a list; each may hold the others', async () => {
    const paw = JSON.parse(readFileSync(starterFile('paw'), 'utf8'));
    const own = { ...paw, id: 'own-paw', name: 'Own paw' };
    const holder = {
      ...paw,
      id: 'holder',
      name: 'Holder',
      body: { kind: 'grid', columns: [1], rows: [1], key: { P: { recipe: 'own-paw' } }, layout: ['P:90'] },
    };
    const list = join(folder, 'list.json');
    writeFileSync(list, JSON.stringify([holder, own]));
    const { code, said } = await run('recipe', list, starterFile('rail'), '--json');
    expect(code).toBe(0);
    const { recipes } = JSON.parse(said);
    expect(recipes.map(({ id }: { id: string }) => id)).toEqual(['holder', 'own-paw', 'rail']);
    expect(recipes[0].block.patches).toBe(recipes[1].block.patches);
  });

  test('says whether a block can be sewn on paper, in which sections, or why not', async () => {
    const { said } = await run('recipe', starterFile('log-cabin'), starterFile('bright-hopes'), '--json');
    const [cabin, hopes] = JSON.parse(said).recipes;
    expect(cabin.block.onPaper.plan.sections).toHaveLength(1);
    expect(hopes.block.onPaper).toMatchObject({ ok: false, why: { kind: 'no-straight-seam' } });
  });

  test('of a list with something wrong the place in the list is told', async () => {
    const paw = JSON.parse(readFileSync(starterFile('paw'), 'utf8'));
    const list = join(folder, 'wrong.json');
    writeFileSync(list, JSON.stringify([paw, { ...paw, finished: 0 }], null, 1));
    const { code, complained } = await run('recipe', list);
    expect(code).toBe(2);
    expect(complained).toMatch(/wrong\.json, line \d+: “Paw”: \[1\]\.finished must be more than 0\.$/);
  });

  // By geometry: an eight-point star has eight set-in corners, a log cabin and a nine-patch only straight seams.
  test('tells the skills a block asks for, and what each way of making a unit costs', async () => {
    const { said } = await run(
      'recipe',
      starterFile('eight-point-star'),
      starterFile('nine-patch'),
      starterFile('shoo-fly'),
      '--json',
    );
    const [star, nine, fly] = JSON.parse(said).recipes;
    expect(star.block.skills).toContain('set-in-seams');
    expect(nine.block.skills).toEqual(['full-seams']);
    // Four half-square triangles two at a time are two squares of each fabric; eight at a time one larger square of each, four to
    // spare.
    const made = fly.block.units.find(({ name }: { name: string }) => name === 'Half-square triangle');
    const prices = [made.method, ...made.others].map(({ id, pieces, spare }) => [id, pieces, spare]);
    expect(prices).toContainEqual(['hst-two', 4, 0]);
    expect(prices).toContainEqual(['hst-eight', 2, 4]);
  });

  test('a recipe that cannot be drawn ends with findings', async () => {
    const paw = JSON.parse(readFileSync(starterFile('paw'), 'utf8'));
    const path = join(folder, 'gap.recipe.json');
    writeFileSync(path, JSON.stringify({ ...paw, body: { ...paw.body, layout: ['C', 'T:m270 P'] } }, null, 1));
    const { code, said } = await run('recipe', path);
    expect(code).toBe(1);
    expect(said).toMatch(/It cannot be drawn[\s\S]*leaves a gap[\s\S]*gap\.recipe\.json, line \d+, body\.layout\[0\]/);
  });

  test('every starter recipe is sound', async () => {
    const starters = readdirSync(join(import.meta.dirname, '../../resources/recipes'));
    const files = starters.map((name) => starterFile(name.replace('.recipe.json', '')));
    expect(await run('recipe', ...files)).toMatchObject({ code: 0, complained: '' });
  });
});

describe('a name that would steer the terminal', () => {
  test('reaches it harmless', async () => {
    mkdirSync(folder, { recursive: true });
    const path = join(folder, 'loud.pattern.json');
    // A title may not hold one at all; a strange entry is named in the message.
    writeFileSync(path, readFileSync(DEMO, 'utf8').replace('"title"', '"red \\u001b[31m": 1, "title"'));
    const { spawnSync } = await import('node:child_process');
    const program = join(import.meta.dirname, '../../src/main/cli/index.ts');
    const { stderr } = spawnSync(process.execPath, [program, 'fit', path], { encoding: 'utf8' });
    expect(stderr).toContain('“red �[31m”');
  });
});
