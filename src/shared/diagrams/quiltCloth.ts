import type { Point, Turn } from '../drawing/turn.ts';
import { clip, type HalfPlane } from '../quilt/onPoint/clip.ts';
import { turnedAbout } from '../quilt/onPoint/frame.ts';
import { outlineOf } from '../quilt/onPoint/pieces.ts';
import type { BlockLeaf, TopPiece } from '../quilt/quilt.ts';
import { placeKey, type Scraps, scrapFabric } from '../quilt/scraps.ts';
import { wholeBox } from '../quilt/wholeBox.ts';
import { type ByFabric, type FigureBlock, patchesByFabric } from './blockCloth.ts';
import type { Line } from './figure.ts';

/** Gathers the cloth of a whole quilt by fabric. Every block is worked out once for each way it lies, then only moved. */
export interface Gathering {
  add(piece: TopPiece, by?: Point): void;
  readonly cloth: ByFabric;
}

type Outlines = (readonly Point[])[];

const HERE: Point = { x: 0, y: 0 };

/** @param scraps which scrap each patch of a scrappy fabric is; left out, such a fabric is one cloth */
export function gatherCloth(blocks: readonly FigureBlock[], scraps?: Scraps): Gathering {
  const cloth = new Map<string | null, Outlines>();
  const known = new Map<string, ByFabric>();
  const ofBlock = (leaf: BlockLeaf): ByFabric => {
    const key = `${lyingKey(leaf.block, leaf.turn)} ${leaf.tilt ?? 0} ${leaf.part?.from ?? 0} ${leaf.part?.to ?? 1}`;
    const found = known.get(key) ?? workedOut(blocks, leaf);
    known.set(key, found);
    return found;
  };
  return {
    cloth,
    add(piece, by = HERE) {
      if (piece.kind !== 'block') {
        const own = scraps?.get(piece.fabric);
        if (own === undefined) addMoved(cloth, piece.fabric, [outlineOf(piece)], by.x, by.y);
        else addScraps(cloth, piece.fabric, own, [outlineOf(piece)], HERE, by);
        return;
      }
      for (const [fabric, outlines] of ofBlock(piece)) {
        const own = fabric === null ? undefined : scraps?.get(fabric);
        if (fabric === null || own === undefined)
          addMoved(cloth, fabric, outlines, piece.box.x + by.x, piece.box.y + by.y);
        else addScraps(cloth, fabric, own, outlines, piece.box, by);
      }
    },
  };
}

/** The outline of a piece of the top as a line, moved. */
export function pieceLine(piece: TopPiece, by: Point = HERE): Line {
  const outline = outlineOf(piece).map(({ x, y }) => ({ x: x + by.x, y: y + by.y }));
  return { kind: 'line', pen: 'unit', points: [...outline, outline[0] as Point] };
}

function lyingKey(block: string, turn: Turn): string {
  return `${block}${turn.mirrored ? 'm' : ''}${turn.quarters}`;
}

function workedOut(blocks: readonly FigureBlock[], leaf: BlockLeaf): ByFabric {
  const block = blocks.find((one) => one.id === leaf.block);
  if (block === undefined) return new Map();
  const { drawing } = block.piecing;
  const upright = patchesByFabric(drawing, gridOf(leaf, drawing.width, drawing.height), block.fabricOf, leaf.turn);
  const { tilt, box } = leaf;
  if (leaf.part !== undefined) return keptOf(upright, leaf);
  if (tilt === undefined) return upright;
  const middle = { x: box.width / 2, y: box.height / 2 };
  const tilted = (outline: readonly Point[]) => outline.map((point) => turnedAbout(point, middle, tilt));
  return new Map([...upright].map(([fabric, outlines]) => [fabric, outlines.map(tilted)]));
}

/** What is kept of a block that is cut off, from the corner of what is kept. */
function keptOf(whole: ByFabric, leaf: BlockLeaf): ByFabric {
  const { x, y } = wholeBox(leaf);
  const [left, top] = [leaf.box.x - x, leaf.box.y - y];
  const planes: readonly HalfPlane[] = [
    { a: -1, b: 0, c: -left },
    { a: 1, b: 0, c: left + leaf.box.width },
    { a: 0, b: -1, c: -top },
    { a: 0, b: 1, c: top + leaf.box.height },
  ];
  const kept = (outlines: readonly (readonly Point[])[]) =>
    outlines
      .map((outline) => clip(outline, planes).map((point) => ({ x: point.x - left, y: point.y - top })))
      .filter((outline) => outline.length > 2);
  return new Map([...whole].map(([fabric, outlines]) => [fabric, kept(outlines)]));
}

/** Finished inches of one of the block's grid units, however it is turned to fill its place. */
function gridOf(leaf: BlockLeaf, width: number, height: number): number {
  return wholeBox(leaf).width / (leaf.turn.quarters % 2 === 0 ? width : height);
}

/** Patches of a scrappy fabric, each under its scrap, which is known by where the patch lies before it is moved. */
function addScraps(
  cloth: Map<string | null, Outlines>,
  fabric: string,
  scraps: ReadonlyMap<string, number>,
  outlines: readonly (readonly Point[])[],
  at: Point,
  by: Point,
): void {
  for (const outline of outlines) {
    const lies = outline.map(({ x, y }) => ({ x: x + at.x, y: y + at.y }));
    const scrap = scraps.get(placeKey(lies));
    addMoved(cloth, scrap === undefined ? fabric : scrapFabric(fabric, scrap), [lies], by.x, by.y);
  }
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
