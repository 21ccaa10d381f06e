import type { Ways } from '../../../shared/drawing/ways.ts';

/** What each way of repeating is called. */
export const WAYS_WORDS: Readonly<Record<Ways, string>> = {
  once: 'Once',
  across: '2 ways, left and right',
  down: '2 ways, up and down',
  diagonal: '2 ways, over a diagonal',
  both: '4 ways, mirrored',
  turned: '4 ways, turned',
  all: '8 ways',
};

/** The same in a narrow place. */
export const WAYS_SHORT: Readonly<Record<Ways, string>> = {
  once: 'Once',
  across: '2, across',
  down: '2, down',
  diagonal: '2, diagonal',
  both: '4, mirrored',
  turned: '4, turned',
  all: '8',
};

export const FINER_WORDS: readonly (readonly [number, string])[] = [
  [1, 'Whole'],
  [2, 'Halves'],
  [3, 'Thirds'],
  [4, 'Quarters'],
  [6, 'Sixths'],
  [8, 'Eighths'],
];
