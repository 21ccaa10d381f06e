import { Pick } from '../../parts/Pick.tsx';
import { useCompare } from '../../state/hooks.tsx';
import { useMattresses } from '../finder/useMattresses.ts';
import { quiltStore, useQuiltState } from '../quiltStore.ts';
import { EACH } from './BedOver.tsx';

const NONE = 'none';

/** Which bed sizes side by side are laid on. */
export function BedPick() {
  const compare = useCompare();
  return compare ? <Beds /> : null;
}

function Beds() {
  const bed = useQuiltState((state) => state.bed);
  const { all } = useMattresses();
  return (
    <Pick
      label="Laid on a bed"
      bare
      value={bed ?? NONE}
      options={[
        { id: NONE, name: 'On no bed' },
        { id: EACH, name: 'On the bed that suits each' },
        ...all.map(({ id, name }) => ({ id, name: `On ${name}` })),
      ]}
      onChange={(id) => quiltStore.setState({ bed: id === NONE ? null : id })}
    />
  );
}
