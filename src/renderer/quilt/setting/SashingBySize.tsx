import { setSashWidthIn } from '../../../shared/pattern/edits/index.ts';
import type { Sashing, Size } from '../../../shared/pattern/schema.ts';
import { useAct, usePattern } from '../../state/hooks.tsx';
import { WidthBySize } from '../WidthBySize.tsx';

/** The sashing's widths in every size. A size may differ on purpose; 0 leaves a strip out there. */
export function SashingBySize({ sashing }: { readonly sashing: Sashing }) {
  const { sizes } = usePattern();
  return sashing.strips.map(({ width }, i) => (
    <OneStrip
      // biome-ignore lint/suspicious/noArrayIndexKey: a strip is its place
      key={i}
      title={sashing.strips.length === 1 ? 'Width in each size' : `Strip ${i + 1} in each size`}
      strip={i}
      width={width}
      sizes={sizes}
    />
  ));
}

interface OneStripProps {
  readonly title: string;
  readonly strip: number;
  readonly width: number;
  readonly sizes: readonly Size[];
}

function OneStrip({ title, strip, width, sizes }: OneStripProps) {
  const act = useAct();
  return (
    <WidthBySize
      title={title}
      rows={sizes.map((size) => ({
        id: size.id,
        name: size.name,
        label: `${title}: ${size.name}`,
        own: size.sashing?.[strip] ?? null,
        usual: width,
        onChange: (next) => act(setSashWidthIn, { strip, size: size.id, width: next }, `sash ${strip} ${size.id}`),
      }))}
    />
  );
}
