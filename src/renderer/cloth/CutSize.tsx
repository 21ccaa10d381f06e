import type { PieceLine } from '../../shared/cloth/cloth.ts';
import { same } from '../../shared/measure/inches.ts';
import { Why } from '../parts/Why.tsx';

/** What a piece is cut to: a square by one measure, a strip for a strip set by its width, anything else by both. */
export function CutSize({ line }: { readonly line: PieceLine }) {
  if (line.cutAs === 'strip-set') {
    return (
      <>
        <Why traced={line.height} /> strips
      </>
    );
  }
  if (same(line.width.value, line.height.value)) {
    return (
      <>
        <Why traced={line.width} /> square
      </>
    );
  }
  return (
    <>
      <Why traced={line.height} /> × <Why traced={line.width} />
    </>
  );
}
