import { FabricSwatch } from '../../parts/FabricSwatch.tsx';
import { Pick } from '../../parts/Pick.tsx';
import { usePattern } from '../../state/hooks.tsx';

interface FabricOrProps {
  readonly label: string;
  /** The fabric's id; null for none of its own. */
  readonly value: string | null;
  /** What no fabric of its own means: "As the side triangles". */
  readonly or: string;
  readonly onChange: (fabric: string | null) => void;
}

const NONE = '*';

/** One of the pattern's fabrics, or none with what that means. */
export function FabricOr({ label, value, or, onChange }: FabricOrProps) {
  const { fabrics } = usePattern();
  const options = fabrics.map(({ id, name, colour }) => ({
    id,
    name,
    says: <FabricSwatch colour={colour} name={name} />,
  }));
  return (
    <Pick
      label={label}
      value={value ?? NONE}
      options={[{ id: NONE, name: or }, ...options]}
      onChange={(id) => onChange(id === NONE ? null : id)}
    />
  );
}
