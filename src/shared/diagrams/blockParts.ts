import { type Point, UNTURNED } from '../drawing/turn.ts';
import type { Inches } from '../measure/inches.ts';
import type { BlockPart, Piecing, UnitKey, UnitLeaf } from '../piecing/piecing.ts';
import type { PressingPlan } from '../pressing/pressing.ts';
import { type Placed, pullApart, type SeamSpot } from './apart.ts';
import { areasOf, type ByFabric, patchesByFabric } from './blockCloth.ts';
import type { Area, Figure, Mark } from './figure.ts';
import { boxLine, type FabricOf, framed, letter, middleOf } from './marks.ts';
import { pressArrows } from './pressArrows.ts';

/** A block to be shown as it is sewn. */
export interface SewnBlock {
  readonly piecing: Piecing;
  /** Finished inches of one grid unit. */
  readonly grid: Inches;
  readonly fabricOf: FabricOf;
  readonly pressing: PressingPlan;
  /** A letter to stand on every unit of a key. */
  readonly letters?: Readonly<Record<UnitKey, string>>;
}

/** The gap between parts pulled apart, as a share of the longer side of what they make: wide enough for an arrow. */
const GAP = 0.09;
/** But no less than this share of the whole block: its parts are drawn at one scale, and an arrow needs its room. */
const LEAST_GAP = 0.075;

/** How far an arrow reaches over a gap to each side. */
const REACH = 0.62;

/** The cloth of some leaves, moved to where the figure has them, with the outline of each unit. */
export function leafMarks(
  { piecing, grid, fabricOf, letters = {} }: SewnBlock,
  leaves: readonly Placed<UnitLeaf>[],
  tone: Area['tone'],
): readonly Mark[] {
  const cloth = new Map<string | null, (readonly Point[])[]>();
  for (const { leaf, by } of leaves) {
    const own: ByFabric = patchesByFabric(piecing.drawing, grid, fabricOf, UNTURNED, leaf.patches);
    for (const [fabric, outlines] of own) {
      const placed = outlines.map((outline) => outline.map(({ x, y }) => ({ x: x + by.x * grid, y: y + by.y * grid })));
      cloth.set(fabric, [...(cloth.get(fabric) ?? []), ...placed]);
    }
  }
  const boxes = tone === 'pale' ? [] : leaves.map(({ leaf: { box }, by }) => boxLine(inInches(box, by, grid), 'unit'));
  const named =
    tone === 'pale'
      ? []
      : leaves.flatMap(({ leaf, by }) => {
          const text = letters[leaf.unit];
          return text === undefined ? [] : [letter(text, middleOf(inInches(leaf.box, by, grid)))];
        });
  return [...areasOf(cloth, tone, 'patch'), ...boxes, ...named];
}

/** A box of the tree in the figure's inches. */
export function inInches(box: UnitLeaf['box'], by: Point, grid: Inches): UnitLeaf['box'] {
  return { x: (box.x + by.x) * grid, y: (box.y + by.y) * grid, width: box.width * grid, height: box.height * grid };
}

/**
 * A part of a block pulled apart at some of its seams, with the arrows of some of its seams.
 * @param apart which parts are drawn apart
 * @param arrows of which parts the seams' pressing is shown
 */
export function apartFigure(
  block: SewnBlock,
  part: BlockPart,
  path: string,
  apart: (path: string) => boolean,
  arrows: (path: string) => boolean,
  alt: string,
): Figure {
  const { drawing } = block.piecing;
  const least = Math.max(drawing.width, drawing.height) * LEAST_GAP;
  const gap = Math.max(Math.max(part.box.width, part.box.height) * GAP, least);
  const pulled = pullApart(part, { gap: (at) => (apart(at) ? gap : 0), pressing: block.pressing }, path);
  const seams: readonly SeamSpot[] = pulled.seams.filter((seam) => arrows(seam.path));
  const marks = leafMarks(block, pulled.leaves, 'full');
  return framed([...marks, ...pressArrows(seams, block.grid, gap * block.grid * REACH)], alt);
}
