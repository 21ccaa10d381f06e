import { inksFor } from '../../../shared/diagrams/hatches.ts';
import { DARK_BELOW, greyOf, LIGHT_FROM, lightnessOf } from '../../../shared/fit/lightness.ts';
import type { Fabric } from '../../../shared/pattern/schema.ts';
import type { WorkedOut } from '../../../shared/workroom/workedOut.ts';
import styles from '../cloth.module.css';
import { FabricName } from '../FabricName.tsx';
import own from './fabrics.module.css';
import { HatchSwatch } from './HatchSwatch.tsx';

/** Every fabric from light to dark, in colour, without it, and by the hatch that stands for it in black and white. */
export function ValueChart({ worked }: { readonly worked: WorkedOut }) {
  const { fabrics } = worked.pattern;
  const inks = inksFor(fabrics);
  const byLightness = fabrics.toSorted((a, b) => lightnessOf(b.colour) - lightnessOf(a.colour));
  return (
    <section className={styles.section} aria-labelledby="values">
      <h2 id="values">From light to dark</h2>
      <table className={styles.chart}>
        <thead>
          <tr>
            <th scope="col">Fabric</th>
            <th scope="col">Said to be</th>
            <th scope="col">Lightness, 0 to 100</th>
            <th scope="col">In colour</th>
            <th scope="col">Without</th>
            <th scope="col">Printed without colour</th>
          </tr>
        </thead>
        <tbody>
          {byLightness.map((fabric) => (
            <tr key={fabric.id}>
              <th scope="row">
                <FabricName fabric={fabric} />
              </th>
              <td>{fabric.value}</td>
              <td>
                <Scale fabric={fabric} />
              </td>
              <td>
                <Bands colours={coloursOf(fabric)} />
              </td>
              <td>
                <Bands colours={coloursOf(fabric).map(greyOf)} />
              </td>
              <td>
                <HatchSwatch ink={inks.find((ink) => ink.fabric === fabric.id)} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="quiet small">
        Below {DARK_BELOW} cloth reads as dark, from {LIGHT_FROM} as light (CIE lightness, in thirds).
      </p>
    </section>
  );
}

function coloursOf({ colour, scraps }: Fabric): readonly string[] {
  return scraps === undefined ? [colour] : scraps.map((scrap) => scrap.colour);
}

/** Where the fabric lies between black and white; every scrap has a mark of its own. */
function Scale({ fabric }: { readonly fabric: Fabric }) {
  const all = coloursOf(fabric).map(lightnessOf);
  const mean = Math.round(all.reduce((sum, one) => sum + one, 0) / all.length);
  return (
    <span className={own.scale}>
      <span className={own.line} aria-hidden="true">
        {[DARK_BELOW, LIGHT_FROM].map((at) => (
          <i key={at} className={own.third} style={{ left: `${at}%` }} />
        ))}
        {all.map((at, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: scraps have no name of their own but their place
          <b key={i} className={own.mark} style={{ left: `${at}%` }} />
        ))}
      </span>
      <span className="figures">{mean}</span>
    </span>
  );
}

function Bands({ colours }: { readonly colours: readonly string[] }) {
  return (
    <span className={own.bands} aria-hidden="true">
      {colours.map((colour, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: two scraps may have one colour
        <i key={i} style={{ background: colour }} />
      ))}
    </span>
  );
}
