import type { Point } from '../../drawing/turn.ts';
import type { Inches } from '../../measure/inches.ts';
import { given } from '../../measure/traced.ts';
import type { House, OnPointSetting } from '../../pattern/schema.ts';
import { cutTo } from '../cut.ts';
import type { PatchLeaf, TriangleLeaf } from '../quilt.ts';
import type { Sashes } from '../sashing.ts';
import { clip, type HalfPlane } from './clip.ts';
import { edgePlanes, type Grounds, rowsBox } from './edges.ts';
import { boxOf, cornersOf } from './frame.ts';
import { cornerSquare, sideSquare, slantedLength } from './triangleCuts.ts';

/** A band of the frame: a row from its top to its bottom. */
export interface Band {
  readonly top: Inches;
  readonly bottom: Inches;
}

/** Makes what fills a row between its last block or sashing and the edge of the quilt. */
export interface Ends {
  /** The triangle at an end of a row of blocks. @param at where the row’s last piece ends */
  side(band: Band, at: Inches, end: 'left' | 'right'): TriangleLeaf;
  /** What is left of the cornerstone at an end of a row of sashing. */
  cornerstone(band: Band, at: Inches, end: 'left' | 'right'): TriangleLeaf | PatchLeaf;
  /** What is inside the quilt of a strip that runs across a whole band. */
  inside(band: Band): readonly Point[];
  corners(): readonly TriangleLeaf[];
}

const FAR = 1e6;

export function endsOf(setting: OnPointSetting, grounds: Grounds, sashes: Sashes | null, house: House): Ends {
  const edges = edgePlanes(grounds);
  const rows = rowsBox(grounds);
  const within: readonly HalfPlane[] = [
    ...edges,
    { a: -1, b: 0, c: -rows.left },
    { a: 1, b: 0, c: rows.right },
    { a: 0, b: -1, c: -rows.top },
    { a: 0, b: 1, c: rows.bottom },
  ];
  const piece = ({ top, bottom }: Band, from: Inches, to: Inches) =>
    clip(cornersOf({ x: from, y: top, width: to - from, height: bottom - top }), within);
  const beyond = (band: Band, at: Inches, end: 'left' | 'right') =>
    end === 'left' ? piece(band, -FAR, at) : piece(band, at, FAR);
  const { triangles } = setting;
  const block = given(grounds.block, 'finished');
  const leg = grounds.block + grounds.float * Math.SQRT2;
  const side = { fabric: triangles.fabric, square: sideSquare(block, grounds.float, house), into: 4, leg } as const;
  return {
    side: (band, at, end) => triangle({ ...side, use: 'side' }, beyond(band, at, end)),
    cornerstone: (band, at, end) => {
      if (sashes === null || sashes.cornerstones === null)
        throw new RangeError('There is no cornerstone without sashing');
      const outline = beyond(band, at, end);
      const fabric = sashes.cornerstones;
      if (setting.triangles.fit === 'floating') return longCornerstone(outline, fabric, sashes, grounds.float, house);
      const square = sideSquare(sashes.width, grounds.float, house);
      const own = grounds.sash + grounds.float * Math.SQRT2;
      return triangle({ use: 'edge-cornerstone', fabric, square, into: 4, leg: own }, outline);
    },
    inside: (band) => piece(band, -FAR, FAR),
    corners: () => cornersOfQuilt(setting, grounds, house, edges),
  };
}

function triangle(
  of: Pick<TriangleLeaf, 'use' | 'fabric' | 'square' | 'into' | 'leg'>,
  outline: readonly Point[],
): TriangleLeaf {
  return { kind: 'triangle', ...of, outline, box: boxOf(outline) };
}

/** Where blocks float, a cornerstone at the edge is a strip that reaches over it and is cut off with it. */
function longCornerstone(
  outline: readonly Point[],
  fabric: string,
  { width }: Sashes,
  float: Inches,
  house: House,
): PatchLeaf {
  // Beside a corner it is shorter; all are cut to one length.
  const longest = width.value + float * Math.SQRT2;
  return {
    kind: 'patch',
    use: 'cornerstone',
    name: 'edge cornerstone',
    words: 'Cornerstones at the edge',
    fabric,
    box: boxOf(outline),
    outline,
    cut: { width: slantedLength(longest, house), height: cutTo(width, house) },
  };
}

function cornersOfQuilt(
  { triangles }: OnPointSetting,
  grounds: Grounds,
  house: House,
  edges: readonly HalfPlane[],
): readonly TriangleLeaf[] {
  const rows = rowsBox(grounds);
  const everything = cornersOf({ x: -FAR, y: -FAR, width: 2 * FAR, height: 2 * FAR });
  const outside: readonly HalfPlane[] = [
    { a: 0, b: 1, c: rows.top },
    { a: -1, b: 0, c: -rows.right },
    { a: 0, b: -1, c: -rows.bottom },
    { a: 1, b: 0, c: rows.left },
  ];
  const square = cornerSquare(given(grounds.block, 'finished'), grounds.float, house);
  const leg = grounds.block * Math.SQRT1_2 + 2 * grounds.float;
  const fabric = triangles.corners ?? triangles.fabric;
  return outside.map((plane, i) => {
    // Beside a single row of blocks two corners overlap at its points: what is sewn on later lies over what was there.
    const later = outside.slice(i + 1).map(({ a, b, c }): HalfPlane => ({ a: -a, b: -b, c: -c }));
    return triangle({ use: 'corner', fabric, square, into: 2, leg }, clip(everything, [...edges, plane, ...later]));
  });
}
