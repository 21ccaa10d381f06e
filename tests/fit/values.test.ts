import { describe, expect, test } from 'vitest';
import { fitValues, neighboursIn, type ValuedBlock } from '../../src/shared/fit/fitValues.ts';
import { greyOf, lightnessOf } from '../../src/shared/fit/lightness.ts';
import { setFabricColour, setFabricScraps } from '../../src/shared/pattern/edits/index.ts';
import { workOut } from '../../src/shared/workroom/workOut.ts';
import { testPattern } from '../helpers/fixtures.ts';
import { demoPattern } from '../helpers/starters.ts';

describe('lightness', () => {
  // CIE L* from sRGB (IEC 61966-2-1, CIE 1976), as general colour libraries and tables give it (from memory).
  test.each([
    ['#000000', 0],
    ['#ffffff', 100],
    ['#777777', 50.03],
    ['#ff0000', 53.24],
    ['#00ff00', 87.73],
    ['#0000ff', 32.3],
    ['#ffff00', 97.14],
  ])('of %s is %d', (colour, lightness) => {
    expect(lightnessOf(colour)).toBeCloseTo(lightness, 1);
  });

  test('a colour and its grey are equally light', () => {
    for (const colour of ['#9C4A2F', '#27385A', '#C9D6D3', '#010203']) {
      expect(Math.abs(lightnessOf(greyOf(colour)) - lightnessOf(colour))).toBeLessThan(0.5);
      expect(greyOf(colour)).toMatch(/^#(..)\1\1$/);
    }
  });
});

function blocksOf(pattern: ReturnType<typeof demoPattern>): readonly ValuedBlock[] {
  return workOut(pattern).blocks.map(({ id, piecing, fabricOf }) => ({ id, drawing: piecing.drawing, fabricOf }));
}

describe('the fabrics without their colour', () => {
  const lamps = testPattern('six-lamps');

  test('of the demo and the bundle quilt are as they are said to be', () => {
    for (const pattern of [demoPattern(), lamps]) expect(fitValues(pattern, blocksOf(pattern))).toEqual([]);
  });

  test('light and dark that blur are told with their block, to be looked at', () => {
    const pattern = setFabricColour.apply(lamps, { fabric: 'flame', colour: '#dddddd' });
    const findings = fitValues(pattern, blocksOf(pattern));
    expect(findings.map(({ level }) => level)).toEqual(findings.map(() => 'look'));
    expect(findings.map(({ what }) => what)).toEqual([
      expect.stringMatching(/^Flame is said to be dark and reads as light/),
      expect.stringMatching(
        /Sky \(light\).*blur|blur.*Sky|Flame \(dark\) and Sky \(light\) lie side by side in block A and blur/,
      ),
      expect.stringMatching(/Day|day/),
    ]);
  });

  test('neighbours are fabrics that share an edge, least contrast first', () => {
    const pairs = neighboursIn(lamps, blocksOf(lamps));
    expect(pairs.length).toBeGreaterThan(2);
    expect(pairs.map(({ contrast }) => contrast)).toEqual(pairs.map(({ contrast }) => contrast).sort((a, b) => a - b));
  });

  test('every scrap is looked at', () => {
    const scraps = [
      { name: 'Ember', colour: '#7a2f1d' },
      { name: 'Ash', colour: '#e8e3d2' },
    ];
    const pattern = setFabricScraps.apply(lamps, { fabric: 'flame', scraps });
    expect(fitValues(pattern, blocksOf(pattern))[0]?.what).toMatch(
      /^A scrap of Flame is said to be dark and reads as light/,
    );
  });
});
