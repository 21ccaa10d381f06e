import type { Polygon } from '../../src/shared/drawing/drawing.ts';

/**
 * Every way to divide a rectangle into rooms, made without any search for seams: from permutations. Rooms are numbered in
 * the order in which the top left one can be taken away again and again; the permutation lists them in the order in which
 * the bottom left one can be. Then one room lies left of another when it comes first in both orders, and above it when it
 * comes first in the one and later in the other. The permutations that belong to a floorplan are Baxter's, those of a slicing
 * floorplan the separable ones. Source: Ackerman, Barequet, Pinter, "A bijection between permutations and floorplans, and
 * its applications", Discrete Applied Mathematics 154(12), 2006; and Yao, Chen, Cheng, Graham 2003.
 */
export interface Floorplan {
  readonly permutation: readonly number[];
  readonly width: number;
  readonly height: number;
  /** One polygon for each room, each with a role of its own. */
  readonly rooms: readonly Polygon[];
}

/** Every floorplan of so many rooms. */
export function floorplans(rooms: number): readonly Floorplan[] {
  return permutations(rooms).filter(isBaxter).map(floorplanOf);
}

function permutations(size: number): readonly (readonly number[])[] {
  if (size === 0) return [[]];
  return permutations(size - 1).flatMap((rest) =>
    Array.from({ length: size }, (_, at) => [...rest.slice(0, at), size - 1, ...rest.slice(at)]),
  );
}

/** No a … b c … d with c < a < d < b or b < d < a < c, where b and c stand side by side and d is a + 1 or a − 1. */
function isBaxter(order: readonly number[]): boolean {
  for (let i = 0; i + 1 < order.length; i += 1) {
    const [b, c] = [order[i] as number, order[i + 1] as number];
    for (const a of order.slice(0, i)) {
      for (const d of order.slice(i + 2)) {
        if (c < a && a < d && d < b) return false;
        if (b < d && d < a && a < c) return false;
      }
    }
  }
  return true;
}

/** Whether straight seams alone can sew it: no four of the permutation stand like 2413 or 3142. */
export function isSlicing({ permutation }: Floorplan): boolean {
  const places = permutation.map((_, i) => i);
  return !places.some((i) =>
    places.some((j) =>
      places.some((k) =>
        places.some((l) => {
          if (!(i < j && j < k && k < l)) return false;
          const [a, b, c, d] = [i, j, k, l].map((place) => permutation[place] as number) as [
            number,
            number,
            number,
            number,
          ];
          return (c < a && a < d && d < b) || (b < d && d < a && a < c);
        }),
      ),
    ),
  );
}

function floorplanOf(permutation: readonly number[]): Floorplan {
  const rooms = permutation.map((_, room) => room);
  const place = (room: number) => permutation.indexOf(room);
  const isLeft = (a: number, b: number) => a < b && place(a) < place(b);
  const isAbove = (a: number, b: number) => a < b && place(a) > place(b);
  const across = lines(rooms, isLeft);
  const down = lines(rooms, isAbove);
  const polygons = rooms.map((room): Polygon => {
    const [x, x2] = across.span(room);
    const [y, y2] = down.span(room);
    return {
      role: `room-${room + 1}`,
      corners: [
        { x, y },
        { x: x2, y },
        { x: x2, y: y2 },
        { x, y: y2 },
      ],
    };
  });
  return { permutation, width: across.length, height: down.length, rooms: polygons };
}

/**
 * Rooms that begin on one wall have the same rooms before them; each such set is a wall. Walls stand in the order of how many
 * rooms lie before them, no two in one line.
 */
function lines(rooms: readonly number[], isBefore: (a: number, b: number) => boolean) {
  const before = (room: number) => rooms.filter((other) => isBefore(other, room));
  const walls = [...new Set(rooms.map((room) => before(room).join(' ')))];
  walls.sort((a, b) => a.split(' ').filter(Boolean).length - b.split(' ').filter(Boolean).length || (a < b ? -1 : 1));
  const start = (room: number) => walls.indexOf(before(room).join(' '));
  const length = walls.length;
  return {
    length,
    span: (room: number): readonly [number, number] => {
      const after = rooms.filter((other) => isBefore(room, other)).map(start);
      return [start(room), Math.min(length, ...after)];
    },
  };
}
