import { type Inches, longer, onRuler, same } from '../../measure/inches.ts';
import type { Measure } from '../quilt.ts';

/** A side that is to be closed by whole units, and what those units are. */
export interface ToClose {
  /** What the border is sewn to, finished inches. */
  readonly inside: Measure;
  /** How high the units should finish: the border's width, inches. */
  readonly width: Inches;
  /** How long a unit is for each inch it is high. */
  readonly aspect: number;
  /** Grid units in the height of a unit: a border as many ruler marks high falls on the ruler. */
  readonly high: number;
  /** The ruler's step, inches. */
  readonly step: Inches;
}

/** How many units lie along the top and along a side, corners not counted. */
interface Counted {
  readonly across: number;
  readonly down: number;
}

/** Units of this size close all four sides at once, with nothing between. */
interface UnitClosing extends Counted {
  readonly kind: 'unit';
  readonly width: Inches;
  readonly length: Inches;
  /** Whether every part of the unit falls on the ruler. */
  readonly friendly: boolean;
}

/** Plain strips inside the border make it close: so wide at the sides, so wide at the top and bottom. */
interface SpacerClosing extends Counted {
  readonly kind: 'spacer';
  readonly width: Inches;
  readonly sides: Inches;
  readonly ends: Inches;
}

/** The top inside the border made wider (below zero: narrower) and higher by so much closes it. */
interface ChangeClosing extends Counted {
  readonly kind: 'change';
  readonly width: Inches;
  readonly wider: Inches;
  readonly higher: Inches;
}

export type Closing = UnitClosing | SpacerClosing | ChangeClosing;

export interface Closings {
  /** Whether the border closes as it is. */
  readonly closes: boolean;
  /** The best first, of each kind. */
  readonly units: readonly UnitClosing[];
  readonly spacers: readonly SpacerClosing[];
  readonly changes: readonly ChangeClosing[];
}

const MOST = 6;
const MOST_UNITS = 400;
const NARROWEST_SPACER: Inches = 0.5;
const WIDEST_SPACER: Inches = 8;

/** Every way found to make a pieced border close. Lengths are finished inches. */
export function closeBorder(toClose: ToClose): Closings {
  const { inside, width, aspect } = toClose;
  const unit = width * aspect;
  return {
    closes: fills(inside.width, unit) && fills(inside.height, unit),
    units: unitClosings(toClose).slice(0, MOST),
    spacers: spacerClosings(toClose).slice(0, MOST),
    changes: changeClosings(toClose).slice(0, MOST),
  };
}

function fills(side: Inches, unit: Inches): boolean {
  const many = Math.round(side / unit);
  return many >= 1 && same(many * unit, side);
}

function unitClosings({ inside, width, aspect, high, step }: ToClose): readonly UnitClosing[] {
  const most = Math.min(MOST_UNITS, Math.floor(inside.width / (aspect * Math.max(width / 4, step))));
  const found: UnitClosing[] = [];
  for (let across = 1; across <= most; across += 1) {
    const length = inside.width / across;
    const own = length / aspect;
    if (own > width * 3 || !fills(inside.height, length)) continue;
    const down = Math.round(inside.height / length);
    found.push({ kind: 'unit', width: own, length, across, down, friendly: onRuler(own / high, step) });
  }
  const cost = (one: UnitClosing) => (one.friendly ? 0 : 100) + Math.abs(one.width - width);
  return found.sort((a, b) => cost(a) - cost(b));
}

/** Widths near the wished one whose units fall on the ruler, the wished one first. */
function widthsNear({ width, high, step }: ToClose): readonly Inches[] {
  const grid = high * step;
  const first = Math.ceil((width * 0.75) / grid);
  const last = Math.floor((width * 1.34) / grid);
  const near = Array.from({ length: Math.max(0, Math.min(last - first + 1, 24)) }, (_, i) => (first + i) * grid);
  return [width, ...near.filter((one) => !same(one, width))];
}

function spacerClosings(toClose: ToClose): readonly SpacerClosing[] {
  const { inside, width, aspect, step } = toClose;
  const found = widthsNear(toClose).flatMap((own) => {
    const unit = own * aspect;
    return spacersFor(inside.width, unit, step).flatMap(({ many: across, spacer: sides }) =>
      spacersFor(inside.height, unit, step).flatMap(({ many: down, spacer: ends }): SpacerClosing[] =>
        same(sides, 0) && same(ends, 0) ? [] : [{ kind: 'spacer', width: own, across, down, sides, ends }],
      ),
    );
  });
  // What changes the design least comes first: the same strip all round, then narrow strips, then units of another size.
  const cost = ({ sides, ends, width: own }: SpacerClosing) =>
    2 * Math.abs(sides - ends) +
    (sides + ends) / 2 +
    4 * Math.abs(own - width) +
    (same(sides, 0) || same(ends, 0) ? 1 : 0);
  return found.sort((a, b) => cost(a) - cost(b));
}

interface Spaced {
  readonly many: number;
  /** On each of the two sides. */
  readonly spacer: Inches;
}

/** The spacers on the ruler that lengthen a side to a whole number of units; none needed counts as one of no width. */
function spacersFor(side: Inches, unit: Inches, step: Inches): readonly Spaced[] {
  const least = Math.ceil(side / unit - 1e-9);
  const most = Math.floor((side + 2 * WIDEST_SPACER) / unit);
  const found: Spaced[] = [];
  for (let many = Math.max(1, least); many <= Math.min(most, least + 3); many += 1) {
    const spacer = (many * unit - side) / 2;
    const usable = same(spacer, 0) || !longer(NARROWEST_SPACER, spacer);
    if (usable && onRuler(spacer, step)) found.push({ many, spacer: same(spacer, 0) ? 0 : spacer });
  }
  return found;
}

function changeClosings({ inside, width, aspect }: ToClose): readonly ChangeClosing[] {
  const unit = width * aspect;
  const near = (side: Inches) => {
    const less = Math.max(1, Math.floor(side / unit + 1e-9));
    return [less, less + 1].map((many) => ({ many, by: many * unit - side }));
  };
  const found = near(inside.width).flatMap(({ many: across, by: wider }) =>
    near(inside.height).map(({ many: down, by: higher }): ChangeClosing => {
      return { kind: 'change', width, across, down, wider, higher };
    }),
  );
  const cost = ({ wider, higher }: ChangeClosing) => Math.abs(wider) + Math.abs(higher);
  return found.filter((one) => !same(cost(one), 0)).sort((a, b) => cost(a) - cost(b));
}
