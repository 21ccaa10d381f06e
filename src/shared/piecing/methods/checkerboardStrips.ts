import { fromStrips } from './boardStrips.ts';

/** Checkerboards from one strip set, or from two where both ways hold an odd number of squares. */
export const checkerboardStrips = fromStrips('checkerboard', 'checkerboard-strips', 'Checkerboards from strip sets');
