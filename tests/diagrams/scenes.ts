import type { Scene } from '../../src/shared/piecing/scene.ts';

const square = (x: number, y: number, size: number) => [
  { x, y },
  { x: x + size, y },
  { x: x + size, y: y + size },
  { x, y: y + size },
];

/** Two squares right sides together, the diagonal marked, sewn on both sides of it and cut along it. */
export const HST_SEWN: Scene = {
  width: 3,
  height: 3,
  cloth: [
    { corners: square(0.1, 0.1, 2.9), role: 'deep', side: 'right' },
    { corners: square(0, 0, 2.9), role: 'foam', side: 'wrong' },
  ],
  lines: [
    { kind: 'sewn', from: { x: 0, y: 2.55 }, to: { x: 2.55, y: 0 } },
    { kind: 'cut', from: { x: 0, y: 2.9 }, to: { x: 2.9, y: 0 } },
    { kind: 'sewn', from: { x: 0.35, y: 2.9 }, to: { x: 2.9, y: 0.35 } },
  ],
  arrows: [],
  alt: 'Two squares right sides together, sewn on both sides of the marked diagonal.',
};

/** One corner pressed away from the goose. */
export const GEESE_STAGE: Scene = {
  width: 4.5,
  height: 2.5,
  cloth: [
    {
      corners: [
        { x: 0, y: 0 },
        { x: 4.5, y: 0 },
        { x: 4.5, y: 2.5 },
        { x: 0, y: 2.5 },
      ],
      role: 'tide',
      side: 'right',
    },
    {
      corners: [
        { x: 0, y: 0 },
        { x: 2.5, y: 0 },
        { x: 0, y: 2.5 },
      ],
      role: 'foam',
      side: 'right',
    },
    { corners: square(2, 0, 2.5), role: 'foam', side: 'wrong' },
  ],
  lines: [
    { kind: 'marked', from: { x: 2, y: 0 }, to: { x: 4.5, y: 2.5 } },
    { kind: 'sewn', from: { x: 2, y: 0 }, to: { x: 4.5, y: 2.5 } },
  ],
  arrows: [{ kind: 'press', from: { x: 1.6, y: 1.6 }, to: { x: 0.7, y: 0.7 } }],
  alt: 'The second square laid on the other end, right sides together, and sewn along its diagonal.',
};
