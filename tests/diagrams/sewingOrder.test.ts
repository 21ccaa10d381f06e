import { describe, expect, test } from 'vitest';
import type { Figure, Line } from '../../src/shared/diagrams/figure.ts';
import { sewingOrderFigure } from '../../src/shared/diagrams/sewingOrderFigure.ts';
import type { Pattern } from '../../src/shared/pattern/schema.ts';
import { workOut } from '../../src/shared/workroom/workOut.ts';
import { testPattern } from '../helpers/fixtures.ts';
import { demoPattern } from '../helpers/starters.ts';

const patterns: readonly (readonly [string, Pattern])[] = [
  ['straight with borders', demoPattern()],
  ...(['panes', 'causeway', 'nets', 'brickwork', 'harbour-wall'] as const).map(
    (name) => [name, testPattern(name)] as const,
  ),
];

interface Around {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** The smallest box about every outlined piece. */
function piecesOf(figure: Figure): readonly Around[] {
  const lines = figure.marks.filter((mark): mark is Line => mark.kind === 'line');
  return lines.map(({ points }) => ({
    left: Math.min(...points.map(({ x }) => x)),
    right: Math.max(...points.map(({ x }) => x)),
    top: Math.min(...points.map(({ y }) => y)),
    bottom: Math.max(...points.map(({ y }) => y)),
  }));
}

describe.each(patterns)('a top pulled apart in sewing order: %s', (_, pattern) => {
  const worked = workOut(pattern);
  const [size] = worked.sizes;
  if (size === undefined) throw new Error('not laid out');
  const { quilt } = size;

  test('not pulled at all it is the quilt', () => {
    const { width, height } = sewingOrderFigure(quilt, worked.blocks, 0);
    expect(width).toBeCloseTo(quilt.finished.width.value, 6);
    expect(height).toBeCloseTo(quilt.finished.height.value, 6);
  });

  test('pulled, it has the same pieces and is larger, the further the more', () => {
    const [none, some, all] = [0, 0.5, 1].map((apart) => sewingOrderFigure(quilt, worked.blocks, apart));
    expect(piecesOf(all as Figure)).toHaveLength(piecesOf(none as Figure).length);
    expect(some?.height).toBeGreaterThan(none?.height ?? 0);
    expect(all?.height).toBeGreaterThan(some?.height ?? 0);
  });
});

test('no border strip lies over the rows or over another strip once they are pulled apart', () => {
  const worked = workOut(demoPattern());
  for (const { quilt } of worked.sizes) {
    const pieces = piecesOf(sewingOrderFigure(quilt, worked.blocks, 1));
    const near = 1e-6;
    pieces.forEach((a, i) => {
      for (const b of pieces.slice(i + 1)) {
        const apart =
          a.right <= b.left + near || b.right <= a.left + near || a.bottom <= b.top + near || b.bottom <= a.top + near;
        expect(apart).toBe(true);
      }
    });
  }
});
