import { expect, test } from 'vitest';
import type { Finding } from '../../src/shared/measure/finding.ts';
import type { Pattern } from '../../src/shared/pattern/schema.ts';
import { workOut } from '../../src/shared/workroom/workOut.ts';
import { demoPattern } from '../helpers/starters.ts';

function findingsOf(change: Partial<Pattern>): readonly Finding[] {
  return workOut({ ...demoPattern(), ...change }).findings;
}

test('a single block for a size that is not there is told', () => {
  const { setting } = demoPattern();
  const single = [{ column: 0, row: 0, block: 'A', size: 'giant' }];
  expect(findingsOf({ setting: { ...setting, single } })).toContainEqual({
    level: 'stops',
    what: 'A single block is for the size “giant”, which the pattern has not.',
    where: { path: 'setting.single[0].size' },
  });
});

test('a single block that no size reaches waits in silence', () => {
  const { setting } = demoPattern();
  expect(findingsOf({ setting: { ...setting, single: [{ column: 90, row: 90, block: 'A' }] } })).toEqual([]);
});

test('a fabric for a role that the recipe has not is told, and stops nothing', () => {
  const [first, ...blocks] = demoPattern().blocks;
  if (first === undefined) throw new Error('no block');
  const told = findingsOf({ blocks: [{ ...first, fabrics: { ...first.fabrics, sails: 'foam' } }, ...blocks] });
  expect(told).toMatchObject([{ level: 'note', where: { path: 'blocks[0].fabrics.sails', on: 'A' } }]);
});

test('a block that finishes at nothing stops', () => {
  const [size] = demoPattern().sizes;
  if (size === undefined) throw new Error('no size');
  const told = findingsOf({ sizes: [{ ...size, block: 0.01 }] });
  expect(told.some(({ level, what }) => level === 'stops' && what.includes('would finish at nothing'))).toBe(true);
});
