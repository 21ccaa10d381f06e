import { borderWays } from '../../../shared/cloth/borderWays.ts';
import { setBorderCut } from '../../../shared/pattern/edits/index.ts';
import type { Border } from '../../../shared/pattern/schema.ts';
import { Choice } from '../../parts/Choice.tsx';
import { useAct, useCurrentSize, usePattern, useRuler } from '../../state/hooks.tsx';

const WAYS = [
  { id: 'straight', says: 'Across, joined straight' },
  { id: 'diagonal', says: 'Across, joined on the diagonal' },
  { id: 'lengthwise', says: 'Along the cloth, in one piece' },
] as const;

/** How a border's strips are cut, with the cloth each way takes in the size looked at. */
export function BorderCut({ border }: { readonly border: Border }) {
  const act = useAct();
  const ruler = useRuler();
  const pattern = usePattern();
  const worked = useCurrentSize();
  const ways = worked === null ? [] : borderWays(worked.quilt, border, pattern);
  const now = border.lengthwise === true ? 'lengthwise' : (border.joins ?? 'straight');
  const options = WAYS.map(({ id, says }) => {
    const way = ways.find((one) => one.way === id);
    return way === undefined
      ? { id, says }
      : { id, says, more: `${ruler.cloth(way.yards.value)}, ${joinsText(way.joins)}` };
  });
  return (
    <Choice
      label={worked === null ? 'Strips are cut' : `Strips are cut, and what that takes in ${worked.size.name}`}
      lie="list"
      value={now}
      options={options}
      onChange={(way) => act(setBorderCut, { border: border.id, way })}
    />
  );
}

function joinsText(joins: number): string {
  if (joins === 0) return 'no joins';
  return joins === 1 ? '1 join' : `${joins} joins`;
}
