import { setSizeBlock } from '../../src/shared/pattern/edits/index.ts';
import type { Pattern } from '../../src/shared/pattern/schema.ts';
import { workOut } from '../../src/shared/workroom/workOut.ts';
import { inSizes, onPoint, shapeOf, shapes } from './growing.ts';
import { median, type Row } from './row.ts';

/** Every edit makes the blocks of every size an inch wider or narrower again: no number of the round before is right. */
function timeToWorkOut(pattern: Pattern): Promise<number> {
  let round = 0;
  return median(() => {
    round += 1;
    const wide = 9 + (round % 2);
    return workOut(pattern.sizes.reduce((now, { id }) => setSizeBlock.apply(now, { size: id, block: wide }), pattern));
  });
}

export const rows: readonly Row[] = [
  {
    what: 'one edit → every derived number of a 5-size pattern, 16,000 patches in the largest',
    budget: 100,
    measure: () => timeToWorkOut(inSizes([...shapes, shapeOf(16_000)])),
  },
  {
    what: 'growth from 1,600 to 16,000 patches',
    budget: 12,
    unit: '×',
    measure: async () => {
      const small = await timeToWorkOut(inSizes([shapeOf(1_600)]));
      return (await timeToWorkOut(inSizes([shapeOf(16_000)]))) / small;
    },
  },
  {
    what: 'growth from 1,600 to 16,000 patches, on point',
    budget: 12,
    unit: '×',
    measure: async () => {
      const small = await timeToWorkOut(onPoint(inSizes([shapeOf(1_600, onPoint)])));
      return (await timeToWorkOut(onPoint(inSizes([shapeOf(16_000, onPoint)])))) / small;
    },
  },
];
