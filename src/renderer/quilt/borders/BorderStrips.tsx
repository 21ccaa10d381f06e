import type { Border } from '../../../shared/pattern/schema.ts';
import type { StripLeaf } from '../../../shared/quilt/quilt.ts';
import { Why } from '../../parts/Why.tsx';
import { useCurrentSize } from '../../state/hooks.tsx';
import styles from '../quilt.module.css';

/** What the border is cut to in the size looked at. */
export function BorderStrips({ border }: { readonly border: Border }) {
  const size = useCurrentSize();
  const strips = size?.quilt.strips.filter((strip) => strip.border === border.id) ?? [];
  if (size === null || strips.length === 0) return null;
  const sides = strips.find(({ side }) => side === 'left');
  const ends = strips.find(({ side }) => side === 'top');
  return (
    <dl className={styles.facts}>
      <dt>Cut for {size.size.name}</dt>
      <StripLine name="sides" strip={sides} />
      <StripLine name="top and bottom" strip={ends} />
    </dl>
  );
}

function StripLine({ name, strip }: { readonly name: string; readonly strip: StripLeaf | undefined }) {
  if (strip === undefined) return null;
  return (
    <dd>
      2 of <Why traced={strip.cutWidth} /> × <Why traced={strip.cutLength} />, {name}
    </dd>
  );
}
