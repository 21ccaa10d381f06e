import type { Polygon, PolygonCorner } from '../../../src/shared/drawing/drawing.ts';
import { type Point, turnPoint, turnSize } from '../../../src/shared/drawing/turn.ts';
import type { BlockPart, Ring, Rounds, Row, Unit, UnitLeaf } from '../../../src/shared/piecing/piecing.ts';
import { isLeaf } from '../../../src/shared/piecing/tree.ts';
import { unitPolygons } from '../../../src/shared/piecing/unitShape.ts';

/** Something sewn together: its size, and its patches from its own top left corner. */
export interface Assembled {
  readonly width: number;
  readonly height: number;
  readonly polygons: readonly Polygon[];
}

/**
 * Sews a plan together from its units alone: where anything comes to lie follows from the sizes of what it is sewn to, never
 * from where the plan says it stands.
 * @throws Error when the two sides of a seam differ in length
 */
export function reassemble(part: BlockPart, units: readonly Unit[]): Assembled {
  if (isLeaf<UnitLeaf>(part)) return unitLying(part, units);
  if (part.kind === 'row') return row(part, units);
  return part.kind === 'ring' ? ring(part, units) : rounds(part, units);
}

function unitLying({ unit: key, turn }: UnitLeaf, units: readonly Unit[]): Assembled {
  const unit = units.find((one) => one.key === key);
  if (unit === undefined) throw new Error(`No unit ${key}`);
  const { width, height } = unit;
  const polygons = unitPolygons(unit).map((polygon) => moved(polygon, (p) => turnPoint(p, turn, width, height)));
  return { ...turnSize(width, height, turn), polygons };
}

function moved({ role, corners }: Polygon, move: (point: Point) => Point): Polygon {
  const corner = ({ centre, ...point }: PolygonCorner): PolygonCorner =>
    centre === undefined ? move(point) : { ...move(point), centre: move(centre) };
  return { role, corners: corners.map(corner) };
}

function at({ polygons }: Assembled, x: number, y: number): readonly Polygon[] {
  return polygons.map((polygon) => moved(polygon, (p) => ({ x: p.x + x, y: p.y + y })));
}

function agree(a: number, b: number, what: string): void {
  if (Math.abs(a - b) > 1e-3) throw new Error(`${what}: ${a} is sewn to ${b}`);
}

function row({ along, parts }: Row<UnitLeaf>, units: readonly Unit[]): Assembled {
  const made = parts.map((part) => reassemble(part, units));
  const [first] = made as [Assembled];
  let length = 0;
  const polygons = made.flatMap((one) => {
    agree(along === 'across' ? one.height : one.width, along === 'across' ? first.height : first.width, 'A row');
    const here = along === 'across' ? at(one, length, 0) : at(one, 0, length);
    length += along === 'across' ? one.width : one.height;
    return here;
  });
  return along === 'across'
    ? { width: length, height: first.height, polygons }
    : { width: first.width, height: length, polygons };
}

function rounds({ core, logs }: Rounds<UnitLeaf>, units: readonly Unit[]): Assembled {
  return logs.reduce(
    (whole, { side, part }): Assembled => {
      const log = reassemble(part, units);
      const { width, height } = whole;
      if (side === 'left' || side === 'right') {
        agree(log.height, height, 'A log');
        const polygons =
          side === 'left' ? [...at(whole, log.width, 0), ...log.polygons] : [...whole.polygons, ...at(log, width, 0)];
        return { width: width + log.width, height, polygons };
      }
      agree(log.width, width, 'A log');
      const polygons =
        side === 'top' ? [...at(whole, 0, log.height), ...log.polygons] : [...whole.polygons, ...at(log, 0, height)];
      return { width, height: height + log.height, polygons };
    },
    reassemble(core, units),
  );
}

function ring({ core, logs }: Ring<UnitLeaf>, units: readonly Unit[]): Assembled {
  const middle = reassemble(core, units);
  const arms = logs.map(({ side, part }) => ({ side, ...reassemble(part, units) }));
  const size = (side: string) => arms.find((arm) => arm.side === side) as (typeof arms)[number];
  const [x, y] = [size('left').width, size('top').height];
  const polygons = arms.flatMap((arm, i) => {
    const before = arms[(i + 3) % 4] as (typeof arms)[number];
    const lengthwise = arm.side === 'top' || arm.side === 'bottom';
    if (lengthwise) agree(arm.width, middle.width + before.width, 'An arm');
    else agree(arm.height, middle.height + before.height, 'An arm');
    const back =
      before.side === 'left' ? { x: before.width, y: 0 } : { x: 0, y: before.side === 'top' ? before.height : 0 };
    if (arm.side === 'top') return at(arm, x - back.x, 0);
    if (arm.side === 'bottom') return at(arm, x - back.x, y + middle.height);
    return arm.side === 'left' ? at(arm, 0, y - back.y) : at(arm, x + middle.width, y - back.y);
  });
  return {
    width: x + middle.width + size('right').width,
    height: y + middle.height + size('bottom').height,
    polygons: [...at(middle, x, y), ...polygons],
  };
}

/** Patches as words that do not depend on their order nor on where an outline begins. */
export function patchWords(polygons: readonly Polygon[]): readonly string[] {
  return polygons.map(({ role, corners }) => `${role} ${outlineWords(corners)}`).sort();
}

function outlineWords(corners: readonly PolygonCorner[]): string {
  const turns = corners.filter((b, i) => {
    const a = corners[(i + corners.length - 1) % corners.length] as PolygonCorner;
    const c = corners[(i + 1) % corners.length] as PolygonCorner;
    if (b.centre !== undefined || c.centre !== undefined) return true;
    return Math.abs((b.x - a.x) * (c.y - b.y) - (b.y - a.y) * (c.x - b.x)) > 1e-3;
  });
  const word = (n: number) => String(Math.round(n * 100) / 100 + 0);
  return turns
    .map(({ x, y }) => `${word(x)},${word(y)}`)
    .sort()
    .join(' ');
}
