import { expect, test } from 'vitest';
import { scaleFor } from '../../../src/renderer/quilt/CompareSizes.tsx';

// By hand: 100 + 300 inches in 800 pixels are 2 pixels an inch; with no less than 300 pixels for one, the other has 500 of 300.
test.each([
  [[100, 300], 100, 2],
  [[100, 300], 300, 500 / 300],
  [[50, 50, 300], 200, 400 / 300],
  [[100, 100], 400, 4],
])('%j inches side by side in 800 pixels, none below %d', (widths, least, scale) => {
  expect(scaleFor(widths, 800, least)).toBeCloseTo(scale, 9);
});
