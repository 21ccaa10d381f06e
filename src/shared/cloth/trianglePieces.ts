import { count, over, rounded } from '../measure/traced.ts';
import type { Quilt, TriangleLeaf, TriangleUse } from '../quilt/quilt.ts';
import type { PieceLine } from './cloth.ts';
import { type Letters, triangleKey } from './letters.ts';

const WORDS: Readonly<Record<TriangleUse, string>> = {
  side: 'Side triangles',
  corner: 'Corner triangles',
  'edge-cornerstone': 'Cornerstones at the edge',
};

const UNITS: Readonly<Record<TriangleUse, string>> = {
  side: 'side triangles',
  corner: 'corner triangles',
  'edge-cornerstone': 'cornerstones',
};

/**
 * The lines of the chart for the triangles at the edges of a setting on point: squares, each cut once diagonally into two or
 * twice into four.
 */
export function triangleLines(quilt: Quilt, letters: Letters): readonly PieceLine[] {
  const byUse = new Map<TriangleUse, TriangleLeaf[]>();
  for (const triangle of quilt.triangles) byUse.set(triangle.use, [...(byUse.get(triangle.use) ?? []), triangle]);
  return [...byUse].map(([use, triangles]) => triangleLine(letters[triangleKey(use)] ?? '', triangles));
}

function triangleLine(letter: string, triangles: readonly TriangleLeaf[]): PieceLine {
  const [{ fabric, square, into, use }] = triangles as readonly [TriangleLeaf, ...TriangleLeaf[]];
  const many = triangles.length;
  const squares = rounded(over(count(many, 'triangles'), count(into, 'from a square')), 1, 'up');
  return {
    letter,
    fabric,
    width: square,
    height: square,
    count: squares,
    spare: 0,
    use: [{ block: null, unit: UNITS[use], words: WORDS[use], patches: many, count: squares.value }],
    cutAs: 'piece',
    cutUp: { into, needed: many, spare: squares.value * into - many },
  };
}
