import type { Point } from '../drawing/turn.ts';
import type { Quilt } from '../quilt/quilt.ts';
import { placeKey, type Scraps } from '../quilt/scraps.ts';
import { spread } from '../quilt/spread.ts';
import type { FigureBlock } from './blockCloth.ts';
import { gatherCloth } from './quiltCloth.ts';

/** What was worked out last for a quilt: every figure of it asks for the same. */
const known = new WeakMap<Quilt, { readonly blocks: readonly FigureBlock[]; readonly scraps: Scraps }>();

/**
 * Which of its scraps each patch of a scrappy fabric is in one size, so that alike ones do not touch. The same quilt and the same
 * number of the fabric's spread give the same answer; nothing where no fabric is scrappy.
 */
export function scrapsIn(quilt: Quilt, blocks: readonly FigureBlock[]): Scraps | undefined {
  const { scrappy } = quilt;
  if (scrappy === undefined) return undefined;
  const before = known.get(quilt);
  if (before?.blocks === blocks) return before.scraps;
  const gathering = gatherCloth(blocks);
  for (const leaf of [...quilt.blocks, ...quilt.patches, ...quilt.triangles, ...quilt.strips]) gathering.add(leaf);
  const entries = scrappy.map(({ fabric, many, spread: seed }) => {
    const outlines = gathering.cloth.get(fabric) ?? [];
    const given = spread(touching(outlines), many, seed);
    return [fabric, new Map(outlines.map((outline, i) => [placeKey(outline), given[i] as number]))] as const;
  });
  const scraps = new Map(entries);
  known.set(quilt, { blocks, scraps });
  return scraps;
}

/** How many patches of each scrap of a fabric a size has. */
export function scrapCounts(scraps: Scraps | undefined, fabric: string, many: number): readonly number[] {
  const counts = new Array<number>(many).fill(0);
  for (const scrap of scraps?.get(fabric)?.values() ?? []) counts[scrap] = (counts[scrap] as number) + 1;
  return counts;
}

interface Reach {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Patches so near, inches, that they touch: at an edge or at a corner. */
const NEAR = 0.05;

/** For each outline those it touches, found by the boxes about them. */
function touching(outlines: readonly (readonly Point[])[]): readonly (readonly number[])[] {
  const reaches = outlines.map(reachOf);
  const cell = Math.max(1, ...reaches.map(({ left, right, top, bottom }) => Math.min(right - left, bottom - top)));
  const cells = new Map<string, number[]>();
  reaches.forEach((reach, i) => {
    for (const key of cellsOf(reach, cell)) {
      const own = cells.get(key);
      if (own === undefined) cells.set(key, [i]);
      else own.push(i);
    }
  });
  return reaches.map((reach, i) => {
    const near = new Set(cellsOf(reach, cell).flatMap((key) => cells.get(key) ?? []));
    return [...near].filter((other) => other !== i && meets(reach, reaches[other] as Reach));
  });
}

function reachOf(outline: readonly Point[]): Reach {
  const xs = outline.map(({ x }) => x);
  const ys = outline.map(({ y }) => y);
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
}

function cellsOf({ left, right, top, bottom }: Reach, cell: number): string[] {
  const keys: string[] = [];
  for (let x = Math.floor((left - NEAR) / cell); x <= (right + NEAR) / cell; x++) {
    for (let y = Math.floor((top - NEAR) / cell); y <= (bottom + NEAR) / cell; y++) keys.push(`${x} ${y}`);
  }
  return keys;
}

function meets(a: Reach, b: Reach): boolean {
  const across = a.left < b.right + NEAR && b.left < a.right + NEAR;
  return across && a.top < b.bottom + NEAR && b.top < a.bottom + NEAR;
}
