import { MARGIN } from '../../../shared/diagrams/sheet.ts';
import type { Ruler } from '../../../shared/measure/ruler.ts';
import type { Mattress } from '../../../shared/pattern/mattresses.ts';
import type { Quilt } from '../../../shared/quilt/quilt.ts';
import { PIXELS_PER_POINT } from '../../parts/figure/penOnScreen.ts';
import { useMattresses } from '../finder/useMattresses.ts';
import styles from '../quilt.module.css';
import { useQuiltState } from '../quiltStore.ts';

const RIM = MARGIN * PIXELS_PER_POINT;

/** "The bed that suits each". */
export const EACH = 'each';

/** The mattress each quilt is laid on; null for none. */
export function useBeds(): (quilt: Quilt) => Mattress | null {
  const bed = useQuiltState((state) => state.bed);
  const { all } = useMattresses();
  if (bed === null) return () => null;
  return (quilt) => (bed === EACH ? suiting(quilt, all) : (all.find(({ id }) => id === bed) ?? null));
}

/** How far a bed quilt mostly hangs over the sides of a mattress: common practice, from memory. */
const USUAL_DROP = 12;

/** Of the mattresses a quilt covers, the one over whose sides it hangs most nearly as usual; else the smallest of all. */
export function suiting(quilt: Quilt, mattresses: readonly Mattress[]): Mattress | null {
  const covered = mattresses.filter((one) => hangs(quilt, one).sides >= 0 && hangs(quilt, one).foot >= 0);
  const off = (one: Mattress) => Math.abs(hangs(quilt, one).sides - USUAL_DROP) + hangs(quilt, one).foot / 100;
  const [first, ...others] = covered;
  if (first !== undefined) return others.reduce((best, one) => (off(one) < off(best) ? one : best), first);
  return mattresses.toSorted((a, b) => a.width * a.length - b.width * b.length)[0] ?? null;
}

interface Hangs {
  /** How far it hangs over each side and over the foot; below zero, the mattress shows. */
  readonly sides: number;
  readonly foot: number;
}

function hangs({ finished }: Quilt, { width, length }: Mattress): Hangs {
  return { sides: (finished.width.value - width) / 2, foot: finished.height.value - length };
}

/**
 * What lies on the mattress stays light; what hangs over its sides and its foot is in the shade. A mattress the quilt does not
 * cover is not drawn: it would lie over what stands beside the quilt.
 */
export function BedOver({ quilt, bed }: { readonly quilt: Quilt; readonly bed: Mattress }) {
  const [wide, high] = [quilt.finished.width.value, quilt.finished.height.value];
  const { sides, foot } = hangs(quilt, bed);
  if (sides < 0 || foot < 0) return null;
  const top = `M${sides} 0h${bed.width}v${bed.length}h${-bed.width}Z`;
  return (
    <svg
      className={styles.bed}
      style={{ inset: RIM, width: `calc(100% - ${2 * RIM}px)`, height: `calc(100% - ${2 * RIM}px)` }}
      viewBox={`0 0 ${wide} ${high}`}
      aria-hidden="true"
      focusable="false"
    >
      <path d={`M0 0H${wide}V${high}H0Z${top}`} fillRule="evenodd" fill="rgb(18 20 28 / 0.42)" />
      <path d={top} fill="none" stroke="var(--cloth-bare)" strokeWidth="4" vectorEffect="non-scaling-stroke" />
      <path d={top} fill="none" stroke="var(--cloth-thread)" strokeWidth="1.5" vectorEffect="non-scaling-stroke" />
    </svg>
  );
}

/** How the quilt lies on the bed, in words. */
export function bedWords(quilt: Quilt, bed: Mattress, ruler: Ruler): string {
  const { sides, foot } = hangs(quilt, bed);
  if (sides < 0 || foot < 0) return `Too small for ${bed.name}`;
  return `On ${bed.name}: ${ruler.length(sides)} over the sides, ${ruler.length(foot)} at the foot`;
}
