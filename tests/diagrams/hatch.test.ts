import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Hatch } from '../../src/shared/diagrams/figure.ts';
import { hatchSegments, type Segment } from '../../src/shared/diagrams/hatch.ts';
import { hatchFor, inksFor } from '../../src/shared/diagrams/hatches.ts';
import { hatchWeight } from '../../src/shared/diagrams/weights.ts';
import { doubleArea } from '../../src/shared/drawing/drawing.ts';
import type { Point } from '../../src/shared/drawing/turn.ts';

const at = (...pairs: readonly (readonly [number, number])[]): readonly Point[] => pairs.map(([x, y]) => ({ x, y }));
const lengthOf = ({ from, to }: Segment) => Math.hypot(to.x - from.x, to.y - from.y);
const total = (segments: readonly Segment[]) => segments.reduce((sum, segment) => sum + lengthOf(segment), 0);
const level = (gap: number): Hatch => ({ kind: 'lines', degrees: 0, gap });

const SQUARE = at([0, 0], [1, 0], [1, 1], [0, 1]);
const RIGHT_HALF = at([1, 0], [2, 0], [2, 1], [1, 1]);

describe('hatch lines', () => {
  it('lie a gap apart: a quarter-inch hatch crosses an inch square four times', () => {
    const segments = hatchSegments([SQUARE], level(18), 72);
    expect(segments.map(({ from }) => from.y).sort()).toEqual([0.125, 0.375, 0.625, 0.875]);
    expect(total(segments)).toBeCloseTo(4, 9);
  });

  it('stay out of a notch', () => {
    const notched = at([0, 0], [3, 0], [3, 1], [2, 1], [2, 0.5], [1, 0.5], [1, 1], [0, 1]);
    const segments = hatchSegments([notched], level(72 / 4), 72);
    expect(segments).toHaveLength(2 + 4);
    expect(total(segments)).toBeCloseTo(2 * 3 + 4 * 1, 9);
  });

  it('stay out of a hole', () => {
    const hole = at([0.25, 0.25], [0.75, 0.25], [0.75, 0.75], [0.25, 0.75]);
    expect(total(hatchSegments([SQUARE, hole], level(18), 72))).toBeCloseTo(4 - 2 * 0.5, 9);
  });

  it('run through from a patch to its neighbour as one stroke', () => {
    expect(hatchSegments([SQUARE, RIGHT_HALF], level(18), 72)).toHaveLength(4);
  });

  it('meet a corner that lies on a line once', () => {
    const diamond = at([1, 0], [2, 1], [1, 2], [0, 1]);
    expect(total(hatchSegments([diamond], level(144), 72))).toBeCloseTo(2, 9);
  });

  it('cover as much as the area says, whatever the shape and the direction', () => {
    const star = fc.array(fc.double({ min: 0.4, max: 2, noNaN: true }), { minLength: 5, maxLength: 14 });
    fc.assert(
      fc.property(star, fc.integer({ min: 0, max: 179 }), (reaches, degrees) => {
        const outline = reaches.map((reach, i) => {
          const angle = (i / reaches.length) * 2 * Math.PI;
          return { x: Math.cos(angle) * reach, y: Math.sin(angle) * reach };
        });
        // Lines a hundredth of an inch apart: their length times the gap is the area, but for the ends.
        const area = Math.abs(doubleArea(outline)) / 2;
        const drawn = total(hatchSegments([outline], { kind: 'lines', degrees, gap: 0.72 }, 72)) * 0.01;
        expect(Math.abs(drawn - area)).toBeLessThan(0.05);
      }),
      { numRuns: 60 },
    );
  });

  it('are as many points apart at every scale', () => {
    expect(hatchSegments([SQUARE], level(18), 144)).toHaveLength(8);
  });

  it('of dots stand inside the cloth, clear of its edges', () => {
    const dots = hatchSegments([SQUARE], { kind: 'dots', degrees: 30, gap: 9 }, 72);
    expect(dots.length).toBeGreaterThan(40);
    expect(dots.every(({ from, to }) => from === to && from.x > 0 && from.x < 1 && from.y > 0 && from.y < 1)).toBe(
      true,
    );
  });

  it('are none for bare and for solid cloth', () => {
    expect(hatchSegments([SQUARE], { kind: 'none', degrees: 0, gap: 0 }, 72)).toEqual([]);
    expect(hatchSegments([SQUARE], { kind: 'solid', degrees: 0, gap: 0 }, 72)).toEqual([]);
  });
});

const VALUES = ['light', 'medium', 'dark'] as const;

/** The share of cloth under ink, from the outside: measured on what is drawn, not taken from the weights. */
function inked(hatch: Hatch): number {
  if (hatch.kind === 'none') return 0;
  if (hatch.kind === 'solid') return 1;
  const side = 6;
  const outline = SQUARE.map(({ x, y }) => ({ x: x * side, y: y * side }));
  const segments = hatchSegments([outline], hatch, 72);
  const weight = hatchWeight(hatch, false) / 72;
  const area = side * side;
  if (hatch.kind === 'dots') return (segments.length * Math.PI * weight ** 2) / 4 / area;
  const crossing = hatch.kind === 'crossed' ? (total(segments) / 2) * weight : total(segments) * weight;
  return hatch.kind === 'crossed' ? 1 - (1 - crossing / area) ** 2 : crossing / area;
}

describe('the set of hatches', () => {
  it('has ten for each value, all different', () => {
    const all = VALUES.flatMap((value) => Array.from({ length: 10 }, (_, i) => JSON.stringify(hatchFor(i, value))));
    expect(new Set(all).size).toBe(30);
  });

  it('keeps light airy and dark dense', () => {
    const shares = VALUES.map((value) => Array.from({ length: 10 }, (_, i) => inked(hatchFor(i, value))));
    const [light = [], medium = [], dark = []] = shares;
    expect(Math.max(...light)).toBeLessThan(0.1);
    expect(Math.min(...medium)).toBeGreaterThan(0.15);
    expect(Math.max(...medium)).toBeLessThan(0.3);
    expect(Math.min(...dark)).toBeGreaterThan(0.45);
  });

  it('never runs along an upright, level or 45 degree seam', () => {
    for (const value of VALUES) {
      for (let i = 0; i < 10; i += 1) {
        const { kind, degrees } = hatchFor(i, value);
        if (kind === 'lines' || kind === 'crossed') expect(degrees % 45).not.toBe(0);
      }
    }
  });

  it('gives every fabric of a pattern one of its own', () => {
    const fabrics = VALUES.flatMap((value) => [1, 2, 3].map((n) => ({ id: `${value}${n}`, value, colour: '#AABBCC' })));
    const inks = inksFor(fabrics);
    expect(new Set(inks.map((ink) => JSON.stringify(ink.hatch))).size).toBe(9);
    expect(inks[0]).toMatchObject({ fabric: 'light1', colour: '#aabbcc', hatch: { kind: 'none' } });
  });
});
