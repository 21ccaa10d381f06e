import { sizeText } from '../measure/fraction.ts';
import type { Quilt, QuiltLeaf, QuiltPart, StripLeaf } from '../quilt/quilt.ts';
import type { Side } from '../recipe/schema.ts';
import { outward } from './apart.ts';
import { areasOf, type FigureBlock } from './blockCloth.ts';
import type { Figure, Letter, Mark } from './figure.ts';
import { boxAround, boxLine, boxOutline, framed, letter, middleOf } from './marks.ts';
import { gatherCloth } from './quiltCloth.ts';

/**
 * One border being sewn on: what is there already pale, its strips pulled out in full tone, numbered in the order they
 * are sewn, each with the size it is cut.
 * @param border the border's id
 */
export function borderFigure(quilt: Quilt, blocks: readonly FigureBlock[], border: string): Figure {
  const first = quilt.strips.findIndex((strip) => strip.border === border);
  const strips = quilt.strips.filter((strip) => strip.border === border);
  const under = [...quilt.blocks, ...quilt.patches, ...quilt.strips.slice(0, Math.max(first, 0))];
  const top = boxAround(under.flatMap((leaf) => boxOutline(leaf.box)));
  const gap = Math.max(top.width, top.height) * 0.06;
  const marks = [
    ...paleMarks(under, blocks),
    boxLine(top, 'unit'),
    ...strips.flatMap((strip, i) => stripMarks(strip, i + 1, gap)),
  ];
  const alt = `The border’s strips in the order they are sewn: ${strips.map((s) => `${s.side} ${cutText(s)}`).join(', ')}.`;
  const beside = gap * 0.7;
  return framed(marks, alt, { left: beside, right: beside, top: beside, bottom: beside });
}

/** Every border of the quilt, from the inside out. */
export function borderIds(quilt: Quilt): readonly string[] {
  return [...new Set(quilt.strips.map((strip) => strip.border))];
}

function cutText({ cutWidth, cutLength }: StripLeaf): string {
  return sizeText(cutWidth.value, cutLength.value);
}

function paleMarks(leaves: readonly QuiltLeaf[], blocks: readonly FigureBlock[]): readonly Mark[] {
  const gathering = gatherCloth(blocks);
  for (const leaf of leaves) gathering.add(leaf);
  return areasOf(gathering.cloth, 'pale', 'patch');
}

function stripMarks(strip: StripLeaf, order: number, gap: number): readonly Mark[] {
  const at = outward({ x: 0, y: 0 }, strip.side, gap);
  const box = { ...strip.box, x: strip.box.x + at.x, y: strip.box.y + at.y };
  return [
    {
      kind: 'area',
      outlines: [boxOutline(box)],
      fabric: strip.fabric,
      tone: 'full',
      edge: 'unit',
      of: `border ${strip.border}`,
    },
    letter(String(order), middleOf(box), 'number'),
    cutLetter(strip, box, gap),
  ];
}

const UPRIGHT: Readonly<Record<Side, boolean>> = { left: true, right: true, top: false, bottom: false };

/** The cut size stands outside the strip, along it. */
function cutLetter(strip: StripLeaf, box: QuiltPart['box'], gap: number): Letter {
  const middle = middleOf(box);
  const upright = UPRIGHT[strip.side];
  const reach = (upright ? box.width : box.height) / 2 + gap * 0.8;
  return { ...letter(cutText(strip), outward(middle, strip.side, reach), 'measure'), upright };
}
