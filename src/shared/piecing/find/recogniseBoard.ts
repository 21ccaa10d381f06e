import { MEANT } from '../../drawing/near.ts';
import { type Turn, UNTURNED } from '../../drawing/turn.ts';
import type { Shape } from '../shape.ts';
import type { LooseLeaf } from '../sub.ts';
import type { Held } from './match.ts';

/** Equal rectangles in columns and rows, each cell with its patch. */
interface Board {
  readonly columns: number;
  readonly rows: number;
  /** Row by row. */
  readonly cells: readonly { readonly index: number; readonly role: string }[];
}

/** The units of equal squares or strips: four-patch, nine-patch, checkerboard, rails. Every patch is a rectangle. */
export function recogniseBoard(held: Held): LooseLeaf | null {
  const board = boardOf(held);
  if (board === null) return null;
  const { columns, rows } = board;
  if (columns === 1 || rows === 1) return rails(held, board);
  const { width, height } = held.box;
  if (!near(width / columns, height / rows)) return null;
  if (columns === 2 && rows === 2) return fourPatch(held, board);
  if (columns === 3 && rows === 3) return ninePatch(held, board);
  return checkerboard(held, board);
}

function near(a: number, b: number): boolean {
  return Math.abs(a - b) < 2 * MEANT;
}

function boardOf({ box, patches }: Held): Board | null {
  const [first] = patches;
  if (first === undefined) return null;
  const { width, height } = first.patch.box;
  const [columns, rows] = [Math.round(box.width / width), Math.round(box.height / height)];
  if (columns * rows !== patches.length) return null;
  const cells: Board['cells'][number][] = [];
  for (const { index, patch } of patches) {
    const own = patch.box;
    const even = near(own.width * columns, box.width) && near(own.height * rows, box.height);
    const [column, row] = [((own.x - box.x) / box.width) * columns, ((own.y - box.y) / box.height) * rows];
    if (!even || !near(column, Math.round(column)) || !near(row, Math.round(row))) return null;
    cells[Math.round(row) * columns + Math.round(column)] = { index, role: patch.role };
  }
  return { columns, rows, cells };
}

function leafOf({ box }: Held, shape: Shape, board: Board, turn: Turn = UNTURNED): LooseLeaf {
  return { kind: 'unit', shape, turn, box, patches: board.cells.map(({ index }) => index) };
}

/** Strips are longer than they are wide: squares in a row are only a row. */
function rails(held: Held, board: Board): LooseLeaf | null {
  const { width, height } = held.box;
  const { rows, cells } = board;
  if (cells.length < 2) return null;
  const lying = rows > 1;
  const [length, across] = lying ? [width, height] : [height, width];
  if (length <= across / cells.length + 2 * MEANT) return null;
  const roles = cells.map(({ role }) => role);
  const shape: Shape = { kind: 'rails', width: length, height: across, roles };
  if (lying) return leafOf(held, shape, board);
  // Turned a quarter clockwise, the upper strip comes to the right: strips left to right are read from the last on.
  const turned = { ...board, cells: [...cells].reverse() };
  return leafOf(held, { ...shape, roles: [...roles].reverse() }, turned, { quarters: 1, mirrored: false });
}

function roleAt({ columns, cells }: Board, column: number, row: number): string {
  return (cells[row * columns + column] as Board['cells'][number]).role;
}

/** The two roles of a board whose squares alternate; null when they do not. */
function alternating(board: Board): readonly [string, string] | null {
  const [first, other] = [roleAt(board, 0, 0), roleAt(board, 1, 0)];
  if (first === other) return null;
  const even = board.cells.every(({ role }, i) => {
    const place = (i % board.columns) + Math.floor(i / board.columns);
    return role === (place % 2 === 0 ? first : other);
  });
  return even ? [first, other] : null;
}

function fourPatch(held: Held, board: Board): LooseLeaf | null {
  const roles = alternating(board);
  if (roles === null) return null;
  const [a, b, c, d] = board.cells as [Cell, Cell, Cell, Cell];
  const { width, height } = held.box;
  // The trade goes round a four-patch, not row by row.
  return leafOf(held, { kind: 'four-patch', width, height, roles }, { ...board, cells: [a, b, d, c] });
}

type Cell = Board['cells'][number];

function ninePatch(held: Held, board: Board): LooseLeaf | null {
  const [corner, side, middle] = [roleAt(board, 0, 0), roleAt(board, 1, 0), roleAt(board, 1, 1)];
  const places = [corner, side, corner, side, middle, side, corner, side, corner];
  if (corner === side || board.cells.some(({ role }, i) => role !== places[i])) return null;
  const { width, height } = held.box;
  return leafOf(held, { kind: 'nine-patch', width, height, roles: [corner, side, middle] }, board);
}

function checkerboard(held: Held, board: Board): LooseLeaf | null {
  const roles = alternating(board);
  if (roles === null) return null;
  const { columns, rows } = board;
  const { width, height } = held.box;
  return leafOf(held, { kind: 'checkerboard', width, height, columns, rows, roles }, board);
}
