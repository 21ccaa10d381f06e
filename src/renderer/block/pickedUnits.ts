import { useMemo } from 'react';
import type { Piecing, UnitKey } from '../../shared/piecing/piecing.ts';
import { leavesOf } from '../../shared/piecing/tree.ts';
import { insidePlaces, withInside } from '../../shared/piecing/unitsInside.ts';
import type { WorkedBlock } from '../../shared/workroom/workedOut.ts';
import { useSelection } from '../state/hooks.tsx';
import { cellLattice, gridInches, unitsIn } from './grid.ts';
import type { ShownBlock } from './useShownBlock.ts';

const NONE: ReadonlySet<UnitKey> = new Set();

/** The units that hold any of these patches: those they stand in, and those inside these. */
export function unitsHolding(piecing: Piecing, patches: readonly number[]): ReadonlySet<UnitKey> {
  const wanted = new Set(patches);
  const holds = (place: readonly number[]) => place.some((patch) => wanted.has(patch));
  const leaves = leavesOf(piecing.root).filter((leaf) => holds(leaf.patches));
  const inside = withInside(piecing.units).filter(({ key }) => insidePlaces(piecing, key).some(holds));
  return new Set([...leaves.map(({ unit }) => unit), ...inside.map(({ key }) => key)]);
}

/** The units that what is picked on the block lies in: patches of a drawing, or cells of a grid. */
export function useUnitsPicked(shown: ShownBlock, block: WorkedBlock): ReadonlySet<UnitKey> {
  const [selection] = useSelection();
  return useMemo(() => {
    if (!('block' in selection) || selection.block !== block.id) return NONE;
    if (selection.kind === 'patches') return unitsHolding(block.piecing, selection.patches);
    if (selection.kind !== 'cells') return NONE;
    const grid = gridInches(shown, block);
    const lattice = cellLattice(shown, block, grid);
    return lattice === null ? NONE : new Set(unitsIn(selection.cells, lattice, block, grid));
  }, [selection, shown, block]);
}
