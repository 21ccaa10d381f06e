import type { Point, Turn } from '../drawing/turn.ts';
import { stripOutline } from '../quilt/mitre.ts';
import type { BlockLeaf, QuiltLeaf } from '../quilt/quilt.ts';
import { type ByFabric, type FigureBlock, patchesByFabric } from './blockCloth.ts';
import type { Line } from './figure.ts';
import { boxOutline } from './marks.ts';

/** Gathers the cloth of a whole quilt by fabric. Every block is worked out once for each way it lies, then only moved. */
export interface Gathering {
  add(leaf: QuiltLeaf, by?: Point): void;
  readonly cloth: ByFabric;
}

type Outlines = (readonly Point[])[];

const HERE: Point = { x: 0, y: 0 };

export function gatherCloth(blocks: readonly FigureBlock[]): Gathering {
  const cloth = new Map<string | null, Outlines>();
  const known = new Map<string, ByFabric>();
  const ofBlock = (leaf: BlockLeaf): ByFabric => {
    const key = lyingKey(leaf.block, leaf.turn);
    const found = known.get(key) ?? workedOut(blocks, leaf);
    known.set(key, found);
    return found;
  };
  return {
    cloth,
    add(leaf, by = HERE) {
      if (leaf.kind !== 'block') {
        addMoved(cloth, leaf.fabric, [outlineOf(leaf)], by.x, by.y);
        return;
      }
      for (const [fabric, outlines] of ofBlock(leaf))
        addMoved(cloth, fabric, outlines, leaf.box.x + by.x, leaf.box.y + by.y);
    },
  };
}

/** The outline of what is sewn into the top as one thing. */
export function outlineOf(leaf: QuiltLeaf): readonly Point[] {
  return leaf.kind === 'strip' ? stripOutline(leaf) : boxOutline(leaf.box);
}

/** The same outline as a line, moved. */
export function leafLine(leaf: QuiltLeaf, by: Point = HERE): Line {
  const outline = outlineOf(leaf).map(({ x, y }) => ({ x: x + by.x, y: y + by.y }));
  return { kind: 'line', pen: 'unit', points: [...outline, outline[0] as Point] };
}

function lyingKey(block: string, turn: Turn): string {
  return `${block}${turn.mirrored ? 'm' : ''}${turn.quarters}`;
}

function workedOut(blocks: readonly FigureBlock[], leaf: BlockLeaf): ByFabric {
  const block = blocks.find((one) => one.id === leaf.block);
  if (block === undefined) return new Map();
  const { drawing } = block.piecing;
  return patchesByFabric(drawing, gridOf(leaf, drawing.width, drawing.height), block.fabricOf, leaf.turn);
}

/** Finished inches of one of the block's grid units, however it is turned to fill its place. */
function gridOf({ box, turn }: BlockLeaf, width: number, height: number): number {
  return box.width / (turn.quarters % 2 === 0 ? width : height);
}

/** A loop without anything else in it: sixteen thousand patches come through here. */
function addMoved(
  cloth: Map<string | null, Outlines>,
  fabric: string | null,
  outlines: readonly (readonly Point[])[],
  dx: number,
  dy: number,
): void {
  let all = cloth.get(fabric);
  if (all === undefined) {
    all = [];
    cloth.set(fabric, all);
  }
  for (const outline of outlines) {
    const placed = new Array<Point>(outline.length);
    for (let i = 0; i < outline.length; i += 1) {
      const point = outline[i] as Point;
      placed[i] = { x: point.x + dx, y: point.y + dy };
    }
    all.push(placed);
  }
}
