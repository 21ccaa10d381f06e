import { setBorderWidthIn } from '../../../shared/pattern/edits/index.ts';
import type { Border } from '../../../shared/pattern/schema.ts';
import { useAct, usePattern } from '../../state/hooks.tsx';
import { WidthBySize } from '../WidthBySize.tsx';

/** The border's width in every size. A size may differ on purpose; 0 leaves the border out there. */
export function BorderBySize({ border }: { readonly border: Border }) {
  const { sizes } = usePattern();
  const act = useAct();
  return (
    <WidthBySize
      rows={sizes.map(({ id, name, borders }) => ({
        id,
        name,
        label: `Width in ${name}`,
        own: borders[border.id] ?? null,
        usual: border.width,
        onChange: (width) => act(setBorderWidthIn, { border: border.id, size: id, width }, `border ${border.id} ${id}`),
      }))}
    />
  );
}
