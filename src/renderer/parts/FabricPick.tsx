import { usePattern } from '../state/hooks.tsx';
import { FabricSwatch } from './FabricSwatch.tsx';
import { Pick } from './Pick.tsx';

export interface FabricPickProps {
  readonly label: string;
  /** The fabric's id. */
  readonly value: string;
  readonly onChange: (fabric: string) => void;
  readonly bare?: boolean;
}

/** One of the pattern's fabrics, with its snip of cloth. */
export function FabricPick({ label, value, onChange, bare = false }: FabricPickProps) {
  const { fabrics } = usePattern();
  const options = fabrics.map(({ id, name, colour, photograph }) => ({
    id,
    name,
    says: <FabricSwatch colour={colour} name={name} photograph={photograph} />,
  }));
  return <Pick label={label} value={value} options={options} onChange={onChange} bare={bare} />;
}
