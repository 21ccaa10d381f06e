import { Choice } from '../../parts/Choice.tsx';
import { usePattern } from '../../state/hooks.tsx';

/** Which block stands in the places picked; nothing when the pattern has only one. */
export function BlockThere({ onPlace }: { readonly onPlace: (block: string) => void }) {
  const { blocks } = usePattern();
  if (blocks.length < 2) return null;
  const many = blocks.length > 6;
  return (
    <Choice
      label="Block there"
      lie={many ? 'list' : 'row'}
      value=""
      options={blocks.map(({ id, name }) => ({ id, says: many ? `${id} ${name}` : id }))}
      onChange={onPlace}
    />
  );
}
