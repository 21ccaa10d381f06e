import { describe, expect, test } from 'vitest';
import { explain } from '../../src/shared/measure/traced.ts';
import { cutsForOne, oneBlock } from '../../src/shared/workroom/oneBlock.ts';
import { workOut } from '../../src/shared/workroom/workOut.ts';
import { demoPattern } from '../helpers/starters.ts';

const worked = workOut(demoPattern());
const lantern = worked.blocks[0] as (typeof worked.blocks)[number];

describe('one block by itself', () => {
  const one = oneBlock(lantern, worked.pattern, 9);

  test('is what one of a size’s blocks is', () => {
    const cot = worked.sizes[0]?.blocks.find(({ id }) => id === lantern.id);
    expect(worked.sizes[0]?.quilt.block.width).toBe(9);
    expect(one.units.map(({ plan }) => plan.cuts)).toEqual(cot?.units.map(({ plan }) => plan.cuts));
    expect(one.count).toBe(1);
  });

  // A star of four geese four at a time with a middle: common practice, 1 large and 4 small squares make the four geese
  // (large = width + 1¼, small = height + ⅞), the middle is cut whole with four corner squares.
  test('has a cut list in which equal pieces stand together', () => {
    const cuts = cutsForOne(one, lantern.fabricOf);
    const line = (fabric: string, width: number) =>
      cuts.find(({ fabric: of, cut }) => of === fabric && cut.width.value === width && cut.stripSet === undefined)
        ?.count;
    expect(line('foam', 5.75)?.value).toBe(1);
    expect(line('deep', 3.125)?.value).toBe(4);
    expect(line('lamp', 5)?.value).toBe(1);
    expect(new Set(cuts.map(({ fabric }) => fabric)).size).toBe(4);
  });

  test('says why there are so many of a piece', () => {
    const [first] = cutsForOne(one, lantern.fabricOf);
    expect(first === undefined ? '' : explain(first.count)).toContain('for a batch');
  });
});
