import type { Fabric } from '../pattern/schema.ts';
import { withScraps } from '../quilt/scraps.ts';
import type { Value } from '../recipe/schema.ts';
import type { Hatch, Ink } from './figure.ts';

function lines(degrees: number, gap: number): Hatch {
  return { kind: 'lines', degrees, gap };
}

function crossed(degrees: number, gap: number): Hatch {
  return { kind: 'crossed', degrees, gap };
}

function dots(degrees: number, gap: number): Hatch {
  return { kind: 'dots', degrees, gap };
}

/**
 * Our own hatches, neighbours in the list as unlike as can be. Within a value they differ by kind and direction, between
 * values by how close they lie, so that a print without colour keeps light light and dark dark. None runs along an
 * upright, level or 45° seam, so that no hatch line is taken for one.
 */
const HATCHES: Readonly<Record<Value, readonly Hatch[]>> = {
  light: [
    { kind: 'none', degrees: 0, gap: 0 },
    dots(0, 6.5),
    lines(30, 6.5),
    lines(115, 6.5),
    crossed(20, 9),
    dots(30, 9),
    lines(60, 6.5),
    crossed(62, 9),
    lines(155, 6.5),
    lines(8, 7.5),
  ],
  medium: [
    lines(60, 3.2),
    dots(0, 3.2),
    crossed(20, 4.4),
    lines(155, 3.2),
    lines(115, 3.2),
    crossed(62, 4.6),
    lines(25, 3.2),
    dots(30, 4.2),
    lines(82, 3.2),
    lines(8, 3.2),
  ],
  dark: [
    crossed(30, 2.2),
    lines(120, 1.7),
    crossed(65, 2.2),
    { kind: 'solid', degrees: 0, gap: 0 },
    lines(25, 1.7),
    lines(155, 1.7),
    lines(65, 1.7),
    crossed(8, 2.2),
    lines(82, 1.7),
    lines(8, 1.7),
  ],
};

/**
 * The hatch of a fabric.
 * @param index which fabric of this value it is, from 0; beyond the tenth the set begins again
 */
export function hatchFor(index: number, value: Value): Hatch {
  const own = HATCHES[value];
  return own[index % own.length] as Hatch;
}

/**
 * What the pens need of each fabric of a pattern: its colour, and a hatch that no other fabric has (of ten per value). The scraps of
 * one fabric share its hatch.
 */
export function inksFor(
  fabrics: readonly (Pick<Fabric, 'id' | 'value' | 'colour'> & Partial<Pick<Fabric, 'scraps'>>)[],
): readonly Ink[] {
  const met: Record<Value, number> = { light: 0, medium: 0, dark: 0 };
  return fabrics.flatMap((fabric) => {
    const { value } = fabric;
    const index = met[value];
    met[value] += 1;
    const hatch = hatchFor(index, value);
    return withScraps(fabric).map(({ id, colour }) => ({ fabric: id, colour: colour.toLowerCase(), hatch }));
  });
}
