import { describe, expect, it } from 'vitest';
import { pieceRows } from '../../../src/renderer/cloth/pieceRows.ts';
import { setFabricDirection } from '../../../src/shared/pattern/edits/index.ts';
import { workOut } from '../../../src/shared/workroom/workOut.ts';
import { demoPattern } from '../../helpers/starters.ts';

const worked = workOut(demoPattern());
const rows = pieceRows(worked);

describe('the cutting charts of all sizes side by side', () => {
  it('has every letter once, and a line in every size', () => {
    const letters = rows.map(({ letter }) => letter);
    expect(new Set(letters).size).toBe(letters.length);
    for (const row of rows) expect(row.lines).toHaveLength(worked.sizes.length);
  });

  it('has two lines for a letter whose print stands upright and whose pieces lie both ways', () => {
    const upright = workOut(setFabricDirection.apply(demoPattern(), { fabric: 'sand', direction: 'one-way' }));
    const own = pieceRows(upright).filter(({ letter }) => letter === 'H');
    const all = upright.sizes.map(({ cloth }) => cloth.pieces.filter(({ letter }) => letter === 'H').length);
    expect(own.length).toBe(Math.max(...all));
    for (const { cloth, size } of upright.sizes) {
      const shown = pieceRows(upright).flatMap(
        ({ lines }) => lines.find((one) => one.size.size.id === size.id)?.line ?? [],
      );
      expect(new Set(shown)).toEqual(new Set(cloth.pieces));
    }
  });

  it('leaves no piece of any size out', () => {
    for (const { size, cloth } of worked.sizes) {
      const shown = rows.flatMap(({ lines }) => lines.find((one) => one.size.size.id === size.id)?.line ?? []);
      expect(new Set(shown)).toEqual(new Set(cloth.pieces));
    }
  });
});
