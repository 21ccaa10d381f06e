import { describe, expect, test } from 'vitest';
import { buildDrawing } from '../../src/shared/drawing/build.ts';
import { checkDrawing } from '../../src/shared/drawing/check.ts';
import { pieceDrawing } from '../../src/shared/piecing/find/pieceDrawing.ts';
import { type Floorplan, floorplans, isSlicing } from './floorplans.ts';

/**
 * All ways to dissect a rectangle into n rooms, and those straight full seams alone can sew. Source: Yao, Chen, Cheng,
 * Graham, "Floorplan representations: complexity and connections", ACM TODAES 8(1), 2003; OEIS A001181 and A006318.
 */
const BAXTER = [1, 2, 6, 22, 92, 422];
const SCHROEDER = [1, 2, 6, 22, 90, 394];

function drawn({ width, height, rooms }: Floorplan) {
  return buildDrawing(width, height, rooms);
}

describe.each(BAXTER.map((all, i) => [i + 1, all, SCHROEDER[i] as number] as const))(
  'a rectangle divided into %i rooms',
  (rooms, all, slicing) => {
    const plans = floorplans(rooms);

    test(`can be divided in ${all} ways, each without a gap`, () => {
      expect(plans).toHaveLength(all);
      for (const plan of plans) expect(checkDrawing(drawn(plan), 'body')).toEqual([]);
    });

    test(`is sewn by full seams alone in exactly ${slicing} of them`, () => {
      const full = plans.filter((plan) => {
        const { census } = pieceDrawing(drawn(plan));
        return census.full === rooms - 1 && census.partial === 0;
      });
      expect(full).toHaveLength(slicing);
      expect(full).toEqual(plans.filter(isSlicing));
    });

    test('takes partial seams and nothing harder in all the others, and no unit by template', () => {
      for (const plan of plans.filter((one) => !isSlicing(one))) {
        const { census, units, findings } = pieceDrawing(drawn(plan));
        expect(census).toEqual({ full: rooms - 2, partial: 1, setIn: 0, curved: 0 });
        expect(units.some(({ kind }) => kind === 'pieced')).toBe(false);
        expect(findings.map(({ what }) => what)).toEqual([expect.stringMatching(/^One seam is a partial seam/)]);
      }
    });
  },
);
