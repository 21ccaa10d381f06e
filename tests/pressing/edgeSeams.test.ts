import { describe, expect, test } from 'vitest';
import { edgeSeams } from '../../src/shared/piecing/edgeSeams.ts';
import { lower } from '../../src/shared/piecing/lower.ts';
import type { Unit } from '../../src/shared/piecing/piecing.ts';
import { meet, noMeetings } from '../../src/shared/pressing/meet.ts';
import type { Press } from '../../src/shared/pressing/pressing.ts';
import { starter, starterBook } from '../helpers/starters.ts';
import { corner, flipped, geese, hst, quarterCircle, squareInSquare } from '../piecing/someUnits.ts';

const NONE = { top: [], right: [], bottom: [], left: [] };

// Places by geometry; that geese are pressed to their skies, flipped corners to their corners and curves away from what is
// round outside is common practice.
describe('where seams run into the edge of a unit, and how they lie there', () => {
  test('a half-square triangle has none: its seam runs into two corners', () => {
    expect(edgeSeams(hst(3))).toEqual(NONE);
  });

  test('the tip of a goose lies to both sides, in the middle of its upper edge', () => {
    expect(edgeSeams(geese(2))).toEqual({ ...NONE, top: [{ at: 2, lies: 'open' }] });
  });

  test('a flipped corner lies towards the corner on both of its edges', () => {
    const unit = flipped(4, 3, [corner('top-left', 1), corner('bottom-right', 2)]);
    expect(edgeSeams(unit)).toEqual({
      top: [{ at: 1, lies: 'back' }],
      left: [{ at: 1, lies: 'back' }],
      right: [{ at: 1, lies: 'forth' }],
      bottom: [{ at: 2, lies: 'forth' }],
    });
  });

  test('the points of a square in a square lie to both sides, halfway along every edge', () => {
    const tip = [{ at: 2, lies: 'open' }];
    expect(edgeSeams(squareInSquare(4))).toEqual({ top: tip, right: tip, bottom: tip, left: tip });
  });

  test('a quarter circle is pressed away from its middle', () => {
    expect(edgeSeams(quarterCircle(3, 2))).toEqual({
      ...NONE,
      top: [{ at: 2, lies: 'forth' }],
      left: [{ at: 2, lies: 'forth' }],
    });
  });

  test('a pieced unit tells the ends of its own seams: a diamond touches the middle of every side', () => {
    const tip = (at: number) => [{ at, lies: 'open' }];
    expect(edgeSeams(only('diamond-in-a-rectangle'))).toEqual({
      top: tip(2),
      right: tip(1),
      bottom: tip(2),
      left: tip(1),
    });
  });

  test('and of the units that stand in it: at a basket’s edge only seams between them end', () => {
    const { top, right, bottom, left } = edgeSeams(only('flower-basket'));
    const all = [...top, ...right, ...bottom, ...left];
    expect(all.length).toBeGreaterThan(0);
    for (const { at } of all) expect(at > 0 && at < 4).toBe(true);
  });
});

function only(id: string): Unit {
  const lowered = lower(starter(id), {}, starterBook(), '');
  const unit = lowered.ok ? lowered.value.units.find(({ kind }) => kind === 'pieced') : undefined;
  if (unit === undefined) throw new Error(id);
  return unit;
}

describe('a point to match', () => {
  test.each([
    ['left', 'right', { nests: 1, stacks: 0, open: 0 }],
    ['left', 'left', { nests: 0, stacks: 1, open: 0 }],
    ['open', 'left', { nests: 0, stacks: 0, open: 1 }],
    ['open', 'open', { nests: 0, stacks: 0, open: 1 }],
  ] as const)('%s against %s', (one: Press, other: Press, counted) => {
    const all = noMeetings();
    meet(
      [
        { at: 1, press: 'right' },
        { at: 2, press: one },
      ],
      [{ at: 2, press: other }],
      (x) => ({ x, y: 0 }),
      all,
    );
    expect(all).toMatchObject(counted);
    expect(all.stacked).toEqual(counted.stacks === 1 ? [{ x: 2, y: 0 }] : []);
  });
});
