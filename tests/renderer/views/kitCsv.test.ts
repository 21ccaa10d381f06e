import { describe, expect, it } from 'vitest';
import { kitCsv, kitFileName } from '../../../src/renderer/cloth/kits/kitCsv.ts';
import { kitIn } from '../../../src/shared/workroom/clothWays.ts';
import type { WorkedSize } from '../../../src/shared/workroom/workedOut.ts';
import { workOut } from '../../../src/shared/workroom/workOut.ts';
import { demoPattern } from '../../helpers/starters.ts';

const worked = workOut(demoPattern());
const lap = worked.sizes[1] as WorkedSize;

describe('the kit sheet as a table', () => {
  const lines = kitCsv(kitIn(worked, lap, 12), worked.pattern, 'Lap')
    .trimEnd()
    .split('\r\n');

  it('has a row for every fabric and the backing, the longest cut first, each as long as the head', () => {
    expect(lines).toHaveLength(1 + lap.cloth.needs.length + 1);
    expect(lines[1]).toContain('backing (Lap)');
    // 12 × 5 yards, and 2 inches of squaring up: 60 1/18, up to the next eighth (the house's rule).
    expect(lines[1]).toContain('60⅛ yd');
  });

  it('has a name without anything a file system minds', () => {
    expect(kitFileName(worked.pattern, 'Grand Lit / 2', 3)).toBe('harbour-lights-grand-lit-2-3-kits.csv');
  });
});
