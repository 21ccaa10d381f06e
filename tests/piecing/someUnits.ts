import fc from 'fast-check';
import type { Scale } from '../../src/shared/piecing/method.ts';
import type { FlippedCorner, Unit } from '../../src/shared/piecing/piecing.ts';
import type { Corner } from '../../src/shared/recipe/schema.ts';

/** Units and scales to test the methods with. */

const INCH_PER_MM = 1 / 25.4;

export const QUARTER: Pick<Scale, 'seam' | 'step'> = { seam: 1 / 4, step: 1 / 8 };
export const THREE_EIGHTHS: Pick<Scale, 'seam' | 'step'> = { seam: 3 / 8, step: 1 / 8 };
export const SIX_MM: Pick<Scale, 'seam' | 'step'> = { seam: 6 * INCH_PER_MM, step: INCH_PER_MM };
export const SEVEN_AND_A_HALF_MM: Pick<Scale, 'seam' | 'step'> = { seam: 7.5 * INCH_PER_MM, step: INCH_PER_MM };

export const square = (size: number, role = 'a'): Unit => ({
  kind: 'plain',
  key: 'p',
  width: size,
  height: size,
  role,
});
export const hst = (size: number): Unit => ({ kind: 'hst', key: 'h', width: size, height: size, roles: ['a', 'b'] });
export const geese = (height: number): Unit => ({
  kind: 'geese',
  key: 'g',
  width: 2 * height,
  height,
  roles: ['a', 'b'],
});
export const fourPatch = (width: number, height = width): Unit => ({
  kind: 'four-patch',
  key: 'f',
  width,
  height,
  roles: ['a', 'b'],
});
export const flipped = (width: number, height: number, corners: readonly FlippedCorner[]): Unit => ({
  kind: 'corners',
  key: 'c',
  width,
  height,
  role: 'a',
  corners,
});
export const corner = (at: Corner, size: number, role = 'b'): FlippedCorner => ({ at, size, role });

const CORNERS: readonly Corner[] = ['top-left', 'top-right', 'bottom-right', 'bottom-left'];
const whole = (max: number) => fc.integer({ min: 1, max });

const flippedUnits = fc
  .record({
    at: fc.subarray([...CORNERS], { minLength: 1 }),
    width: whole(6),
    height: whole(6),
    sizes: fc.array(whole(3), { minLength: 4, maxLength: 4 }),
    roles: fc.array(fc.constantFrom('b', 'c'), { minLength: 4, maxLength: 4 }),
  })
  .map(({ at, width, height, sizes, roles }) => {
    const most = Math.min(width, height);
    const corners = at.map((place, i) => corner(place, Math.min(most, sizes[i] ?? 1) / 2, roles[i] ?? 'b'));
    return flipped(width, height, corners);
  });

/** Any unit that some method makes, a few whole grid units large; corners by halves. */
export const units: fc.Arbitrary<Unit> = fc.oneof(
  fc
    .record({ width: whole(9), height: whole(9) })
    .map((size): Unit => ({ kind: 'plain', key: 'p', role: 'a', ...size })),
  fc
    .record({ width: whole(20), height: whole(2) })
    .map((size): Unit => ({ kind: 'log', key: 'l', role: 'a', ...size })),
  whole(6).map(hst),
  whole(4).map(geese),
  fc.tuple(whole(4), whole(4)).map(([width, height]) => fourPatch(2 * width, 2 * height)),
  flippedUnits,
);

const houses = fc.constantFrom(QUARTER, THREE_EIGHTHS, SIX_MM, SEVEN_AND_A_HALF_MM, { seam: 15 / 64, step: 1 / 16 });

/** A grid unit of any length, with the seams and rulers in use. */
export const scales: fc.Arbitrary<Scale> = fc
  .record({ grid: fc.double({ min: 0.75, max: 4, noNaN: true }), house: houses })
  .map(({ grid, house }) => ({ grid, ...house }));

/** A grid unit that puts every whole and half of it on an eighth-inch ruler. */
export const ruledScales: fc.Arbitrary<Scale> = fc
  .record({ quarters: fc.integer({ min: 3, max: 16 }), house: fc.constantFrom(QUARTER, THREE_EIGHTHS) })
  .map(({ quarters, house }) => ({ grid: quarters / 4, ...house }));
