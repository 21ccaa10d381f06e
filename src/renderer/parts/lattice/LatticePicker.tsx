import { GroundPicker, type GroundPickerProps } from './GroundPicker.tsx';
import { latticeGround } from './ground.ts';
import type { Lattice } from './lattice.ts';

type LatticePickerProps = Omit<GroundPickerProps, 'ground'> & { readonly lattice: Lattice };

/** A picker for cells that stand in columns and rows. */
export function LatticePicker({ lattice, ...rest }: LatticePickerProps) {
  return <GroundPicker ground={latticeGround(lattice)} {...rest} />;
}
