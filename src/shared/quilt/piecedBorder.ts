import { afterTurn, type Box, turnSize, UNTURNED } from '../drawing/turn.ts';
import { accept, type Finding, type Maybe } from '../measure/finding.ts';
import { type Inches, longer, same } from '../measure/inches.ts';
import { motifPlace, reflectTurn } from '../pattern/reflect.ts';
import type { Border, House, Size } from '../pattern/schema.ts';
import type { Piecing } from '../piecing/piecing.ts';
import type { Side } from '../recipe/schema.ts';
import { readRow, readToken, type Token } from '../recipe/token.ts';
import { eachSide, plainCorner } from './cornerBorder.ts';
import { type Bordered, type Growing, isUpright } from './growing.ts';
import type { BlockLeaf, LaidUnits, Measure, QuiltPart } from './quilt.ts';

/** The units of a pieced border as they lie along the top, and how long one of them finishes there. */
export interface BorderUnits {
  readonly tokens: readonly Token[];
  readonly corner: Token | null;
  readonly length: Inches;
  /** Grid units in the height of one. */
  readonly high: number;
}

/**
 * Reads what a pieced border is made of.
 * @param width how high its units finish, inches; @param path where the border stands in the document
 */
export function borderUnits(
  border: Border,
  width: Inches,
  pieced: ReadonlyMap<string, Piecing>,
  path: string,
): Maybe<BorderUnits> {
  const entries = readRow(border.pieced?.units ?? '');
  const tokens = entries.filter((entry) => typeof entry !== 'string');
  const corner = border.pieced?.corner === undefined ? null : readToken(border.pieced.corner);
  // Letters that are misspelt or not there are told with the document, once and not in every size.
  if (tokens.length === 0 || tokens.length < entries.length) return { ok: false, findings: [] };
  const lengths = tokens.map((token) => lengthOf(token, width, pieced));
  const [length] = lengths;
  if (length === undefined || length === null || lengths.includes(null)) return { ok: false, findings: [] };
  const unequal = lengths.some((one) => !same(one ?? 0, length));
  const cornerLength = corner === null ? width : lengthOf(corner, width, pieced);
  if (cornerLength === null) return { ok: false, findings: [] };
  const wrong: Finding[] = [];
  if (unequal)
    wrong.push({
      level: 'stops',
      what: `The units of ${border.name} are not all of one shape.`,
      where: { path: `${path}.pieced.units`, on: 'quilt' },
      mend: 'Use units that are equally long and high.',
    });
  if (!same(cornerLength, width))
    wrong.push({
      level: 'stops',
      what: `The corner of ${border.name} is not square.`,
      where: { path: `${path}.pieced.corner`, on: 'quilt' },
      mend: 'Use a square block, or none for plain squares.',
    });
  return wrong.length > 0
    ? { ok: false, findings: wrong }
    : accept({ tokens, corner, length, high: highOf(tokens[0] as Token, pieced) });
}

/** How long a block is along the top when it finishes so high; null for one that is not there. */
function lengthOf({ name, turn }: Token, width: Inches, pieced: ReadonlyMap<string, Piecing>): Inches | null {
  const piecing = pieced.get(name);
  if (piecing === undefined) return null;
  const lying = turnSize(piecing.drawing.width, piecing.drawing.height, turn);
  return (width * lying.width) / lying.height;
}

function highOf({ name, turn }: Token, pieced: ReadonlyMap<string, Piecing>): number {
  const drawing = pieced.get(name)?.drawing ?? { width: 1, height: 1 };
  return turnSize(drawing.width, drawing.height, turn).height;
}

/** The units of a border as they are laid: as many along each side as come nearest to filling it. */
export function laidUnits(inside: Measure, width: Inches, { length, high }: BorderUnits): LaidUnits {
  return { width, length, across: unitsAlong(inside.width, length), down: unitsAlong(inside.height, length), high };
}

/** How many units of this length come nearest to filling a side: at least one. */
function unitsAlong(side: Inches, unit: Inches): number {
  return Math.max(1, Math.round(side / unit));
}

const QUARTERS: Readonly<Record<Side, 0 | 1 | 2 | 3>> = { top: 0, right: 1, bottom: 2, left: 3 };

/** A border of units: along each side as many as come nearest to filling it, and a unit or a plain square in each corner. */
export function pieceBorder(top: Growing, border: Border, width: Inches, units: BorderUnits, house: House): Bordered {
  const widths = { sides: width, ends: width };
  const { x, y } = top.box;
  return eachSide(
    top,
    border,
    widths,
    (side, box) => sideOfUnits(border, units, side, box),
    (cx, cy) => {
      const corner = units.corner;
      if (corner === null) return plainCorner(border, widths, cx, cy, house);
      const quarters = cx < x ? (cy < y ? 0 : 3) : cy < y ? 1 : 2;
      const turn = afterTurn(corner.turn, { ...UNTURNED, quarters });
      return unitLeaf(border, { ...corner, turn }, { x: cx, y: cy, width, height: width });
    },
  );
}

function unitLeaf(border: Border, { name, turn }: Token, box: Box): BlockLeaf {
  return { kind: 'block', block: name, turn, column: -1, row: -1, box, border: border.id };
}

/** The units of one side. They run clockwise round the quilt, so along the bottom and the left they are counted backwards. */
function sideOfUnits(border: Border, { tokens, length }: BorderUnits, side: Side, box: Box): QuiltPart {
  const upright = isUpright(side);
  const many = unitsAlong(upright ? box.height : box.width, length);
  const backwards = side === 'bottom' || side === 'left';
  const parts = Array.from({ length: many }, (_, i): BlockLeaf => {
    const token = unitAt(border, tokens, backwards ? many - 1 - i : i, many);
    const turn = afterTurn(token.turn, { ...UNTURNED, quarters: QUARTERS[side] });
    const own = upright
      ? { ...box, y: box.y + i * length, height: length }
      : { ...box, x: box.x + i * length, width: length };
    return unitLeaf(border, { ...token, turn }, own);
  });
  const [only] = parts;
  if (parts.length === 1 && only !== undefined) return only;
  return { kind: 'row', along: upright ? 'down' : 'across', parts, box, name: 'units' };
}

function unitAt({ pieced }: Border, tokens: readonly Token[], place: number, many: number): Token {
  const at = motifPlace(pieced?.run === 'middle' ? 'across' : undefined, place, 0, many, 1);
  const token = tokens[at.column % tokens.length] as Token;
  return at.across ? { ...token, turn: reflectTurn(token.turn, at) } : token;
}

/** A unit that is longer than the side it should lie on. */
export function tooLong(
  { box }: Growing,
  border: Border,
  { length }: BorderUnits,
  size: Size,
  path: string,
  say: (length: Inches) => string,
): Finding | null {
  const shorter = Math.min(box.width, box.height);
  if (!longer(length, shorter)) return null;
  return {
    level: 'stops',
    what: `One unit of ${border.name} is ${say(length)} long; a side of ${size.name} is only ${say(shorter)}.`,
    where: { path, size: size.name, on: 'quilt' },
    by: length - shorter,
    mend: 'Make the border narrower, or leave it out in this size.',
  };
}
