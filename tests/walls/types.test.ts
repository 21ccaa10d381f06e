import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { makeTree, project } from './tree.ts';

/** What the compiler says of one line written in one room of the house. */
function saidOf(room: string, line: string): { said: string; remove: () => void } {
  const config = { extends: join(project, `src/${room}/tsconfig.json`), include: ['.'] };
  const { folder, remove } = makeTree({
    'tsconfig.json': JSON.stringify(config),
    'sample.ts': `${line}\nexport {};\n`,
  });
  const { stdout } = spawnSync(process.execPath, [join(project, 'node_modules/typescript/bin/tsc'), '-p', folder], {
    encoding: 'utf8',
  });
  return { said: stdout, remove };
}

describe('each room knows only its own world', () => {
  const trees: (() => void)[] = [];
  afterAll(() => {
    for (const remove of trees) remove();
  });
  const compile = (room: string, line: string) => {
    const { said, remove } = saidOf(room, line);
    trees.push(remove);
    return said;
  };

  it.each([
    ['shared', 'document.title', 'document'],
    ['shared', 'process.env', 'process'],
    ['shared', 'setTimeout(() => {}, 1)', 'setTimeout'],
    ['main', 'document.title', 'document'],
    ['renderer', 'process.env', 'process'],
    ['renderer', 'Buffer.from([])', 'Buffer'],
  ])('%s refuses %s', (room, line, name) => {
    expect(compile(room, line)).toContain(`Cannot find name '${name}'`);
  });

  it.each([
    ['shared', 'structuredClone'],
    ['shared', 'console'],
  ])('%s refuses %s', (room, line) => {
    expect(compile(room, line)).toContain(`Cannot find name '${line}'`);
  });

  it.each([
    ['shared', 'Math.sqrt(2)'],
    ['main', 'process.env.HOME'],
    ['renderer', 'document.title'],
  ])('%s accepts %s', (room, line) => {
    expect(compile(room, line)).toBe('');
  });

  it.each([
    ['a parameter property', 'export class A { constructor(readonly b: number) {} }', 'erasableSyntaxOnly'],
    ['an enum', 'export enum A { B }', 'erasableSyntaxOnly'],
    ['an unchecked index', 'export const a: number = ([1] as number[])[0];', "'number | undefined'"],
  ])('%s is refused', (_what, line, said) => {
    expect(compile('shared', line)).toContain(said);
  });
});
