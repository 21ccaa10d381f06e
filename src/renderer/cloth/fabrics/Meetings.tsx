import { neighboursIn } from '../../../shared/fit/fitValues.ts';
import { greyOf } from '../../../shared/fit/lightness.ts';
import type { WorkedOut } from '../../../shared/workroom/workedOut.ts';
import { Mark } from '../../parts/Mark.tsx';
import styles from '../cloth.module.css';
import own from './fabrics.module.css';

/** So many pairs are shown: those with the least contrast are the ones to look at. */
const SHOWN = 12;
/** Below this difference of lightness two values blur (common practice). */
const BLUR = 12;

/** Fabrics that lie side by side in a block, the least contrast first, seen without their colour. */
export function Meetings({ worked }: { readonly worked: WorkedOut }) {
  const { pattern, blocks } = worked;
  const valued = blocks.map(({ id, piecing, fabricOf }) => ({ id, drawing: piecing.drawing, fabricOf }));
  const pairs = neighboursIn(pattern, valued).slice(0, SHOWN);
  const byId = new Map(pattern.fabrics.map((fabric) => [fabric.id, fabric]));
  if (pairs.length === 0) return null;
  return (
    <section className={styles.section} aria-labelledby="meetings">
      <h2 id="meetings">Side by side</h2>
      <ul className={own.pairs}>
        {pairs.map(({ block, a, b, contrast }) => {
          const [one, two] = [byId.get(a), byId.get(b)];
          if (one === undefined || two === undefined) return null;
          const blurs = one.value !== two.value && contrast < BLUR;
          return (
            <li key={`${block} ${a} ${b}`} className={own.pair}>
              <span className={own.meeting} aria-hidden="true">
                <i style={{ background: one.colour }} />
                <i style={{ background: two.colour }} />
                <i style={{ background: greyOf(one.colour) }} />
                <i style={{ background: greyOf(two.colour) }} />
              </span>
              <span>
                {one.name} and {two.name}, block {block}
                <span className={styles.under}>
                  {blurs ? <Mark of="look" /> : null} {Math.round(contrast)} of 100 apart
                  {blurs ? ': they blur' : one.value === two.value ? `, both ${one.value}` : ''}
                </span>
              </span>
            </li>
          );
        })}
      </ul>
    </section>
  );
}
