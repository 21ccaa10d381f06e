import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ALL_TURNS, afterTurn, type Turn } from '../../src/shared/drawing/turn.ts';
import { blockAt } from '../../src/shared/pattern/motif.ts';
import { motifPlace, reflectTurn } from '../../src/shared/pattern/reflect.ts';
import type { Pattern, Setting } from '../../src/shared/pattern/schema.ts';
import { writeToken } from '../../src/shared/recipe/token.ts';
import { demoPattern } from '../helpers/starters.ts';

const demo = demoPattern();
const turns = ALL_TURNS.map((turn) => writeToken({ name: 'A', turn }));
const entry = fc.constantFrom(...turns, 'B', 'B:90');
const motif = fc
  .tuple(fc.integer({ min: 1, max: 4 }), fc.integer({ min: 1, max: 4 }))
  .chain(([columns, rows]) =>
    fc.array(fc.array(entry, { minLength: columns, maxLength: columns }), { minLength: rows, maxLength: rows }),
  )
  .map((rows) => rows.map((row) => row.join(' ')));
const reflect = fc.constantFrom<Setting['reflect']>(undefined, 'across', 'down', 'both');
const reflected = fc.constantFrom<Setting['reflected']>(undefined, 'mirrored', 'falling', 'rising');

/** Every block of a quilt of so many blocks, as text. */
function laid(setting: Setting, across: number, down: number): readonly (readonly string[])[] {
  const sizes: Pattern['sizes'] = [{ id: 'only', name: 'Only', across, down, block: 8, borders: {} }];
  const at = blockAt({ setting, sizes });
  return Array.from({ length: down }, (_, row) =>
    Array.from({ length: across }, (__, column) => {
      const token = at('only', column, row);
      return token === null ? '' : writeToken(token);
    }),
  );
}

function settingOf(rows: string[], how: Partial<Setting>): Setting {
  const { reflect: _one, reflected: _two, ...base } = demo.setting;
  const given = Object.fromEntries(Object.entries(how).filter(([, value]) => value !== undefined));
  return { ...base, motif: rows, single: [], ...given };
}

describe('a motif in quilts of any size', () => {
  test('growing keeps every smaller quilt inside: in the corner, or in the middle where the motif is reflected', () => {
    const many = fc.integer({ min: 1, max: 9 });
    const more = fc.integer({ min: 0, max: 3 });
    fc.assert(
      fc.property(motif, reflect, reflected, many, many, more, more, (rows, about, as, across, down, wider, higher) => {
        const setting = settingOf(rows, { reflect: about, reflected: as });
        const left = about === 'across' || about === 'both' ? wider : 0;
        const top = about === 'down' || about === 'both' ? higher : 0;
        const small = laid(setting, across, down);
        const large = laid(setting, across + wider + left, down + higher + top);
        const inside = large.slice(top, top + down).map((row) => row.slice(left, left + across));
        expect(inside).toEqual(small);
      }),
    );
  });

  test('a motif of one block, reflected both ways, turns a blade into four', () => {
    const four = laid(settingOf(['A'], { reflect: 'both' }), 2, 2);
    expect(four).toEqual([
      ['A:180', 'A:m180'],
      ['A:m', 'A'],
    ]);
  });

  test('blocks alike about a diagonal are reflected without a mirrored block', () => {
    for (const as of ['falling', 'rising'] as const) {
      const all = laid(settingOf(['A A:90', 'A:180 A'], { reflect: 'both', reflected: as }), 6, 8).flat();
      expect(all.filter((text) => text.includes('m'))).toEqual([]);
    }
  });
});

describe('a reflected block that is only turned', () => {
  // A block alike about a diagonal is the same after it is mirrored about it.
  const alike: Readonly<Record<'falling' | 'rising', Turn>> = {
    falling: { quarters: 3, mirrored: true },
    rising: { quarters: 1, mirrored: true },
  };

  test.each(['falling', 'rising'] as const)('looks as the mirrored one does, alike about its %s diagonal', (as) => {
    const places = [
      { column: 0, row: 0, across: true, down: false },
      { column: 0, row: 0, across: false, down: true },
      { column: 0, row: 0, across: true, down: true },
    ];
    for (const place of places) {
      for (const turn of ALL_TURNS) {
        const mirrored = reflectTurn(turn, place, 'mirrored');
        const turned = reflectTurn(turn, place, as);
        expect(turned.mirrored && !mirrored.mirrored).toBe(false);
        const looks = [mirrored, afterTurn(alike[as], mirrored)];
        expect(looks).toContainEqual(turned);
      }
    }
  });
});

test('the middle of an odd row of blocks is not reflected', () => {
  expect(motifPlace('across', 2, 0, 5, 1)).toEqual({ column: 0, row: 0, across: false, down: false });
  expect(motifPlace('across', 1, 0, 5, 1)).toEqual({ column: 1, row: 0, across: true, down: false });
});
