import { describe, expect, it } from 'vitest';
import { cropBetween, inPicture } from '../../../src/renderer/parts/photograph/marking.ts';
import { tooLarge } from '../../../src/renderer/parts/photograph/readFile.ts';

describe('marking a part of a photograph', () => {
  const place = { left: 100, top: 50, width: 200, height: 100 };
  const picture = { width: 1000, height: 500 };

  it('knows which pixel the hand is on, and keeps to the picture', () => {
    // By hand: a quarter along 200 of screen is a quarter along 1000 of picture.
    expect(inPicture({ x: 150, y: 100 }, place, picture)).toEqual({ x: 250, y: 250 });
    expect(inPicture({ x: 0, y: 900 }, place, picture)).toEqual({ x: 0, y: 500 });
  });

  it('takes whole pixels between two corners, whichever comes first', () => {
    const crop = { x: 10, y: 20, width: 31, height: 6 };
    expect(cropBetween({ x: 10.4, y: 25.2 }, { x: 40.6, y: 20.9 })).toEqual(crop);
    expect(cropBetween({ x: 40.6, y: 20.9 }, { x: 10.4, y: 25.2 })).toEqual(crop);
    expect(cropBetween({ x: 5, y: 5 }, { x: 5, y: 5 })).toEqual({ x: 5, y: 5, width: 1, height: 1 });
  });

  it('does not even send a file that is too large, and says what to do', () => {
    expect(tooLarge({ name: 'linen.tif', size: 9_000_000 })).toBeNull();
    expect(tooLarge({ name: 'linen.tif', size: 61_000_000 })).toBe(
      'linen.tif has 61 megabytes. Save it smaller, below 40, and take that.',
    );
  });
});
