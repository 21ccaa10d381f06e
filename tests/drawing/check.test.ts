import { describe, expect, test } from 'vitest';
import { buildDrawing } from '../../src/shared/drawing/build.ts';
import { checkDrawing } from '../../src/shared/drawing/check.ts';

function rectangle(x: number, y: number, width: number, height: number) {
  const corners = [
    { x, y },
    { x: x + width, y },
    { x: x + width, y: y + height },
    { x, y: y + height },
  ];
  return { role: 'cloth', corners };
}

const words = (polygons: ReturnType<typeof rectangle>[]) =>
  checkDrawing(buildDrawing(4, 4, polygons), 'body').map((finding) => finding.what);

describe('a drawing', () => {
  test('that covers its block edge to edge is sound, also where one patch meets two', () => {
    expect(words([rectangle(0, 0, 4, 2), rectangle(0, 2, 1, 2), rectangle(1, 2, 3, 2)])).toEqual([]);
  });

  test('with a hole says that there is a gap, and where', () => {
    expect(words([rectangle(0, 0, 4, 2), rectangle(0, 2, 1, 2), rectangle(2, 2, 2, 2)])[0]).toMatch(
      /gap in the block at/,
    );
  });

  test('with two patches on one another says that they overlap', () => {
    expect(words([rectangle(0, 0, 4, 2), rectangle(0, 2, 4, 2), rectangle(0, 0, 4, 2)])[0]).toMatch(/overlap at/);
  });

  test('with a patch that overlaps only in part is not sound', () => {
    expect(words([rectangle(0, 0, 4, 3), rectangle(0, 2, 4, 2)])).not.toEqual([]);
  });

  test('that reaches outside the block says so', () => {
    expect(words([rectangle(0, 0, 4, 2), rectangle(0, 2, 5, 2)])[0]).toMatch(/outside the block at 5 across/);
  });

  test('with a patch of no area names the patch', () => {
    expect(words([rectangle(0, 0, 4, 4), rectangle(1, 1, 2, 0)])).toEqual(['Patch 2 has no area.']);
  });

  test('that leaves a whole side bare is not sound', () => {
    expect(words([rectangle(0, 0, 4, 2)])).not.toEqual([]);
  });

  test('with a patch that hangs together by a corner alone says where', () => {
    const bow = [
      { x: 0, y: 0 },
      { x: 4, y: 0 },
      { x: 4, y: 1 },
      { x: 2, y: 2 },
      { x: 4, y: 4 },
      { x: 0, y: 4 },
      { x: 0, y: 3 },
      { x: 2, y: 2 },
      { x: 0, y: 1 },
    ];
    const ends = [
      [
        { x: 0, y: 1 },
        { x: 2, y: 2 },
        { x: 0, y: 3 },
      ],
      [
        { x: 4, y: 1 },
        { x: 4, y: 4 },
        { x: 2, y: 2 },
      ],
    ];
    const polygons = [bow, ...ends].map((corners) => ({ role: 'light', corners }));
    expect(words(polygons)).toEqual(['A patch meets itself at 2 across, 2 down on its grid.']);
  });
});
