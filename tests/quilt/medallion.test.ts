import { describe, expect, test } from 'vitest';
import { addRound, addSpacer, setMedallion } from '../../src/shared/pattern/edits/index.ts';
import type { Pattern } from '../../src/shared/pattern/schema.ts';
import { closingsOf } from '../../src/shared/quilt/find/closingsOf.ts';
import { workOut } from '../../src/shared/workroom/workOut.ts';
import { testPattern } from '../helpers/fixtures.ts';

const card = testPattern('compass-card');

describe('a medallion: a centre with rounds of borders and blocks', () => {
  // By hand, Wall: 12; with 2 all round 16, four pinwheels of 4 and one in each corner: 24; with 3 it is 30, five
  // hourglasses of 6: 42; with 4 it is 50. Sofa: 24, 28, seven pinwheels: 36, 42, seven hourglasses: 54, 62.
  test('closes round after round in every size', () => {
    const { sizes, findings } = workOut(card);
    expect(findings.filter(({ level }) => level !== 'note')).toEqual([]);
    expect(sizes.map(({ quilt }) => quilt.finished.width.value)).toEqual([24, 50, 62]);
    expect(sizes.map(({ quilt }) => quilt.counts)).toEqual([
      { A: 1, B: 4 * 4 + 4 },
      { A: 1, B: 4 * 4 + 4, C: 4 * 5 },
      { A: 1, B: 4 * 7 + 4, C: 4 * 7 },
    ]);
  });

  test('is sewn from the middle outwards', () => {
    const [cushion] = workOut(card).sizes;
    const root = cushion?.quilt.root;
    expect(root?.kind === 'rounds' && root.core.kind).toBe('block');
    expect(root?.kind === 'rounds' && root.logs.map(({ side }) => side)).toEqual([
      ...['left', 'right', 'top', 'bottom'],
      ...['left', 'right', 'top', 'bottom'],
    ]);
  });

  test('is begun with one block, and a round that does not close is closed with strips inside it', () => {
    const begun = setMedallion.apply(testPattern('anchorage'), { block: 'A' });
    expect(begun.setting).toEqual({ kind: 'straight', motif: ['A'], single: [] });
    expect(begun.sizes.map(({ across, down }) => [across, down])).toEqual([
      [1, 1],
      [1, 1],
    ]);
    const bare: Pattern = {
      ...begun,
      borders: [],
      blocks: begun.blocks.map(({ places: _, ...block }) => block),
      sizes: begun.sizes.slice(0, 1).map((size) => ({ ...size, block: 12 })),
    };
    // Pinwheels of 5 inches do not go into 12: strips of 1½ make it 15.
    const round = addRound.apply(bare, { name: 'Round', units: 'B', corner: 'B', fabric: 'sand', width: 5 });
    const open = workOut(round);
    expect(open.findings.some(({ level, where }) => level === 'stops' && where.path === 'borders[0]')).toBe(true);
    const quilt = open.sizes[0]?.quilt;
    if (quilt === undefined) throw new Error('it is laid out');
    const [best] = closingsOf(quilt, 'round', round.house)?.spacers ?? [];
    expect(best).toMatchObject({ width: 5, sides: 1.5, ends: 1.5, across: 3, down: 3 });
    const closed = addSpacer.apply(round, {
      border: 'round',
      fabric: 'lamp',
      widths: { cot: { sides: 1.5, ends: 1.5 } },
    });
    const shut = workOut(closed);
    expect(shut.findings.filter(({ level }) => level === 'stops')).toEqual([]);
    expect(shut.sizes[0]?.quilt.finished.width.value).toBe(25);
  });
});
