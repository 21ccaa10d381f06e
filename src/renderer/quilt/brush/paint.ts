import type { Point } from '../../../shared/drawing/turn.ts';
import {
  copyBlock,
  placeBlocks,
  setBorderCorners,
  setBorderFabric,
  setCornerstones,
  setRoleFabric,
  setSashStrip,
  setShift,
  setTriangles,
} from '../../../shared/pattern/edits/index.ts';
import type { BlockChoice, Pattern } from '../../../shared/pattern/schema.ts';
import type { BlockLeaf, PatchLeaf, StripLeaf, TriangleLeaf } from '../../../shared/quilt/quilt.ts';
import type { WorkedOut, WorkedSize } from '../../../shared/workroom/workedOut.ts';
import type { Cell } from '../../parts/lattice/lattice.ts';
import type { Studio } from '../../state/studio.ts';
import { quiltGround } from '../quiltGround.ts';
import { type Brush, quiltStore } from '../quiltStore.ts';
import { alongWay, touchedAt } from './touched.ts';

let strokes = 0;

/** Paints along a way drawn over the quilt. One stroke is one act, whatever it passes over. */
export function paint(studio: Studio, worked: WorkedOut, size: WorkedSize, brush: Brush, way: readonly Point[]): void {
  strokes += 1;
  const mark = `stroke ${strokes}`;
  const { quilt } = size;
  const points = alongWay(way, Math.min(quilt.block.width, quilt.block.height) / 24);
  if (brush.kind === 'block') {
    paintBlocks(studio, size, brush.block, points, mark);
    return;
  }
  for (const at of points) {
    const touched = touchedAt(quilt, worked.blocks, at);
    if (touched?.kind === 'role') paintRole(studio, touched.leaf, touched.role, brush.fabric, mark);
    else if (touched !== null) paintPiece(studio, touched.piece, brush.fabric, mark);
  }
}

function scopeOf(studio: Studio): string | null {
  return quiltStore.getState().scope === 'one' ? studio.store.getState().size : null;
}

function paintBlocks(
  studio: Studio,
  { quilt }: WorkedSize,
  block: string,
  points: readonly Point[],
  mark: string,
): void {
  const ground = quiltGround(quilt);
  const cells = new Map<string, Cell>();
  for (const at of points) {
    const cell = ground.at(at);
    if (cell !== null) cells.set(`${cell.column} ${cell.row}`, cell);
  }
  if (cells.size > 0) studio.act(placeBlocks, { cells: [...cells.values()], block, size: scopeOf(studio) }, mark);
}

/** A role takes the fabric in every block of its letter; or only in the block touched, which then has a letter of its own. */
function paintRole(studio: Studio, leaf: BlockLeaf, role: string, fabric: string, mark: string): void {
  const pattern = studio.store.getState().history?.now;
  if (pattern === undefined) return;
  if (quiltStore.getState().alone && leaf.border === undefined) paintAlone(studio, pattern, leaf, role, fabric, mark);
  else studio.act(setRoleFabric, { block: leaf.block, role, fabric }, mark);
}

function paintAlone(
  studio: Studio,
  pattern: Pattern,
  leaf: BlockLeaf,
  role: string,
  fabric: string,
  mark: string,
): void {
  const like = pattern.blocks.find(({ id }) => id === leaf.block);
  if (like === undefined || like.fabrics[role] === fabric) return;
  const wanted = { ...like.fabrics, [role]: fabric };
  const cells = [{ column: leaf.column, row: leaf.row }];
  const known = pattern.blocks.find((one) => isSame(one, like, wanted));
  const block = known?.id ?? copied(studio, like.id, mark);
  if (block === null) {
    studio.say('A pattern has 26 blocks at most: every letter is taken.', { tone: 'stops' });
    return;
  }
  if (known === undefined) studio.act(setRoleFabric, { block, role, fabric }, mark);
  studio.act(placeBlocks, { cells, block, size: scopeOf(studio) }, mark);
}

/** The letter of a copy of a block; null when every letter is taken. */
function copied(studio: Studio, block: string, mark: string): string | null {
  const blocks = () => studio.store.getState().history?.now.blocks ?? [];
  const before = blocks().length;
  studio.act(copyBlock, { block }, mark);
  return blocks().length > before ? (blocks().at(-1)?.id ?? null) : null;
}

/** Whether a block is made as another is, of these fabrics. */
function isSame(one: BlockChoice, like: BlockChoice, fabrics: BlockChoice['fabrics']): boolean {
  const made = ({ recipe, parameters, places = 1 }: BlockChoice) => JSON.stringify([recipe, parameters, places]);
  const roles = new Set([...Object.keys(one.fabrics), ...Object.keys(fabrics)]);
  return made(one) === made(like) && [...roles].every((role) => one.fabrics[role] === fabrics[role]);
}

function paintPiece(studio: Studio, piece: StripLeaf | PatchLeaf | TriangleLeaf, fabric: string, mark: string): void {
  if (piece.kind === 'strip') studio.act(setBorderFabric, { border: piece.border, fabric }, mark);
  else if (piece.use === 'edge-cornerstone' || piece.use === 'cornerstone')
    studio.act(setCornerstones, { fabric }, mark);
  else if (piece.kind === 'triangle')
    studio.act(setTriangles, piece.use === 'corner' ? { corners: fabric } : { fabric }, mark);
  else if (piece.use === 'sashing') studio.act(setSashStrip, { strip: piece.sash?.strip ?? 0, fabric }, mark);
  else if (piece.use === 'filler') paintFiller(studio, fabric, mark);
  else if (piece.border !== undefined) paintCorner(studio, piece.border, fabric, mark);
}

function paintFiller(studio: Studio, fabric: string, mark: string): void {
  const setting = studio.store.getState().history?.now.setting;
  if (setting?.kind === 'strips') studio.act(setShift, { shift: setting.shift ?? null, fill: fabric }, mark);
}

/** The squares of a border of blocks are of its own fabric; those between plain strips have one of theirs. */
function paintCorner(studio: Studio, id: string, fabric: string, mark: string): void {
  const border = studio.store.getState().history?.now.borders.find((one) => one.id === id);
  if (border === undefined) return;
  if (border.pieced !== undefined) studio.act(setBorderFabric, { border: id, fabric }, mark);
  else studio.act(setBorderCorners, { border: id, corners: 'cornerstones', cornerstones: fabric }, mark);
}
