import type { BlockLeaf, Quilt } from '../../shared/quilt/quilt.ts';
import type { Cell } from '../parts/lattice/lattice.ts';
import { settingBlocks } from './quiltGround.ts';

type ByPlace = ReadonlyMap<string, BlockLeaf>;

// A large quilt is asked for thousands of places while a box is drawn over it.
const known = new WeakMap<Quilt, ByPlace>();

function placesOf(quilt: Quilt): ByPlace {
  const found = known.get(quilt) ?? new Map(settingBlocks(quilt).map((leaf) => [`${leaf.column} ${leaf.row}`, leaf]));
  known.set(quilt, found);
  return found;
}

/** The block that stands in a place of the quilt. */
export function blockIn(quilt: Quilt, { column, row }: Cell): BlockLeaf | undefined {
  return placesOf(quilt).get(`${column} ${row}`);
}
