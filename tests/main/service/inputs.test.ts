import { describe, expect, it } from 'vitest';
import { answer, isCall } from '../../../src/main/service/answer.ts';
import type { Contract } from '../../../src/shared/contract.ts';
import { samplePattern, sampleRecipe } from '../helpers/samples.ts';
import { refusalFrom, serviceOn } from '../helpers/service.ts';

const good = samplePattern();

/** What a careless or hostile window might send, for every call that takes something. */
const NONSENSE: readonly [name: keyof Contract, input: unknown][] = [
  ['openPattern', undefined],
  ['openPattern', 7],
  ['openPattern', '../../etc/passwd'],
  ['openPattern', 'a'.repeat(81)],
  ['openPattern', { toString: 'slack-water' }],
  ['removePattern', ['slack-water']],
  ['savePattern', undefined],
  ['savePattern', { pattern: good }],
  ['savePattern', { pattern: good, revision: 1.5 }],
  ['savePattern', { pattern: good, revision: 'null' }],
  ['savePattern', { pattern: { ...good, extra: true }, revision: null }],
  ['savePattern', { pattern: { ...good, recipes: [{ file: 'beside.recipe.json' }] }, revision: null }],
  ['savePattern', { pattern: { ...good, sizes: [] }, revision: null }],
  ['savePattern', { pattern: { ...good, version: 2 }, revision: null }],
  ['recipes', 'star'],
  ['recipes', { words: 7 }],
  ['recipes', { words: 'a'.repeat(201) }],
  ['recipes', { words: '', atMost: -1 }],
  ['recipes', { words: '', from: Number.NaN }],
  ['openRecipe', ''],
  ['saveRecipe', { ...sampleRecipe(), roles: [] }],
  ['removeRecipe', null],
  ['importFile', { name: 'x.json' }],
  ['saveMattress', { id: 'bunk', name: 'Bunk', width: 0, length: 70 }],
  ['saveMattress', { id: 'bunk', name: '', width: 30, length: 70 }],
  ['removeMattress', 7],
  ['importFile', { name: 'x.json', text: 'a'.repeat(32_000_001) }],
  ['exportPattern', { ...good, extra: true }],
  ['bringPhotograph', { name: 'x.jpg' }],
  ['photograph', 'slack-water'],
  ['photographColour', { id: 'a'.repeat(64), crop: { x: 0, y: 0, width: 0, height: 4 } }],
  ['publish', { pattern: good, paper: 'foolscap', draft: false, plainInk: false }],
  ['publish', { pattern: good, paper: 'a4', draft: 'no', plainInk: false }],
  ['job', ''],
  ['cancel', {}],
  ['result', undefined],
];

describe('an input that is not what the contract says', () => {
  it.each(NONSENSE)('is refused by %s: %j', async (name, input) => {
    const { service, reported } = serviceOn();
    const call = service[name] as (input: unknown) => Promise<unknown>;
    const refusal = await refusalFrom(call(input));
    expect(refusal.kind).toBe('bad-input');
    expect(refusal.findings?.length).toBeGreaterThan(0);
    expect(await service.patterns()).toEqual([]);
    expect(reported).toEqual([]);
  });

  it('names the place', async () => {
    const { service } = serviceOn();
    const wrong = { ...good, borders: [{ ...good.borders[0], width: -3 }] } as typeof good;
    const refusal = await refusalFrom(service.savePattern({ pattern: wrong, revision: null }));
    expect(refusal.findings).toMatchObject([{ where: { path: 'pattern.borders[0].width' } }]);
  });

  it('cannot reach an object’s inner workings', async () => {
    const { service } = serviceOn();
    const parameters = JSON.parse('{"__proto__": {"rounds": 2}}');
    const blocks = [{ ...good.blocks[0], parameters }] as (typeof good)['blocks'];
    await service.savePattern({ pattern: { ...good, blocks }, revision: null }).catch(() => null);
    expect(({} as Record<string, unknown>).rounds).toBeUndefined();
  });
});

describe('a call by its name', () => {
  const report = (error: unknown) => {
    throw error;
  };

  it('is made only when the contract has it', async () => {
    const { service } = serviceOn();
    expect(isCall('patterns')).toBe(true);
    for (const name of ['close', 'constructor', '__proto__', 'toString', '', null, 7, ['patterns']]) {
      expect(isCall(name)).toBe(false);
      expect(await answer(service, name, [], report)).toMatchObject({ refusal: { kind: 'not-found' } });
    }
    expect(await answer(service, 'patterns', [], report)).toEqual({ value: [] });
  });

  it('wants its arguments as a list', async () => {
    const { service } = serviceOn();
    for (const args of [undefined, null, {}, 'x']) {
      expect(await answer(service, 'patterns', args, report)).toMatchObject({ refusal: { kind: 'bad-input' } });
    }
  });

  it('answers null, not nothing, when there is nothing to say', async () => {
    const { service } = serviceOn();
    await service.saveRecipe(sampleRecipe());
    expect(await answer(service, 'removeRecipe', ['mooring'], report)).toEqual({ value: null });
  });

  it('carries a refusal as plain data', async () => {
    const { service } = serviceOn();
    const carried = await answer(service, 'openPattern', ['nowhere'], report);
    expect(structuredClone(carried)).toEqual(JSON.parse(JSON.stringify(carried)));
    expect(carried).toEqual({ refusal: { kind: 'not-found', words: 'There is no pattern “nowhere” here any more.' } });
  });

  it('reports a bug and tells the designer only that there was one', async () => {
    const { service, store } = serviceOn();
    store.close();
    const reported: unknown[] = [];
    const carried = await answer(service, 'patterns', [], (error) => reported.push(error));
    expect(carried).toMatchObject({ refusal: { kind: 'broken' } });
    expect(JSON.stringify(carried)).not.toContain('database');
    expect(reported).toHaveLength(1);
  });

  it.each([
    ['SQLITE_FULL', 'no-room'],
    ['SQLITE_READONLY', 'no-room'],
    ['SQLITE_READONLY_DIRECTORY', 'no-room'],
    ['ENOSPC', 'no-room'],
    ['EROFS', 'no-room'],
    ['SQLITE_BUSY', 'broken'],
    ['SQLITE_CORRUPT_INDEX', 'broken'],
  ])('puts the machine’s %s into words', async (code, kind) => {
    const { service } = serviceOn();
    const failing = { ...service, patterns: () => Promise.reject(Object.assign(new Error('technical'), { code })) };
    const carried = await answer(failing, 'patterns', [], report);
    expect(carried).toMatchObject({ refusal: { kind } });
    expect(JSON.stringify(carried)).not.toContain('technical');
  });
});
