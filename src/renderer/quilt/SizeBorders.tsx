import { setBorderWidthIn } from '../../shared/pattern/edits/index.ts';
import type { Size } from '../../shared/pattern/schema.ts';
import { PanelPart } from '../app/SidePanel.tsx';
import { useAct, usePattern } from '../state/hooks.tsx';
import { WidthBySize } from './WidthBySize.tsx';

/** The borders as this size has them. */
export function SizeBorders({ size }: { readonly size: Size }) {
  const { borders } = usePattern();
  const act = useAct();
  if (borders.length === 0) return null;
  return (
    <PanelPart title="Borders in this size">
      <WidthBySize
        same="as others"
        rows={borders.map(({ id, name, width }) => ({
          id,
          name,
          label: `${name} in ${size.name}`,
          own: size.borders[id] ?? null,
          usual: width,
          onChange: (next) =>
            act(setBorderWidthIn, { border: id, size: size.id, width: next }, `border ${id} ${size.id}`),
        }))}
      />
    </PanelPart>
  );
}
