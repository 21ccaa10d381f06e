import { sizeText } from '../measure/fraction.ts';
import type { Units } from '../measure/metric.ts';
import type { Log } from '../piecing/piecing.ts';
import { isLeaf, leavesOf } from '../piecing/tree.ts';
import { outlineOf, piecesOf } from '../quilt/onPoint/pieces.ts';
import type { Quilt, QuiltLeaf, QuiltPart, StripLeaf, TopPiece } from '../quilt/quilt.ts';
import type { Scraps } from '../quilt/scraps.ts';
import type { Side } from '../recipe/schema.ts';
import { HERE, outward } from './apart.ts';
import { areasOf, type FigureBlock } from './blockCloth.ts';
import type { Figure, Letter, Mark } from './figure.ts';
import { boxAround, boxLine, framed, letter, middleOf } from './marks.ts';
import { gatherCloth, pieceLine } from './quiltCloth.ts';
import { scrapsIn } from './scraps.ts';

/**
 * One border being sewn on: what is there already pale, its strips pulled out in full tone, numbered in the order they
 * are sewn, each with the size it is cut.
 * @param border the border's id
 */
export function borderFigure(
  quilt: Quilt,
  blocks: readonly FigureBlock[],
  border: string,
  units: Units = 'inches',
): Figure {
  const { before, logs } = borderIn(quilt.root, border);
  const under = before.flatMap((part) => leavesOf<QuiltLeaf>(part)).flatMap(piecesOf);
  const top = boxAround(under.flatMap((leaf) => [...outlineOf(leaf)]));
  const gap = Math.max(top.width, top.height) * 0.06;
  const marks = [
    ...paleMarks(under, blocks, scrapsIn(quilt, blocks)),
    boxLine(top, 'unit'),
    ...logs.flatMap((log, i) => logMarks(log, i + 1, gap, blocks, units, scrapsIn(quilt, blocks))),
  ];
  const strips = logs.flatMap(({ part }) => leavesOf<QuiltLeaf>(part)).filter((leaf) => leaf.kind === 'strip');
  const sewn = strips.length > 0 ? strips.map((s) => `${s.side} ${cutText(s, units)}`) : logs.map(({ side }) => side);
  const alt = `The border’s strips in the order they are sewn: ${sewn.join(', ')}.`;
  const beside = gap * 0.7;
  return framed(marks, alt, { left: beside, right: beside, top: beside, bottom: beside });
}

/** Every border of the quilt, from the inside out. */
export function borderIds(quilt: Quilt): readonly string[] {
  const all = [...quilt.strips, ...quilt.blocks, ...quilt.patches].flatMap(({ border }) => border ?? []);
  return [...new Set(all)];
}

interface BorderIn {
  /** What is sewn before the border. */
  readonly before: readonly QuiltPart[];
  readonly logs: readonly Log<QuiltLeaf>[];
}

function borderIn(root: QuiltPart, border: string): BorderIn {
  if (isLeaf<QuiltLeaf>(root) || root.kind !== 'rounds') return { before: [root], logs: [] };
  const first = root.logs.findIndex((log) => isOf(log, border));
  if (first < 0) return borderIn(root.core, border);
  const before = [root.core, ...root.logs.slice(0, first).map((log) => log.part)];
  return { before, logs: root.logs.filter((log) => isOf(log, border)) };
}

function isOf({ part }: Log<QuiltLeaf>, border: string): boolean {
  return leavesOf<QuiltLeaf>(part).some((leaf) => leaf.kind !== 'on-point' && leaf.border === border);
}

function cutText({ cutWidth, cutLength }: StripLeaf, units: Units): string {
  return sizeText(cutWidth.value, cutLength.value, units);
}

function paleMarks(leaves: readonly TopPiece[], blocks: readonly FigureBlock[], scraps?: Scraps): readonly Mark[] {
  const gathering = gatherCloth(blocks, scraps);
  for (const leaf of leaves) gathering.add(leaf);
  return areasOf(gathering.cloth, 'pale', 'patch');
}

function logMarks(
  { side, part }: Log<QuiltLeaf>,
  order: number,
  gap: number,
  blocks: readonly FigureBlock[],
  units: Units,
  scraps?: Scraps,
): readonly Mark[] {
  const by = outward(HERE, side, gap);
  const leaves = leavesOf<QuiltLeaf>(part).flatMap(piecesOf);
  const gathering = gatherCloth(blocks, scraps);
  for (const leaf of leaves) gathering.add(leaf, by);
  const box = { ...part.box, x: part.box.x + by.x, y: part.box.y + by.y };
  const strips = leaves.filter((leaf) => leaf.kind === 'strip');
  const border = leaves.flatMap((leaf) => ('border' in leaf ? (leaf.border ?? []) : []))[0];
  return [
    ...areasOf(gathering.cloth, 'full', 'unit', border === undefined ? undefined : `border ${border}`),
    ...leaves.map((leaf) => pieceLine(leaf, by)),
    letter(String(order), middleOf(box), 'number'),
    ...strips.slice(0, 1).map((strip) => cutLetter(strip, box, gap, units)),
  ];
}

const UPRIGHT: Readonly<Record<Side, boolean>> = { left: true, right: true, top: false, bottom: false };

/** The cut size stands outside the strip, along it. */
function cutLetter(strip: StripLeaf, box: QuiltPart['box'], gap: number, units: Units): Letter {
  const middle = middleOf(box);
  const upright = UPRIGHT[strip.side];
  const reach = (upright ? box.width : box.height) / 2 + gap * 0.8;
  return { ...letter(cutText(strip, units), outward(middle, strip.side, reach), 'measure'), upright };
}
