import type { Letters } from '../cloth/letters.ts';
import { letterOfPiece, patchLetters } from '../cloth/pieceLetters.ts';
import type { Point } from '../drawing/turn.ts';
import type { Piecing } from '../piecing/piecing.ts';
import type { Quilt, TopPiece } from '../quilt/quilt.ts';
import type { SizedBlock } from '../quilt/sized.ts';
import type { FigureBlock } from './blockCloth.ts';
import type { Figure, Mark } from './figure.ts';
import { boxOutline, plainArea } from './marks.ts';
import { gatherCloth } from './quiltCloth.ts';

/** Patches of the quilt that are cut from the same pieces. */
export interface Whereabouts {
  /** Letters of the cutting chart; several where a patch may be any of them. */
  readonly letters: readonly string[];
  /** Finished inches from the quilt's top left corner. */
  readonly outlines: readonly (readonly Point[])[];
}

/** What a size has of its blocks, for finding where its pieces go. */
export interface LetteredBlocks {
  readonly blocks: readonly SizedBlock[];
  readonly piecings: ReadonlyMap<string, Piecing>;
  readonly letters: Letters;
}

/** Where every piece of the cutting chart goes in the quilt. The binding is no patch and not among them. */
export function whereabouts(quilt: Quilt, lettered: LetteredBlocks): readonly Whereabouts[] {
  const gathering = gatherCloth(blocksByLetter(lettered));
  const plain = [...quilt.patches, ...quilt.triangles, ...quilt.strips];
  for (const block of quilt.blocks) gathering.add(block);
  for (const piece of plain) gathering.add(asLetter(piece, lettered.letters));
  return [...gathering.cloth].flatMap(([key, outlines]): Whereabouts[] =>
    key === null || key === '' ? [] : [{ letters: key.split(' '), outlines }],
  );
}

/** The blocks with each patch's letters in place of its role, so that cloth is gathered by letter as it is by fabric. */
function blocksByLetter({ blocks, piecings, letters }: LetteredBlocks): readonly FigureBlock[] {
  return blocks.flatMap((block): FigureBlock[] => {
    const piecing = piecings.get(block.id);
    if (piecing === undefined) return [];
    const roles = patchLetters(block, piecing, letters).map((own) => own.join(' '));
    const patches = piecing.drawing.patches.map((patch, i) => ({ ...patch, role: roles[i] ?? '' }));
    const fabricOf = Object.fromEntries(roles.map((role) => [role, role]));
    return [{ id: block.id, piecing: { drawing: { ...piecing.drawing, patches } }, fabricOf }];
  });
}

function asLetter<Piece extends Exclude<TopPiece, { kind: 'block' }>>(piece: Piece, letters: Letters): Piece {
  return { ...piece, fabric: letterOfPiece(piece, letters) ?? '' };
}

/** The letters of what lies at a spot of the quilt, finished inches; none beside it. */
export function lettersAt(where: readonly Whereabouts[], at: Point): readonly string[] {
  return where.find(({ outlines }) => outlines.some((outline) => holds(outline, at)))?.letters ?? [];
}

/** Whether a spot lies in an outline: a line to the right of it crosses the outline an odd number of times. */
function holds(outline: readonly Point[], { x, y }: Point): boolean {
  let inside = false;
  outline.forEach((a, i) => {
    const b = outline[(i + 1) % outline.length] as Point;
    if (a.y > y !== b.y > y && x < a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x)) inside = !inside;
  });
  return inside;
}

/** How many patches these letters become in the quilt. */
export function patchesOf(where: readonly Whereabouts[], lit: ReadonlySet<string>): number {
  return isLit(where, lit).reduce((sum, { outlines }) => sum + outlines.length, 0);
}

function isLit(where: readonly Whereabouts[], lit: ReadonlySet<string>): readonly Whereabouts[] {
  return where.filter(({ letters }) => letters.some((letter) => lit.has(letter)));
}

/**
 * Only what is cut by these letters, where it lies in the quilt: drawn over a pale picture of the whole.
 * @param fabricOf the fabric of each letter
 * @param binding the fabric of the binding when it is among them: a rim round the quilt
 */
export function whereFigure(
  { finished }: Pick<Quilt, 'finished'>,
  where: readonly Whereabouts[],
  lit: ReadonlySet<string>,
  fabricOf: ReadonlyMap<string, string>,
  binding: string | null,
): Figure {
  const [width, height] = [finished.width.value, finished.height.value];
  const marks: Mark[] = isLit(where, lit).map(({ letters, outlines }) => {
    const fabric = fabricOf.get(letters.find((letter) => lit.has(letter)) ?? '') ?? null;
    return plainArea(outlines, fabric, 'full', 'unit');
  });
  if (binding !== null) marks.push(rim(width, height, binding));
  return { width, height, marks, alt: 'Where the pieces go in the quilt.' };
}

/** Four strips round the quilt, wide enough to be seen in a small picture. */
function rim(width: number, height: number, fabric: string): Mark {
  const wide = Math.max(width, height) * 0.02;
  const boxes = [
    { x: 0, y: 0, width, height: wide },
    { x: 0, y: height - wide, width, height: wide },
    { x: 0, y: 0, width: wide, height },
    { x: width - wide, y: 0, width: wide, height },
  ];
  return plainArea(boxes.map(boxOutline), fabric, 'full', 'patch');
}
